using BuckGen.Cutting.Drilling;
using BuckGen.Geometry;
using BuckGen.Settings;
using BuckGen.Tests.Cutting.Drilling.Rs274;
using CsCheck;
using Snapshooter.Xunit3;
using Xunit;

namespace BuckGen.Tests.Cutting.Drilling;

public class ProgramTests
{
    private static readonly DrillRun Run = DrillRun.Split(Holes.Few)[1];

    private static readonly Gen<DrillProgramSpec> Specs =
        Gen.Select(Gen.Int[1, 200], Gen.Int[1, 100], Gen.Int[1, 80], Gen.Bool, Gen.Bool, (safe, share, peck, pecks, cycles) =>
            new DrillProgramSpec(
                safe / 10.0, Math.Max(0.001, safe * share / 1000.0), 250.5, 9000, pecks ? peck / 10.0 : null, cycles));

    public static TheoryData<string, DrillProgramSpec> Ways => new()
    {
        { "at once", new() },
        { "in pecks", new(Peck: 2) },
        { "in pecks without cycles", new(Peck: 2.5, Cycles: false) },
    };

    [Theory]
    [MemberData(nameof(Ways))]
    public void The_program_stays_as_it_was(string name, DrillProgramSpec spec) =>
        Snapshot.Match(DrillProgram.Write(Run, spec).Text(), $"ProgramTests.{name.Replace(' ', '_')}");

    [Fact]
    public void A_strict_interpreter_drills_every_hole_once_and_safely() =>
        Gen.Select(Gen.Int[1, 40], Gen.Int[1, 10_000], Specs).Sample((count, seed, spec) =>
        {
            var run = DrillRun.Split(Holes.At(PointSets.Make("anywhere", count, seed))).Single();
            var moves = Rs274Machine.Run(DrillProgram.Write(run, spec).Text());
            var drilled = DrilledHoles.Find(moves, Math.Round(spec.SafeHeight, 3), Math.Round(spec.RetractHeight, 3));
            Assert.Equal(run.Holes.Select(h => (Rounded(h.Centre), h.Depth)), drilled);
        });

    [Fact]
    public void No_peck_goes_deeper_than_asked()
    {
        var moves = Rs274Machine.Run(DrillProgram.Write(Run, new(Peck: 1.5, Cycles: false)).Text());
        Assert.All(moves.Where(m => !m.IsRapid), m => Assert.InRange(Math.Min(0, m.FromZ) - m.ToZ, 0, 1.5 + 0.5 + 1e-9));
        Assert.Equal(4 + 4 + 4, moves.Count(m => !m.IsRapid));
    }

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("de-DE")]
    public void The_culture_does_not_matter(string culture) =>
        Assert.Equal(DrillProgram.Write(Run, new(Peck: 2)), Holes.Under(culture, () => DrillProgram.Write(Run, new(Peck: 2))));

    public static TheoryData<DrillProgramSpec, string> Refused => new()
    {
        { new(SafeHeight: 0), "The safe height is 0 mm; it must be from 0.001 to 500 mm." },
        { new(SafeHeight: double.NaN), "The safe height is NaN mm; it must be from 0.001 to 500 mm." },
        { new(RetractHeight: 12.5), "The retract height is 12.5 mm; it must not be above the safe height of 10 mm." },
        { new(RetractHeight: -1), "The retract height is -1 mm; it must be from 0.001 to 500 mm." },
        { new(Feed: -3), "The feed is -3 mm a minute; it must be from 0.001 to 20000 mm a minute." },
        { new(SpindleSpeed: 0), "The spindle speed is 0 turns a minute; it must be from 1 to 100000 turns a minute." },
        { new(Peck: 0), "The peck is 0 mm; it must be from 0.1 to 1000 mm." },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public void Settings_out_of_range_are_refused(DrillProgramSpec spec, string message) =>
        Assert.Equal(message, Assert.Throws<SpecException>(() => DrillProgram.Write(Run, spec)).Message);

    private static Vec2 Rounded(Vec2 p) => new(Math.Round(p.X, 3), Math.Round(p.Y, 3));
}
