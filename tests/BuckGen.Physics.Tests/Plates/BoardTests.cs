using BuckGen.Physics.Plates;
using Xunit;

namespace BuckGen.Physics.Tests.Plates;

public class BoardTests
{
    /// <summary>A maker's data sheet to EN 622-5 (MDF E1, edition 04/07-05): thickness range, N/mm².</summary>
    [Theory]
    [InlineData(9, 2700, 23)]
    [InlineData(12, 2500, 22)]
    [InlineData(19, 2200, 20)]
    [InlineData(30, 2100, 18)]
    [InlineData(45, 1900, 17)]
    public void Mdf_by_thickness(double thickness, double modulus, double strength)
    {
        var board = BoardProperties.Mdf(thickness);

        Assert.Equal((modulus, strength), (board.Modulus, board.Strength));
        Assert.Equal(strength / 3, board.AllowedStress, 1e-12);
    }

    /// <summary>
    /// The table's figures from the plies: those across the span count for nothing, those along it have 17 500 MPa and fail at 70
    /// MPa; 1.4 mm plies, the two outer ones sanded.
    /// </summary>
    [Theory]
    [InlineData(3, 3.6)]
    [InlineData(5, 6.4)]
    [InlineData(7, 9.2)]
    [InlineData(9, 12.0)]
    [InlineData(11, 14.8)]
    public void Birch_plywood_follows_from_its_plies(int plies, double thickness)
    {
        // The second, fourth, ... ply runs along the span. Cubes of the double distances of their faces from the middle.
        var cubes = 0.0;
        for (var ply = 1; ply < plies; ply += 2)
        {
            var (below, above) = ((2 * ply - plies) * 1.4, (2 * ply + 2 - plies) * 1.4);
            cubes += (Math.Pow(above, 3) - Math.Pow(below, 3)) / 2;
        }
        var share = cubes / Math.Pow(thickness, 3);
        var outermost = (plies - 2) * 1.4;

        var board = BoardProperties.BirchPlywood(thickness);

        Assert.Equal(17_500 * share, board.Modulus, 3.0);
        Assert.Equal(70 * share * thickness / outermost, board.Strength, 0.1);
    }

    [Fact]
    public void A_thickness_between_two_boards_counts_as_the_thinner()
    {
        Assert.Equal(BoardProperties.BirchPlywood(9.2).Modulus, BoardProperties.BirchPlywood(11).Modulus);
        Assert.Equal(BoardProperties.BirchPlywood(14.8).Modulus, BoardProperties.BirchPlywood(30).Modulus);
    }
}
