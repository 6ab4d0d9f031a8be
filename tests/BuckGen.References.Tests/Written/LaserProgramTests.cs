using System.Globalization;
using BuckGen.Cutting.Boards;
using BuckGen.Cutting.CutPaths;
using BuckGen.Design;
using BuckGen.Geometry;
using BuckGen.Intake.Reading;
using BuckGen.References.Tests.Support;
using LineProgram;

namespace BuckGen.References.Tests.Written;

/// <summary>The sample plug-in's laser programs as LinuxCNC's own interpreter of RS274/NGC understands them.</summary>
public class LaserProgramTests
{
    private static readonly Reference LinuxCnc = new(
        "rs274",
        ["-g", "-t", "/dev/null", RepositoryFolder.Script("end.ngc")],
        "apt-get install --no-install-recommends linuxcnc-uspace");

    /// <summary>Each path is begun with the beam off, followed with it on at its feed, and is as long as it was drawn.</summary>
    [Theory]
    [InlineData("examples/boathouse-sign/outline.svg", 12)]
    [InlineData("examples/specimen-box/outline.dxf", 24)]
    public void The_beam_follows_every_path(string outline, double depth)
    {
        var plan = Plan(outline, depth);

        foreach (var board in plan.Boards)
        {
            var drawing = BoardDrawing.Create(board);
            var runs = Runs(Interpret([.. new LaserProgram(400, 2000, 80).Write(drawing)]));

            Assert.Equal(drawing.Paths.Length, runs.Count);
            foreach (var (path, run) in drawing.Paths.Zip(runs))
            {
                Assert.True(path.Segments[0].Start.DistanceTo(run.Start) < 0.001,
                    $"a path at {path.Segments[0].Start} begins at {run.Start}");
                Assert.True(path.Segments[^1].End.DistanceTo(run.End) < 0.001);
                // Four decimals in the program; a short arc's centre is found from them.
                Assert.Equal(path.Length, run.Length, 0.002 * path.Segments.Length + 0.001 * path.Length);
                Assert.Equal((path.Layer == CutLayer.Mark ? 2000 : 400, path.Layer == CutLayer.Mark ? 8 : 80),
                    (run.Feed, run.Power));
            }
        }
    }

    private static CutPlan Plan(string outline, double depth)
    {
        var read = OutlineReader
            .Read(File.ReadAllBytes(System.IO.Path.Combine(RepositoryFolder.Path, outline)), Path.GetFileName(outline));
        return CutPlan.Create(BuckDesign.Create(read, new() { Depth = depth, Stock = [new("MDF 6", 6)] }), new());
    }

    private static string Interpret(byte[] program)
    {
        LinuxCnc.Need();
        using var scratch = new ScratchFolder();
        var file = scratch.File("board.ngc");
        File.WriteAllBytes(file, program);
        var result = LinuxCnc.Run(TimeSpan.FromSeconds(60), "-g", "-t", "/dev/null", "-v", scratch.File("parameters.var"), file);
        Assert.True(result.ExitCode == 0, result.All);
        return result.Output;
    }

    /// <summary>One stretch with the beam on.</summary>
    private sealed record Run(Vec2 Start, Vec2 End, double Length, double Feed, double Power);

    /// <summary>
    /// The stretches, from the canonical machining functions that the interpreter prints; a move across with the beam on
    /// fails.
    /// </summary>
    private static List<Run> Runs(string output)
    {
        var (runs, here, start, length, on, feed, power) = (new List<Run>(), new Vec2(0, 0), new Vec2(0, 0), 0.0,
            false, 0.0, 0.0);
        foreach (var line in output.Split('\n'))
        {
            var call = line[(line.IndexOf("..... ", StringComparison.Ordinal) + 1)..].TrimStart('.', ' ');
            double[] Numbers() =>
                [.. call[(call.IndexOf('(', StringComparison.Ordinal) + 1)..call.LastIndexOf(')')].Split(',')
                    .Select(n => double.TryParse(n, NumberStyles.Float, CultureInfo.InvariantCulture, out var v) ? v : 0)];
            if (call.StartsWith("SET_FEED_RATE(", StringComparison.Ordinal)) feed = Numbers()[0];
            else if (call.StartsWith("SET_SPINDLE_SPEED(", StringComparison.Ordinal)) power = Numbers()[^1];
            else if (call.StartsWith("START_SPINDLE_CLOCKWISE(", StringComparison.Ordinal)) (on, start, length) = (true, here, 0);
            else if (call.StartsWith("STOP_SPINDLE_TURNING(", StringComparison.Ordinal))
            {
                if (on) runs.Add(new(start, here, length, feed, power));
                on = false;
            }
            else if (call.StartsWith("STRAIGHT_", StringComparison.Ordinal))
            {
                var n = Numbers();
                var end = new Vec2(n[0], n[1]);
                Assert.False(on && call.StartsWith("STRAIGHT_TRAVERSE", StringComparison.Ordinal),
                    "a move across with the beam on");
                if (on) length += here.DistanceTo(end);
                here = end;
            }
            else if (call.StartsWith("ARC_FEED(", StringComparison.Ordinal))
            {
                var n = Numbers();
                var (end, centre) = (new Vec2(n[0], n[1]), new Vec2(n[2], n[3]));
                var turn = (here - centre).AngleTo(end - centre);
                if (n[4] > 0 && turn < 0) turn += 2 * Math.PI;
                if (n[4] < 0 && turn > 0) turn -= 2 * Math.PI;
                length += Math.Abs(turn) * here.DistanceTo(centre);
                here = end;
            }
        }

        return runs;
    }
}
