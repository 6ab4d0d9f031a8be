using Xunit;

namespace BuckGen.Cli.Tests;

/// <summary>Jig, flange template, panel and costs, as a maker asks for them.</summary>
[Trait("Tier", "slow")]
public sealed class FinishTests : Workshop
{
    [Fact]
    public void A_ring_alone_needs_nothing_but_drawing_depth_and_stock()
    {
        var run = Cli.Run("jig", Write("plate.svg", Plate), "--depth", "36mm", "--stock", "6mm", "--out", At("out"));

        run.AssertDone();
        Assert.Contains("a ring of 2 layers, 12 mm high from the underside of the flange (wanted 12), a core of 1", run.Out);
        Assert.Equal(["bed-01.dxf", "core-01.dxf", "ring-01.dxf", "ring-02.dxf"], Present("out/jig"));
        Assert.Empty(Present("out/panel"));
        Assert.Empty(Present("out/layers"));
    }

    [Fact]
    public void Template_nest_and_panel_come_on_request()
    {
        Cli.Run("jig", Write("plate.svg", Plate), "--depth", "36mm", "--stock", "6mm", "--flange", "15mm", "--bit", "6mm",
            "--panel", "--fit", "0.4mm", "--out", At("out")).AssertDone();

        Assert.Contains("template-01.dxf", Present("out/jig"));
        Assert.Contains("nest-01.dxf", Present("out/jig"));
        Assert.Equal(["inlay-01.dxf", "panel-01.dxf"], Present("out/panel"));
    }

    [Theory]
    [InlineData("--fit", "--panel")]
    [InlineData("--panel-margin", "--panel")]
    [InlineData("--bushing", "--flange")]
    [InlineData("--bit", "--flange")]
    public void What_would_do_nothing_is_refused(string option, string needs) =>
        Cli.Run("jig", Write("plate.svg", Plate), "--depth", "36mm", "--stock", "6mm", option, "20mm")
            .AssertRefused($"{option} has no effect without {needs}.");

    [Fact]
    public void A_rim_of_its_own_drawing_is_read_as_the_panel_is()
    {
        Write("plate.svg", Plate);
        Write("rim.svg",
            """<svg xmlns="http://www.w3.org/2000/svg" width="140mm" height="80mm" viewBox="-20 0 140 80">"""
            + """<path d="M-18 -30H130V110H-18Z"/></svg>""");
        const string Flange = "\n[sheet]\n[flange]\nstock = \"MDF 12\"\nrim = \"drawn\"\n";

        Cli.Run("make", Write("job.toml", PlateJob + Flange + "outline = \"rim.svg\"\n")).AssertDone();

        Assert.Contains("template-01.dxf", Present("out/jig"));
        Assert.Contains("\"rim\": \"drawn\"", File.ReadAllText(At("out/summary.json")));
        Cli.Run("make", Write("none.toml", PlateJob + Flange)).AssertRefused("no outline is given");
    }

    [Fact]
    public void A_panel_of_its_own_drawing_lies_beside_the_job()
    {
        Write("plate.svg", Plate);
        // Mirrored upward as the plate is: both pages are 80 mm high, so both drawings have one origin.
        Write("panel.svg",
            """<svg xmlns="http://www.w3.org/2000/svg" width="140mm" height="80mm" viewBox="-20 0 140 80">"""
            + """<path d="M-18 -30H130V110H-18Z"/></svg>""");
        var job = Write("job.toml",
            PlateJob + "\n[sheet]\n[panel]\nstock = \"MDF 12\"\nedge = \"drawn\"\noutline = \"panel.svg\"\n");

        Cli.Run("make", job).AssertDone();

        Assert.Equal(["inlay-01.dxf", "panel-01.dxf"], Present("out/panel"));
        Cli.Run("make",
            Write("lost.toml", PlateJob + "\n[sheet]\n[panel]\nstock = \"MDF 12\"\nedge = \"drawn\"\noutline = \"gone.svg\"\n"))
                .AssertRefused("gone.svg", "does not exist");
        Cli.Run("make", Write("none.toml", PlateJob + "\n[sheet]\n[panel]\nstock = \"MDF 12\"\nedge = \"drawn\"\n"))
            .AssertRefused("no outline is given");
    }

    [Fact]
    public void A_job_is_costed_by_the_rates_it_names()
    {
        Write("plate.svg", Plate);
        var job = Write("job.toml", PlateJob + "\nprice = 9.5\n[rates]\ncurrency = \"crowns\"\nglue-minutes = 4\n");

        var run = Cli.Run("make", job);

        run.AssertDone();
        Assert.Contains("crowns", run.Out);
        Assert.Contains("Not in the sums, because not given: time to cut MDF 12", run.Out);
        Assert.Equal(4, Cli.Run("make", job, "--json").Json.GetProperty("cost").GetProperty("minutes").GetDouble());
    }

    [Fact]
    public void The_plastic_on_the_command_line_brings_its_own_limits()
    {
        var run = Cli.Run("check", Write("plate.svg", Plate), "--depth", "12mm", "--draft", "4deg", "--stock", "mdf-12",
            "--gauge", "1mm", "--plastic", "petg", "--json");

        var low = run.Json.GetProperty("findings").EnumerateArray().Single(f => f.GetProperty("id").GetString() == "draft-low");
        Assert.Equal(5, low.GetProperty("limit").GetDouble());
        Assert.Contains("Eastman", low.GetProperty("source").GetString());
    }
}
