using Xunit;

namespace BuckGen.Cli.Tests;

/// <summary>
/// Legal settings that leave nothing of something, or are far larger or smaller than usual. Each ended with a fault of the
/// program once.
/// </summary>
[Trait("Tier", "slow")]
public sealed class ExtremeSettingsTests : Workshop
{
    private static readonly (string Name, string Drawing, int Status, string Says, string[] Args)[] Cases =
    [
        ("walls that lean the wrong way", Rectangle(100, 60), 2, "an undercut",
            ["buck", "--depth", "200", "--draft=-20", "--stock", "12", "--base", "12", "--vents", "walls", "--gauge", "1"]),
        ("a cavity whose floor vanishes, vented", Rectangle(100, 60), 1, "closes the cavity",
            ["buck", "--depth", "200", "--draft", "20", "--stock", "12", "--kind", "female", "--base", "12", "--vents", "walls",
                "--gauge", "1"]),
        ("a tiny buck, vented", Rectangle(0.12, 0.12), 0, "",
            ["vents", "--depth", "0.1", "--stock", "0.3", "--base", "3", "--base-margin", "0", "--gauge", "0.1"]),
        ("a tiny cavity, vented", Rectangle(0.12, 0.12), 0, "",
            ["vents", "--depth", "0.1", "--stock", "0.3", "--kind", "female", "--base", "3", "--gauge", "0.1"]),
        ("a tiny cavity that closes, vented", Rectangle(0.12, 0.12), 1, "",
            ["vents", "--depth", "3", "--stock", "0.3", "--draft", "40", "--kind", "female", "--base", "3", "--gauge", "0.1"]),
        ("15,000 litres of air", Rectangle(4000, 4000), 0, "15310",
            ["vents", "--depth", "1000", "--stock", "25", "--gauge", "3", "--kind", "female", "--vents", "given"]),
        ("a panel whose press fit leaves no opening", Rectangle(0.12, 0.12), 2, "use a looser fit",
            ["jig", "--depth", "3", "--stock", "1", "--gauge", "0.2", "--trim-height", "2", "--panel", "--fit=-2"]),
        ("a flange template of which the bushing leaves nothing", Rectangle(20, 10), 1, "parts of it vanish",
            ["jig", "--depth", "3", "--stock", "1", "--gauge", "0.2", "--trim-height", "2", "--flange", "2", "--bushing", "80"]),
    ];

    public static TheoryData<string> Names => [.. Cases.Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_program_does_its_work_or_says_why_not(string name)
    {
        var (_, drawing, status, says, args) = Cases.Single(c => c.Name == name);
        var path = Write("drawing.svg", drawing);

        var withheld = Cli.Run([args[0], path, .. args[1..], "--out", At("out")]);
        var forced = Cli.Run([args[0], path, .. args[1..], "--out", At("out"), "--force"]);
        var json = Cli.Run([args[0], path, .. args[1..], "--out", At("out"), "--json"]);

        Assert.Equal(status, withheld.Status);
        Assert.Equal(status == 2 ? 2 : 0, forced.Status);
        Assert.Equal(status, json.Status);
        Assert.Contains(says, withheld.Out + withheld.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("depth = nan")]
    [InlineData("depth = inf")]
    [InlineData("depth = -inf")]
    [InlineData("depth = \"NaN\"")]
    [InlineData("depth = \"Infinity\"")]
    [InlineData("depth = \"1/0\"")]
    [InlineData("depth = \"0/0\"")]
    [InlineData("depth = 1e400")]
    [InlineData("depth = 36\nmitre-limit = nan")]
    [InlineData("depth = 36\nmitre-limit = \"LONG\"")]
    [InlineData("depth = 36\ndraft = \"LONG\"")]
    [InlineData("depth = 36\nshrinkage = \"LONG%\"")]
    [InlineData("depth = 36\n[base]\nstock = \"A\"\n[vacuum]\nvacuum = \"LONG\"\n[vents]\n[sheet]\n")]
    [InlineData("depth = 36\n[base]\nstock = \"A\"\n[vents]\npoints = [[nan, 1]]\n[sheet]\n")]
    [InlineData("depth = 36\n[rates]\nlabour = \"LONG\"")]
    [InlineData("depth = 36\n[rates]\nlabour = nan")]
    public void What_is_not_a_number_is_refused(string setting)
    {
        Write("drawing.svg", Plate);
        var job = Write("job.toml", $"""
            [outline]
            file = "drawing.svg"
            [[stock]]
            name = "A"
            thickness = 12
            [buck]
            {setting.Replace("LONG", new string('9', 400), StringComparison.Ordinal)}
            """);

        Cli.Run("make", job, "--out", At("out")).AssertRefused("job.toml");
        Assert.False(Directory.Exists(At("out")));
    }

    private static string Rectangle(double width, double height) => FormattableString.Invariant(
        $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width}mm\" height=\"{height}mm\" viewBox=\"0 0 {width} ")
        + FormattableString.Invariant($"{height}\"><rect width=\"{width}\" height=\"{height}\"/></svg>");
}
