using BuckGen.Geometry;
using Xunit;

namespace BuckGen.Tests.Cutting.Drilling.Rs274;

/// <summary>What a machine's moves leave in the stock, with the laws that keep bit, clamps and hands whole.</summary>
internal static class DrilledHoles
{
    /// <summary>Place and depth of every hole in the order of drilling; fails where a move breaks a law.</summary>
    /// <param name="moves">The moves.</param>
    /// <param name="safeHeight">Below it the bit goes only straight up and down.</param>
    /// <param name="retractHeight">Below it the bit goes down at feed, or through air that it drilled itself.</param>
    public static IReadOnlyList<(Vec2 Place, double Depth)> Find(IReadOnlyList<Move> moves, double safeHeight,
        double retractHeight)
    {
        List<(Vec2 Place, double Depth)> holes = [];
        var ground = retractHeight;
        // The first move only brings the bit up to the safe height from wherever it stood.
        Assert.Equal((false, safeHeight, true), (moves[0].IsSideways, moves[0].ToZ, moves[0].IsRapid));
        foreach (var move in moves.Skip(1))
        {
            Assert.False(move.IsSideways && move.IsUpright, $"slanting: {move}");
            if (move.IsSideways)
            {
                Assert.True(move.IsRapid && move.FromZ >= safeHeight, $"sideways at feed or too low: {move}");
                ground = retractHeight;
            }
            else if (move.IsRapid)
            {
                Assert.True(move.ToZ >= ground, $"a rapid into the material: {move}");
            }
            else
            {
                Assert.True(move.ToZ < move.FromZ, $"feeding upward: {move}");
                if (ground == retractHeight) holes.Add((move.To, -move.ToZ));
                else holes[^1] = (move.To, -move.ToZ);
                ground = move.ToZ;
            }
        }

        Assert.Equal(safeHeight, moves[^1].ToZ);
        return holes;
    }
}
