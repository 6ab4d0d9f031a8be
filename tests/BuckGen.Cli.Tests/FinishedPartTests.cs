using Xunit;

namespace BuckGen.Cli.Tests;

/// <summary>A part and its lid, ordered in a job or on the command line.</summary>
public sealed class FinishedPartTests : Workshop
{
    private const string Tray = """
        <svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="75mm" viewBox="0 0 100 75"><rect x="5" y="5" width="80" height="60" rx="10"/></svg>
        """;

    private const string TrayJob = """
        title = "A tray"
        [outline]
        file = "tray.svg"
        [part]
        depth = "1in"
        size = ["4in", "3in"]
        cut-height = "6mm"
        [lid]
        fit = "flush"
        skirt = "1/4in"
        [sheet]
        plastic = "petg"
        gauge = "1.5mm"
        [forming]
        predict = false
        [[stock]]
        name = "MDF 3"
        thickness = "3mm"
        board = ["600mm", "400mm"]
        [[stock]]
        name = "board 1"
        thickness = "1mm"
        board = ["600mm", "400mm"]
        """;

    [Fact]
    public void A_job_with_a_lid_makes_both_parts_each_in_its_folder()
    {
        Write("tray.svg", Tray);
        var run = Cli.Run("make", Write("job.toml", TrayJob), "--out", At("out"));

        run.AssertDone();
        Assert.Contains("inside 101.6 x 76.2 mm at the mouth, 25.4 deep: size as ordered", run.Out);
        Assert.Contains("into the part, with 0.3", run.Out);
        var files = Present("out");
        Assert.Contains("summary.json", files);
        Assert.Contains("layers/layer-01.dxf", files);
        Assert.Contains("lid/summary.json", files);
        Assert.Contains("lid/report.html", files);
        Assert.Contains("lid/layers/layer-01.dxf", files);
    }

    [Fact]
    public void Check_lists_the_findings_of_the_lid_too()
    {
        Write("tray.svg", Tray);
        var run = Cli.Run("check", Write("job.toml", TrayJob));

        run.AssertDone();
        Assert.Contains("lid-within-tolerance", run.Out[run.Out.IndexOf("The lid:", StringComparison.Ordinal)..]);
    }

    [Fact]
    public void A_part_is_ordered_on_the_command_line()
    {
        var run = Cli.Run("buck", Write("tray.svg", Tray), "--part", "inside", "--depth", "1in", "--part-size", "4x3in",
            "--cut-height", "6mm", "--gauge", "1.5mm", "--plastic", "petg", "--stock", "3mm", "1mm", "--out", At("out"));

        run.AssertDone();
        Assert.Contains("inside 101.6 x 76.2 mm at the mouth, 25.4 deep: size as ordered", run.Out);
    }

    [Theory]
    [InlineData("--part-at", "face")]
    [InlineData("--part-size", "40x30mm")]
    [InlineData("--cut-height", "6mm")]
    public void An_option_of_the_part_without_a_part_is_refused(string option, string value)
    {
        var run = Cli.Run("buck", Write("tray.svg", Tray), "--depth", "12mm", "--stock", "3mm", option, value);

        Assert.Equal(2, run.Status);
        Assert.Contains($"{option} is about the finished part; say with --part", run.Error);
    }

    [Fact]
    public void The_plane_of_the_buck_is_refused_beside_a_part()
    {
        var run = Cli.Run("buck", Write("tray.svg", Tray), "--depth", "12mm", "--stock", "3mm", "--gauge", "1mm",
            "--part", "inside", "--outline-at", "face");

        Assert.Equal(2, run.Status);
        Assert.Contains("with --part say --part-at", run.Error);
    }

    [Fact]
    public void Depth_of_part_and_of_buck_together_are_refused_with_the_line()
    {
        Write("tray.svg", Tray);
        var run = Cli.Run("check", Write("job.toml", TrayJob + "\n[buck]\ndepth = \"30mm\""));

        Assert.Equal(2, run.Status);
        Assert.Contains("line 25: \"depth\" is that of the buck, but [part] orders the finished part", run.Error);
    }
}
