using Xunit;

namespace BuckGen.Cli.Tests;

public sealed class BuckTests : Workshop
{
    [Fact]
    public void A_drawing_a_depth_and_a_stock_are_enough()
    {
        var run = Cli.Run("buck", Write("plate.svg", Plate), "--depth", "24mm", "--stock", "12mm", "--out", At("out"));

        run.AssertDone();
        Assert.Equal(
            ["cut/board-01-12-mm.dxf", "layers/layer-01.dxf", "layers/layer-02.dxf", "report.html", "report.png", "summary.json"],
            Present("out"));
        Assert.Contains("24 mm", run.Out);
        // The cautions stand under every buck.
        Assert.Contains("wood dust", run.Out);
    }

    [Fact]
    public void A_round_upper_edge_is_work_on_the_glued_stack()
    {
        var run = Cli.Run("buck", Write("plate.svg", Plate), "--depth", "24mm", "--stock", "12mm", "--edge-radius", "3mm",
            "--out", At("out"));

        run.AssertDone();
        Assert.Contains("Round its upper edge to 3 mm when it is glued", run.Out);
        // Of the two layers the upper one is rounded.
        Assert.Equal(2, File.ReadAllText(At("out/report.html")).Split("its edge is rounded to 3 mm").Length);
        // The boards are cut as for a sharp edge.
        Cli.Run("buck", Write("plate.svg", Plate), "--depth", "24mm", "--stock", "12mm", "--out", At("sharp")).AssertDone();
        Assert.All((string[])["layers/layer-01.dxf", "layers/layer-02.dxf", "cut/board-01-12-mm.dxf"], f =>
            Assert.Equal(File.ReadAllBytes(At("sharp/" + f)), File.ReadAllBytes(At("out/" + f))));
    }

    [Fact]
    public void Every_option_of_the_design_page_is_taken()
    {
        var run = Cli.Run("buck", Write("plate.svg", Plate), "--depth", "1 1/2in", "--draft", "3deg", "--stock", "12mm", "6mm",
            "--kerf", "0.15mm",
            "--corners", "mitre", "--steps", "inside", "--outline-at", "base", "--kind", "female", "--out", At("out"), "--json");

        run.AssertDone();
        var buck = run.Json.GetProperty("buck");
        Assert.Equal(38.1, buck.GetProperty("depthWanted").GetDouble(), 1e-9);
        Assert.Equal((3.0, "mitre", "inside", "base", "female"),
            (buck.GetProperty("draft").GetDouble(), buck.GetProperty("corners").GetString(),
                buck.GetProperty("steps").GetString(),
                buck.GetProperty("outlineAt").GetString(), buck.GetProperty("kind").GetString()));
        Assert.Equal(0.15, run.Json.GetProperty("cutting").GetProperty("kerf").GetDouble());
        Assert.Equal([12, 12, 12], run.Json.GetProperty("layers").EnumerateArray()
            .Select(l => l.GetProperty("thickness").GetDouble()));
    }

    [Fact]
    public void JSON_on_the_output_is_the_summary_in_the_folder()
    {
        var run = Cli.Run("buck", Write("plate.svg", Plate), "--depth", "24", "--stock", "mdf-12", "--out", At("out"), "--json");

        Assert.Equal(File.ReadAllText(At("out/summary.json")), run.Out);
        Assert.Equal("MDF 12", run.Json.GetProperty("layers")[0].GetProperty("stock").GetString());
    }

    [Fact]
    public void SVG_and_R2000_come_when_asked_for()
    {
        Cli.Run("buck", Write("plate.svg", Plate), "--depth", "12", "--stock", "12", "--svg", "--dxf", "r2000", "--out",
            At("out")).AssertDone();

        Assert.Contains("layers/layer-01.svg", Present("out"));
        // AC1015 is the version word of R2000 in the DXF reference.
        Assert.Contains("AC1015", File.ReadAllText(At("out/layers/layer-01.dxf")));
    }

    [Fact]
    public void Models_come_when_asked_for_and_go_when_not()
    {
        string[] call = ["buck", Write("plate.svg", Plate), "--depth", "12", "--stock", "12", "--out", At("out")];
        Cli.Run([.. call, "--model"]).AssertDone();

        Assert.Equal(["buck-stepped.stl", "buck.glb", "buck.stl"], Present("out/model"));
        Assert.Contains("Removed 3 files of an earlier run", Cli.Run(call).Error);
        Assert.Empty(Present("out/model"));
    }

    [Fact]
    public void A_DXF_drawing_is_taken_as_well()
    {
        Cli.Run("buck", Write("plate.svg", Plate), "--depth", "12", "--stock", "12", "--out", At("out")).AssertDone();

        // What was written is a drawing again: holes and edge of the layer.
        var run = Cli.Run("inspect", At("out/layers/layer-01.dxf"), "--layers", "CUT_OUTER", "CUT_INNER", "--json");

        Assert.Equal((1, 1), (run.Json.GetProperty("islands").GetInt32(), run.Json.GetProperty("holes").GetInt32()));
    }

    [Fact]
    public void A_design_with_errors_ends_with_1_and_leaves_only_report_and_summary()
    {
        var run = Cli
            .Run("buck", Write("strip.svg", Strip), "--depth", "36", "--stock", "12", "--outline-at", "base", "--out", At("out"));

        Assert.Equal((1, ""), (run.Status, run.Error));
        Assert.Contains("ERROR", run.Out);
        Assert.Equal(["report.html", "report.png", "summary.json"], Present("out"));
    }

    [Fact]
    public void Forced_it_is_written_all_the_same()
    {
        var run = Cli.Run("buck", Write("strip.svg", Strip), "--depth", "36", "--stock", "12", "--outline-at", "base", "--out",
            At("out"), "--force");

        run.AssertDone();
        Assert.Contains("layers/layer-01.dxf", Present("out"));
    }

    [Fact]
    public void Errors_remove_the_cut_files_of_an_earlier_run()
    {
        // Old files beside a new summary would be cut by mistake.
        var drawing = Write("strip.svg", Strip);
        Cli.Run("buck", drawing, "--depth", "12", "--stock", "12", "--out", At("out")).AssertDone();
        Assert.Contains("layers/layer-01.dxf", Present("out"));

        Cli.Run("buck", drawing, "--depth", "36", "--stock", "12", "--outline-at", "base", "--out", At("out"));

        Assert.Equal(["report.html", "report.png", "summary.json"], Present("out"));
    }

    [Fact]
    public void Files_of_others_in_the_folder_are_left_alone()
    {
        Cli.Run("buck", Write("plate.svg", Plate), "--depth", "36", "--stock", "12", "--out", At("out")).AssertDone();
        Write("out/layers/my notes.txt", "keep");
        var second = Cli.Run("buck", At("plate.svg"), "--depth", "12", "--stock", "12", "--out", At("out"));

        // What is taken away is reported, on standard error.
        Assert.Equal(0, second.Status);
        Assert.Contains("Removed 2 files of an earlier run", second.Error);
        Assert.Equal(
            ["cut/board-01-12-mm.dxf", "layers/layer-01.dxf", "layers/my notes.txt", "report.html", "report.png", "summary.json"],
            Present("out"));
    }

    [Fact]
    public void A_stopped_run_says_so_and_writes_nothing()
    {
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        using var error = new StringWriter { NewLine = "\n" };

        var status = CommandLine.Run(
            ["buck", Write("plate.svg", Plate), "--depth", "24", "--stock", "12", "--out", At("out")],
            new(TextWriter.Null, error), stopped.Token);

        Assert.Equal(2, status);
        Assert.Equal("buckgen: stopped; the last complete result is untouched.\n", error.ToString());
        Assert.Empty(Present("out"));
    }
}
