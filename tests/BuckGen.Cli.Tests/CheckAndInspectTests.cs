using System.Text.Json;
using Xunit;

namespace BuckGen.Cli.Tests;

public sealed class CheckAndInspectTests : Workshop
{
    [Fact]
    public void Check_says_what_could_go_wrong_and_writes_nothing()
    {
        Write("plate.svg", Plate);
        Write("job.toml", PlateJob.Replace("24mm", "30mm", StringComparison.Ordinal));

        var run = Cli.Run("check", At("job.toml"));

        run.AssertDone();
        Assert.Contains("depth-missed", run.Out);
        Assert.Equal(["job.toml", "plate.svg"], Present());
    }

    [Fact]
    public void Check_ends_with_1_when_the_design_has_errors()
    {
        var run = Cli.Run("check", Write("strip.svg", Strip), "--depth", "36", "--stock", "12", "--outline-at", "base", "--json");

        Assert.Equal((1, ""), (run.Status, run.Error));
        Assert.Contains("nothing-left", run.Json.GetProperty("findings").EnumerateArray()
            .Select(f => f.GetProperty("id").GetString()));
        Assert.Equal(["strip.svg"], Present());
    }

    [Fact]
    public void Check_of_a_sound_design_says_so()
    {
        // A counter wider than it is deep.
        Write("plate.svg", Plate.Replace("r=\"12\"", "r=\"20\"", StringComparison.Ordinal));
        var run = Cli.Run("check", Write("job.toml", PlateJob));

        run.AssertDone();
        Assert.Contains("the design can be cut", run.Out);
    }

    [Fact]
    public void Inspect_tells_size_loops_and_unit()
    {
        var run = Cli.Run("inspect", Write("plate.svg", Plate));

        run.AssertDone();
        Assert.Contains("100 x 60 mm (3.937 x 2.362 in)", run.Out);
        Assert.Contains("2 closed loops: 1 island, 1 hole", run.Out);
    }

    [Fact]
    public void Inspect_answers_in_JSON_with_the_promised_names()
    {
        var json = Cli.Run("inspect", Write("plate.svg", Plate), "--json").Json;

        Assert.Equal((2, 1, 1),
            (json.GetProperty("loops").GetInt32(), json.GetProperty("islands").GetInt32(), json.GetProperty("holes").GetInt32()));
        Assert.Equal(100, json.GetProperty("bounds").GetProperty("maxX").GetDouble() - json.GetProperty("bounds")
            .GetProperty("minX").GetDouble(), 1e-3);
        // 6000 less four corners of (4 - π)·6²/4 each and a disc of 12 mm radius.
        Assert.Equal(6000 - (4 - Math.PI) * 36 - Math.PI * 144, json.GetProperty("area").GetDouble(), 0.05);
        Assert.Equal(2 * (88 + 48) + 2 * Math.PI * 6 + 2 * Math.PI * 12, json.GetProperty("perimeter").GetDouble(), 0.05);
        Assert.All((string[])["units", "repairs", "notes", "name"], name => Assert.True(json.TryGetProperty(name, out _), name));
    }

    [Fact]
    public void Inspect_tells_narrow_places_and_tight_radii()
    {
        var run = Cli.Run("inspect", Write("plate.svg", Plate));

        Assert.Contains("Narrowest neck 18 mm (0.709 in) at 60, 19", run.Out);
        Assert.Contains("Narrowest gap 24 mm (0.945 in), inside a hole, at 60, 40", run.Out);
        Assert.Contains("Minimum inside radius 12 mm (0.472 in)", run.Out);
        Assert.Contains("Minimum outside radius 6 mm (0.236 in) at 11.757, 11.757", run.Out);
        Assert.DoesNotContain("corner", run.Out);
        Assert.DoesNotContain("Widths are right to", run.Out);
    }

    [Fact]
    public void Inspect_tells_corners_and_how_right_the_widths_of_curves_are()
    {
        var leaf = Write("leaf.svg",
            """<svg xmlns="http://www.w3.org/2000/svg" width="60mm" height="40mm" viewBox="0 0 60 40">"""
            + """<path d="M5 20 C20 0 40 0 55 20 H30 L28 21 L26 20 Z"/></svg>""");

        var run = Cli.Run("inspect", leaf);
        var measures = Cli.Run("inspect", leaf, "--json").Json.GetProperty("measures");

        Assert.Contains("Sharpest corner 53.13 degrees, an outside corner, at 5, 20", run.Out);
        Assert.Contains("Widths are right to ", run.Out);
        Assert.Equal(JsonValueKind.Null, measures.GetProperty("minInsideRadius").ValueKind);
        Assert.Equal("outside", measures.GetProperty("sharpestCorner").GetProperty("side").GetString());
        Assert.InRange(measures.GetProperty("error").GetDouble(), 1e-4, 0.01);
    }

    [Fact]
    public void Inspect_draws_the_outline_and_may_draw_it_again()
    {
        var plate = Write("plate.svg", Plate);

        Cli.Run("inspect", plate, "--svg", At("picture.svg")).AssertDone();
        var first = File.ReadAllText(At("picture.svg"));
        Cli.Run("inspect", plate, "--svg", At("picture.svg")).AssertDone();

        Assert.Contains("plate.svg", first);
        Assert.Equal(first, File.ReadAllText(At("picture.svg")));
    }

    [Fact]
    public void Inspect_never_draws_over_a_drawing()
    {
        var plate = Write("plate.svg", Plate);

        Cli.Run("inspect", plate, "--svg", plate).AssertRefused("plate.svg exists and is not a picture from BuckGen");
        Cli.Run("inspect", plate, "--svg", Folder).AssertRefused("is a folder");

        Assert.Equal(Plate, File.ReadAllText(plate));
    }

    [Fact]
    public void Specks_below_the_kerf_can_be_left_out_and_are_reported()
    {
        var specks = Write("specks.svg", Plate.Replace("r=\"12\"", "r=\"0.07\"", StringComparison.Ordinal));

        Assert.Contains("2 closed loops", Cli.Run("inspect", specks).Out);
        var run = Cli.Run("inspect", specks, "--min-loop-width", "0.15mm");

        Assert.Contains("1 closed loop: 1 island, 0 holes", run.Out);
        Assert.Contains("1 closed path narrower than 0.15 mm was left out", run.Out);
        Cli.Run("inspect", specks, "--min-loop-width", "11mm").AssertRefused("from 0 to 10 mm");
    }

    [Fact]
    public void The_unit_can_be_given_when_the_drawing_names_none()
    {
        var silent =
            Write("silent.svg",
                """<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 20 20"><rect width="4" height="2"/></svg>""");

        var bounds = Cli.Run("inspect", silent, "--units", "in", "--json").Json.GetProperty("bounds");

        Assert.Equal(4 * 25.4, bounds.GetProperty("maxX").GetDouble() - bounds.GetProperty("minX").GetDouble(), 1e-3);
    }
}
