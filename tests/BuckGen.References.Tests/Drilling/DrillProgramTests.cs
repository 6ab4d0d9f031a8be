using System.Text;
using BuckGen.Cutting.Drilling;
using BuckGen.Geometry;
using BuckGen.References.Tests.Support;

namespace BuckGen.References.Tests.Drilling;

/// <summary>Drill programs as LinuxCNC's own interpreter of RS274/NGC understands them.</summary>
public class DrillProgramTests
{
    /// <summary>The interpreter prints four decimals.</summary>
    private const double Rounding = 1e-4;

    private static readonly Reference LinuxCnc = new(
        "rs274",
        ["-g", "-t", "/dev/null", RepositoryFolder.Script("end.ngc")],
        "apt-get install --no-install-recommends linuxcnc-uspace");

    public static TheoryData<DrillProgramSpec> Ways =>
    [
        new DrillProgramSpec(),
        new DrillProgramSpec(SafeHeight: 25, RetractHeight: 25, Feed: 180.5, SpindleSpeed: 8000),
        new DrillProgramSpec(Peck: 1.7),
        new DrillProgramSpec(Peck: 1.7, Cycles: false),
        new DrillProgramSpec(Cycles: false),
    ];

    [Theory]
    [MemberData(nameof(Ways))]
    public void It_drills_every_hole_once_and_travels_at_the_safe_height(DrillProgramSpec spec)
    {
        foreach (var seed in Enumerable.Range(1, 5))
        {
            var run = DrillRun.Split(SomeHoles(seed)).Single();
            var result = Interpret([.. DrillProgram.Write(run, spec)]);
            Assert.True(result.ExitCode == 0, result.All);
            var holes = Drilled(Rs274Output.Moves(result.Output), spec.SafeHeight);
            Assert.Equal(run.Holes.Length, holes.Count);
            foreach (var (hole, (place, depth)) in run.Holes.Zip(holes))
            {
                Assert.True(hole.Centre.DistanceTo(place) < 0.001, $"{hole.Centre} was drilled at {place}");
                Assert.Equal(hole.Depth, depth, Rounding);
            }
        }
    }

    [Theory]
    [InlineData("G98 G81 X1 Y1 Z-2 R-3")]
    [InlineData("G98 G83 X1 Y1 Z-2 R1")]
    [InlineData("G0 G1 X1")]
    public void It_notices_what_is_wrong(string line)
    {
        var result = Interpret(Encoding.ASCII.GetBytes($"G21 G90 G17 G94\nG0 Z10\nS9000 M3\nF300\n{line}\nM2\n"));
        Assert.NotEqual(0, result.ExitCode);
    }

    private static ToolOutput Interpret(byte[] program)
    {
        LinuxCnc.Need();
        using var scratch = new ScratchFolder();
        var file = scratch.File("holes.ngc");
        File.WriteAllBytes(file, program);
        return LinuxCnc.Run(TimeSpan.FromSeconds(30), "-g", "-t", "/dev/null", "-v", scratch.File("parameters.var"), file);
    }

    /// <summary>Holes as fed, one after another; fails where the bit moves sideways at feed or below the safe height.</summary>
    private static List<(Vec2 Place, double Depth)> Drilled(IReadOnlyList<OrderedMove> moves, double safeHeight)
    {
        List<(Vec2 Place, double Depth)> holes = [];
        Assert.Equal(safeHeight, moves[0].Height, Rounding);
        foreach (var (before, move) in moves.Zip(moves.Skip(1)))
        {
            if (before.Place != move.Place)
            {
                Assert.False(move.IsFeed, $"sideways at feed to {move}");
                Assert.True(Math.Min(before.Height, move.Height) >= safeHeight - Rounding, $"too low from {before} to {move}");
            }

            if (!move.IsFeed) continue;
            if (holes.Count == 0 || holes[^1].Place != move.Place) holes.Add((move.Place, 0));
            holes[^1] = (move.Place, Math.Max(holes[^1].Depth, -move.Height));
        }

        Assert.Equal(safeHeight, moves[^1].Height, Rounding);
        return holes;
    }

    private static DrillHole[] SomeHoles(int seed)
    {
        var random = new Random(seed);
        return [.. Enumerable.Range(0, 40 * seed).Select(i =>
        {
            Vec2 centre = new(random.NextDouble() * 600 - 300, random.NextDouble() * 400 - 200);
            return new DrillHole(centre, 1.5, 3 + i % 4 * 1.5, 1, "vent");
        })];
    }
}
