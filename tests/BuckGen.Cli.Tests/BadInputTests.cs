using System.Text;
using Xunit;

namespace BuckGen.Cli.Tests;

/// <summary>Bad input: status 2, one clear line that names the thing, nothing written.</summary>
public sealed class BadInputTests : Workshop
{
    private const string Svg = """<svg xmlns="http://www.w3.org/2000/svg" width="120mm" height="80mm" viewBox="0 0 120 80">""";

    private static readonly (string Name, byte[] Content, string Says)[] Drawings =
    [
        ("empty.svg", [], "empty"),
        ("empty.dxf", [], "empty"),
        ("blank.svg", Encoding.UTF8.GetBytes("\n  \n"), ""),
        ("notes.txt", Encoding.UTF8.GetBytes("Buy plywood on Friday."), ""),
        ("photo.svg", [0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A, 0, 0, 0, 13], "PNG"),
        ("truncated.svg", Encoding.UTF8.GetBytes(Plate[..(Plate.Length / 2)]), ""),
        ("truncated.dxf", Encoding.UTF8.GetBytes("  0\nSECTION\n  2\nENTITIES\n  0\nLINE\n 10\n1.0\n 20\n"), ""),
        ("nan.dxf", Encoding.UTF8
            .GetBytes("  0\nSECTION\n  2\nENTITIES\n  0\nCIRCLE\n  8\n0\n 10\nNaN\n 20\n0\n 40\n5\n  0\nENDSEC\n  0\nEOF\n"), ""),
        ("open.svg", Encoding.UTF8.GetBytes($"{Svg}<path fill=\"none\" stroke=\"black\" d=\"M10 10 L100 10 L100 70\"/></svg>"),
            ""),
        ("nothing.svg", Encoding.UTF8.GetBytes($"{Svg}</svg>"), ""),
        ("words.svg", Encoding.UTF8.GetBytes($"{Svg}<text x=\"10\" y=\"20\">Boats</text></svg>"), ""),
    ];

    public static TheoryData<string> DrawingNames => [.. Drawings.Select(d => d.Name)];

    [Theory]
    [MemberData(nameof(DrawingNames))]
    public void A_drawing_that_holds_no_outline_is_refused_by_every_command(string name)
    {
        var (_, content, says) = Drawings.Single(d => d.Name == name);
        Write(name, content);
        Write("job.toml", PlateJob.Replace("plate.svg", name, StringComparison.Ordinal));

        Cli.Run("inspect", At(name)).AssertRefused(name, says);
        Cli.Run("buck", At(name), "--depth", "24", "--stock", "12", "--out", At("out")).AssertRefused(name, says);
        Cli.Run("check", At(name), "--depth", "24", "--stock", "12").AssertRefused(name, says);
        Cli.Run("make", At("job.toml")).AssertRefused(name, says);
        Assert.Equal(new[] { "job.toml", name }.Order(StringComparer.Ordinal), Present());
    }

    [Fact]
    public void An_outline_that_crosses_itself_is_refused_or_its_repair_is_reported()
    {
        var bowtie = Write("bowtie.svg", $"{Svg}<path d=\"M10 10 L100 70 L100 10 L10 70 Z\"/></svg>");

        var run = Cli.Run("inspect", bowtie, "--json");

        if (run.Status == 2) run.AssertRefused("bowtie.svg");
        else Assert.True(run.Json.GetProperty("repairs").GetArrayLength() + run.Json.GetProperty("notes").GetArrayLength() > 0);
    }

    [Theory]
    [InlineData("depth is 0 mm", "--depth", "0mm", "--stock", "12")]
    [InlineData("depth is -5 mm", "--depth", "-5mm", "--stock", "12")]
    [InlineData("depth is 2000 mm", "--depth", "2000", "--stock", "12")]
    [InlineData("--plastic is 'cheese'", "--depth", "24", "--stock", "12", "--plastic", "cheese")]
    [InlineData("--frame is '300'", "--depth", "24", "--stock", "12", "--frame", "300")]
    [InlineData("give the thickness of the plastic sheet", "--depth", "24", "--stock", "12", "--part", "outside")]
    [InlineData("draft is -3 degrees; it must be from 0 to 45 degrees: below 0 the wall leans out over its foot, an undercut",
        "--depth", "24", "--stock", "12", "--draft", "-3deg")]
    [InlineData("a scale, or a width and height", "--depth", "24", "--stock", "12", "--scale", "2", "--width", "300mm")]
    [InlineData("--background is 'white'", "--depth", "24", "--stock", "12", "--background", "white")]
    [InlineData("draft is -50 degrees", "--depth", "24", "--stock", "12", "--draft", "-50deg")]
    [InlineData("draft is 89 degrees", "--depth", "24", "--stock", "12", "--draft", "89deg")]
    [InlineData("'cheese'", "--depth", "24", "--stock", "cheese")]
    [InlineData("--stock is missing", "--depth", "24")]
    [InlineData("--depth is missing", "--stock", "12")]
    [InlineData("--depth is 'deep'", "--depth", "deep", "--stock", "12")]
    [InlineData("--draft is '5mm'", "--depth", "24", "--stock", "12", "--draft", "5mm")]
    [InlineData("--kind is 'neuter'", "--depth", "24", "--stock", "12", "--kind", "neuter")]
    [InlineData("--steps is 'both'", "--depth", "24", "--stock", "12", "--steps", "both")]
    [InlineData("--dxf is 'r14'", "--depth", "24", "--stock", "12", "--dxf", "r14")]
    [InlineData("--board is 'big'", "--depth", "24", "--stock", "12", "--board", "big")]
    [InlineData("kerf is -1 mm", "--depth", "24", "--stock", "12", "--kerf", "-1")]
    [InlineData("thickness of \"0.1 mm\" is 0.1 mm", "--depth", "24", "--stock", "0.1mm")]
    [InlineData("width of a board of \"12 mm\" is 5 mm", "--depth", "24", "--stock", "12", "--board", "5x5mm")]
    [InlineData("tolerance is 5 mm", "--depth", "24", "--stock", "12", "--tolerance", "5mm")]
    [InlineData("furlong", "--depth", "24", "--stock", "12", "--units", "furlong")]
    [InlineData("limit is 400", "--depth", "500", "--stock", "1")]
    [InlineData("leaves nothing of a dowel hole", "--depth", "24", "--stock", "12", "--kerf", "3", "--dowel", "2")]
    public void A_number_or_word_that_makes_no_sense_is_refused(string says, params string[] options)
    {
        var drawing = Write("plate.svg", Plate);

        Cli.Run(["buck", drawing, "--out", At("out"), .. options]).AssertRefused(says);
        Cli.Run(["check", drawing, .. options]).AssertRefused(says);

        Assert.Equal(["plate.svg"], Present());
    }

    [Fact]
    public void A_drawing_that_is_not_there_or_is_a_folder_is_refused()
    {
        Directory.CreateDirectory(At("drawings"));

        Cli.Run("inspect", At("none.svg")).AssertRefused("none.svg", "does not exist");
        Cli.Run("inspect", At("drawings")).AssertRefused("drawings", "folder");
        Cli.Run("buck", At("none.svg"), "--depth", "24", "--stock", "12").AssertRefused("none.svg", "does not exist");
    }

    [Fact]
    public void A_job_that_is_not_there_or_is_a_folder_is_refused()
    {
        Directory.CreateDirectory(At("jobs"));

        Cli.Run("make", At("none.toml")).AssertRefused("none.toml", "does not exist");
        Cli.Run("make", At("jobs")).AssertRefused("jobs", "folder");
        Cli.Run("check", At("none.toml")).AssertRefused("none.toml");
    }

    [Fact]
    public void A_job_whose_drawing_is_missing_names_the_drawing() =>
        Cli.Run("make", Write("job.toml", PlateJob)).AssertRefused("plate.svg", "does not exist");

    [Theory]
    [InlineData("[buck\ndepth = 3", "job.toml, line 1")]
    [InlineData("\n[buck]\ncolour = \"red\"", "job.toml, line 3: in [buck] \"colour\" is not known")]
    [InlineData("\n[extras]\na = 1", "the table [extras] is not known")]
    [InlineData("", "\"file\" is missing")]
    public void A_broken_job_is_refused_with_its_line(string job, string says)
    {
        var text = job.Contains("colour", StringComparison.Ordinal)
            ? "\n[buck]\ncolour = \"red\"\ndepth = 3\n[outline]\nfile = \"a.svg\"\n[[stock]]\nthickness = 3" : job;
        Write("job.toml", text);

        Cli.Run("make", At("job.toml")).AssertMistakes(says);
        Cli.Run("check", At("job.toml")).AssertMistakes(says);
        Assert.Equal(["job.toml"], Present());
    }

    [Fact]
    public void Five_mistakes_of_a_job_are_five_lines()
    {
        Write("plate.svg", Plate);
        var job = Write("job.toml", """
            plugin-seconds = 0
            [outline]
            file = "plate.svg"
            [buck]
            depth = "2m"
            kind = "neuter"
            [[stock]]
            thickness = "12mm"
            board = ["600mm", "4mm"]
            [vacuum]
            seconds = 100
            """);

        foreach (var command in (string[])["make", "check", "form"])
        {
            var run = Cli.Run(command, job);

            run.AssertMistakes();
            Assert.Equal(
                [
                    "buckgen: job.toml, line 1: the time for a call of a plug-in is 0 s; it must be from 1 to 3600 s.",
                    "buckgen: job.toml, line 5: the depth is 2000 mm; it must be above 0 and at most 1000 mm.",
                    "buckgen: job.toml, line 6: \"kind\" is \"neuter\"; it must be male or female.",
                    "buckgen: job.toml, line 9: the height of a board is 4 mm; it must be from 10 to 10000 mm.",
                    "buckgen: job.toml, line 11: the time for the air to leave is 100 s; it must be from 0.01 to 60 s.",
                ],
                run.Error.TrimEnd('\n').Split('\n'));
        }
    }

    [Fact]
    public void A_job_that_is_no_text_is_refused() =>
        Cli.Run("make", Write("job.toml", [0x89, (byte)'P', (byte)'N', (byte)'G', 0, 1, 2, 3])).AssertMistakes("job.toml");

    [Fact]
    public void A_job_with_settings_out_of_range_is_refused()
    {
        Write("plate.svg", Plate);
        Write("job.toml", PlateJob.Replace("24mm", "0mm", StringComparison.Ordinal));

        Cli.Run("make", At("job.toml")).AssertRefused("depth is 0 mm");
        Assert.Empty(Present("out"));
    }

    [Fact]
    public void A_folder_that_can_not_be_made_is_refused()
    {
        // A path below a regular file can be written by no one, not even by root.
        var file = Write("plate.svg", Plate);

        Cli.Run("buck", file, "--depth", "24", "--stock", "12", "--out", Path.Combine(file, "out")).AssertRefused("plate.svg");
        Cli.Run("buck", file, "--depth", "24", "--stock", "12", "--out", file).AssertRefused("plate.svg");
        Cli.Run("new", Path.Combine(file, "job.toml")).AssertRefused("plate.svg");

        Assert.Equal(["plate.svg"], Present());
        Assert.Equal(Plate, File.ReadAllText(file));
    }

    [Fact]
    public void A_part_of_the_folder_that_can_not_be_written_leaves_the_earlier_result_whole()
    {
        var drawing = Write("plate.svg", Plate);
        Cli.Run("buck", drawing, "--depth", "12", "--stock", "12", "--out", At("out")).AssertDone();
        var before = File.ReadAllBytes(At("out/summary.json"));
        Directory.Delete(At("out/cut"), true);
        Write("out/cut", "a file where a folder should be");

        Cli.Run("buck", drawing, "--depth", "24", "--stock", "12", "--out", At("out")).AssertRefused("cut");

        Assert.Equal(before, File.ReadAllBytes(At("out/summary.json")));
        Assert.Equal(["cut", "layers/layer-01.dxf", "report.html", "report.png", "summary.json"], Present("out"));
        Assert.Equal(["out", "plate.svg"], Directory.GetFileSystemEntries(Folder).Select(Path.GetFileName).Order());
    }
}
