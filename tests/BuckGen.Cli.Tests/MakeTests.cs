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
    public void A_new_job_file_can_be_made_at_once()
    {
        Write("sign.svg", Plate);

        Cli.Run("new", At("job.toml"), "--outline", "sign.svg").AssertDone();
        Cli.Run("make", At("job.toml")).AssertDone();

        Assert.Equal(["layer-01.dxf", "layer-02.dxf", "layer-03.dxf"], Present("out/layers"));
    }

    [Fact]
    public void A_job_file_is_never_overwritten()
    {
        Write("job.toml", "mine");

        Cli.Run("new", At("job.toml")).AssertRefused("job.toml exists already");

        Assert.Equal("mine", File.ReadAllText(At("job.toml")));
    }
}
