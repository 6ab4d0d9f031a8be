using BuckGen.Physics.Air;
using Xunit;

namespace BuckGen.Physics.Tests.Air;

public class SuctionForceTests
{
    private const double Inch = 25.4, PoundForce = 4.4482216152605, Psi = 6894.757293168;

    /// <summary>
    /// A board of 10 x 10 in. Source: a hobby page on vacuum formers gives about 350 lb for a shop vacuum of 3.5 psi; a whole
    /// atmosphere by area.
    /// </summary>
    [Theory]
    [InlineData(3.5, 350)]
    [InlineData(14.7, 1470)]
    public void A_board_of_10_inches(double psi, double pounds) =>
        Assert.Equal(pounds * PoundForce, SuctionForce.OnArea(100 * Inch * Inch, psi * Psi), pounds * PoundForce * 0.01);
}
