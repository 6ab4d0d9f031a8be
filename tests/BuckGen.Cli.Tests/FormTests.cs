using Xunit;

namespace BuckGen.Cli.Tests;

[Trait("Tier", "slow")]
public sealed class FormTests : Workshop
{
    private static readonly string[] Sheet = ["--depth", "18mm", "--stock", "6mm", "--gauge", "1mm"];

    [Fact]
    public void It_tells_the_thinnest_wall_and_where()
    {
        var run = Cli.Run(["form", Write("plate.svg", Plate), .. Sheet]);

        run.AssertDone();
        Assert.Matches(@"Predicted wall: 0\.\d+ to 0\.\d+ mm on average over the part, thinnest 0\.\d+ to 0\.\d+ mm at", run.Out);
        Assert.Matches(@"Thickness that 1 % of the part is below: 0\.\d+ to 0\.\d+ mm; 5 %: 0\.\d+ to 0\.\d+ mm", run.Out);
        Assert.Equal(["plate.svg"], Present());
    }

    [Fact]
    public void It_shows_what_moves_the_thinnest_wall_where_that_is_asked_for()
    {
        var run = Cli.Run(["form", Write("plate.svg", Plate), .. Sheet, "--compare-inputs", "--json"]);
        var inputs = run.Json.GetProperty("formed").GetProperty("inputs").EnumerateArray().ToArray();

        Assert.True(inputs.Length >= 6);
        Assert.Contains(inputs, i => i.GetProperty("input").GetString() == "sag before forming");
        Assert.All(inputs, i => Assert.NotEqual(i.GetProperty("from").GetString(), i.GetProperty("to").GetString()));

        var printed = Cli.Run(["form", At("plate.svg"), .. Sheet, "--compare-inputs"]).Out;
        Assert.Contains("What changes the thinnest wall, each input alone:", printed);
        Assert.Contains("friction on the buck, sticks to 0.3: ", printed);
        Assert.DoesNotContain("What changes", Cli.Run(["form", At("plate.svg"), .. Sheet]).Out);
    }

    [Fact]
    public void It_answers_in_JSON_and_draws_a_map()
    {
        var run = Cli
            .Run(["form", Write("plate.svg", Plate), .. Sheet, "--min-wall", "0.6mm", "--stepped", "--map",
                At("map.svg"), "--json"]);

        var formed = run.Json.GetProperty("formed");
        Assert.True(formed.GetProperty("stepped").GetBoolean());
        Assert.InRange(formed.GetProperty("thinnest").GetProperty("thickness").GetDouble(), 0.1,
            formed.GetProperty("mean").GetDouble());
        Assert.InRange(formed.GetProperty("thinnest").GetProperty("thickness").GetDouble(),
            formed.GetProperty("thinnestRange").GetProperty("min").GetDouble(),
            formed.GetProperty("thinnestRange").GetProperty("max").GetDouble());
        Assert.InRange(formed.GetProperty("gaugeNeeded").GetProperty("min").GetDouble(), 0.6, 5);
        Assert.InRange(formed.GetProperty("modulus").GetProperty("max").GetDouble(), 0.001, 10);
        Assert.Contains("mm; beyond", File.ReadAllText(At("map.svg")));
    }

    [Fact]
    public void Of_a_job_file_it_takes_what_stands_there()
    {
        Write("plate.svg", Plate);
        var job = PlateJob + "\n[sheet]\ngauge = \"1mm\"\n[forming]\nstepped = true\npredict = false\n";

        Assert.True(Cli.Run("form", Write("job.toml", job), "--json").Json.GetProperty("formed").GetProperty("stepped")
            .GetBoolean());
        Assert.Equal(System.Text.Json.JsonValueKind.Null,
            Cli.Run("make", At("job.toml"), "--json").Json.GetProperty("formed").ValueKind);
        var beside = Cli.Run("form", At("job.toml"), "--depth", "3mm");
        Assert.Equal(2, beside.Status);
        Assert.Contains("--depth has no effect with a job file", beside.Error);
    }

    [Fact]
    public void Make_predicts_the_wall_unless_it_is_turned_off()
    {
        Write("plate.svg", Plate);

        var run = Cli.Run("make", Write("job.toml", PlateJob + "\n[sheet]\ngauge = \"1mm\"\n"));

        run.AssertDone();
        Assert.Contains("Predicted wall: ", run.Out);
        Assert.Contains("id=\"wall\"", File.ReadAllText(At(Path.Combine("out", "report.html"))));
    }

    [Fact]
    public void It_says_why_nothing_is_predicted()
    {
        var run = Cli.Run(["form", Write("plate.svg", Plate), .. Sheet, "--frame", "90x50mm"]);

        Assert.Contains("wall-not-predicted", run.Out);
        Assert.Contains("frame-too-small", run.Out);
    }

    [Fact]
    public void Without_a_sheet_it_asks_for_one()
    {
        var run = Cli.Run("form", Write("plate.svg", Plate), "--depth", "18mm", "--stock", "6mm");

        Assert.Equal(2, run.Status);
        Assert.Contains("give its thickness with --gauge", run.Error);
    }
}
