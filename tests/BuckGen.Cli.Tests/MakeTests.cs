using Xunit;

namespace BuckGen.Cli.Tests;

public sealed class MakeTests : Workshop
{
    [Fact]
    public void A_new_job_names_a_drawing_that_is_there_and_can_be_read()
    {
        Write("picture.svg", [0x89, (byte)'P', (byte)'N', (byte)'G', 13, 10]);

        Cli.Run("new", At("job.toml"), "--outline", "picture.svg").AssertRefused("picture.svg: this is a PNG picture");
        Cli.Run("new", At("job.toml"), "--outline", "none.svg").AssertRefused("none.svg", "does not exist");

        Assert.Equal(["picture.svg"], Present());
    }

    [Fact]
    public void A_job_is_done_into_the_folder_beside_it()
    {
        Write("plate.svg", Plate);

        var run = Cli.Run("make", Write("job.toml", PlateJob));

        run.AssertDone();
        Assert.Equal(
            ["cut/board-01-mdf-12.dxf", "layers/layer-01.dxf", "layers/layer-02.dxf", "report.html", "report.png",
                "summary.json"], Present("out"));
    }

    [Fact]
    public void The_outline_is_looked_for_beside_the_job_file()
    {
        Directory.CreateDirectory(At("jobs"));
        Write("plate.svg", Plate);
        Write("jobs/job.toml", PlateJob.Replace("plate.svg", "../plate.svg", StringComparison.Ordinal));

        Cli.Run("make", At("jobs/job.toml"), "--out", At("elsewhere"), "--json").AssertDone();

        Assert.Contains("summary.json", Present("elsewhere"));
        Assert.Empty(Present("jobs/out"));
    }

    [Fact]
    public void A_job_and_the_same_options_make_the_same_files()
    {
        Write("plate.svg", Plate);
        Cli.Run("make", Write("job.toml", PlateJob), "--out", At("a")).AssertDone();
        Cli.Run("buck", At("plate.svg"), "--depth", "24mm", "--stock", "12mm", "--board", "600x400mm", "--out", At("b"))
            .AssertDone();

        Assert.Equal(File.ReadAllBytes(At("a/layers/layer-01.dxf")), File.ReadAllBytes(At("b/layers/layer-01.dxf")));
    }

    [Fact]
    public void A_new_job_file_with_every_setting_can_be_made_at_once()
    {
        Write("sign.svg", Plate);

        Cli.Run("new", At("job.toml"), "--all", "--outline", "sign.svg").AssertDone();
        Cli.Run("make", At("job.toml")).AssertDone();

        Assert.Equal(["layer-01.dxf", "layer-02.dxf", "layer-03.dxf"], Present("out/layers"));
    }

    /// <summary>Each has what its work needs, on one screen, and makes a plain outline without an error.</summary>
    [Theory]
    [InlineData("sign", "drill/")]
    [InlineData("box", "jig/")]
    [InlineData("tray", "jig/")]
    [InlineData("panel", "panel/")]
    public void A_short_job_file_can_be_made_at_once(string work, string folder)
    {
        // 140 x 100 mm with round corners.
        Write("plain.svg", "<svg xmlns='http://www.w3.org/2000/svg' width='160mm' height='120mm' viewBox='0 0 160 120'>"
            + "<rect x='10' y='10' width='140' height='100' rx='14'/></svg>");

        Cli.Run("new", At("job.toml"), "--for", work, "--outline", "plain.svg").AssertDone();
        var run = Cli.Run("make", At("job.toml"), "--json");

        run.AssertDone();
        Assert.InRange(File.ReadAllLines(At("job.toml")).Length, 20, 45);
        Assert.DoesNotContain(run.Json.GetProperty("findings").EnumerateArray(),
            f => f.GetProperty("severity").GetString() == "error");
        Assert.Contains(Present("out"), f => f.StartsWith(folder, StringComparison.Ordinal));
    }

    [Fact]
    public void A_new_job_is_for_a_sign_unless_it_says_otherwise()
    {
        Cli.Run("new", At("a.toml")).AssertDone();
        Cli.Run("new", At("b.toml"), "--for", "sign").AssertDone();

        Assert.Equal(File.ReadAllText(At("a.toml")), File.ReadAllText(At("b.toml")));
        Cli.Run("new", At("c.toml"), "--for", "box", "--all").AssertRefused("leave one of them out");
    }

    [Fact]
    public void A_job_file_is_never_overwritten()
    {
        Write("job.toml", "mine");

        Cli.Run("new", At("job.toml")).AssertRefused("job.toml exists already");

        Assert.Equal("mine", File.ReadAllText(At("job.toml")));
    }
}
