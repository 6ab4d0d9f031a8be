using System.Text.RegularExpressions;
using BuckGen.Cutting.Boards;
using BuckGen.Cutting.Costs;
using BuckGen.Design.Bucks;
using BuckGen.Design.Checks;
using BuckGen.Design.Forming;
using BuckGen.Design.Grouping;
using BuckGen.Design.Prediction;
using BuckGen.Design.Specs;
using BuckGen.Design.Trimming;
using BuckGen.Design.Venting;
using BuckGen.Dxf;
using BuckGen.Findings;
using BuckGen.Geometry.Offsetting;
using BuckGen.Intake.Catalogs;
using BuckGen.Jobs;
using BuckGen.Output.Pictures.Drawing;
using Xunit;

namespace BuckGen.Tests.Jobs;

public partial class JobFileTests
{
    private const string MinimalJob = """
        [outline]
        file = "sign.svg"
        [buck]
        depth = "36mm"
        [[stock]]
        thickness = "12mm"
        """;

    /// <summary>
    /// The template with every setting that is commented out switched on, but for those of [buck] that [part] and [[side]]
    /// replace.
    /// </summary>
    private static string Everything { get; } = CommentedSetting().Replace(
            SetOfBuck().Replace(JobTemplate.Text("sign.svg"), ""), "$1")
        // Two tables of stock are in it; one names the catalog.
        .Replace("# [", "[", StringComparison.Ordinal)
        // The outline has a size or a scale.
        .Replace("\nscale = 1 ", "\n# scale = 1 ", StringComparison.Ordinal)
        // A stretch of the side stands on another, and leads in by its inset alone.
        .Replace("[[side]]\n", "[[side]]\ndraft = 5\n[[side]]\n", StringComparison.Ordinal)
        .Replace("\ndraft = \"12deg\"", "\n# draft = \"12deg\"", StringComparison.Ordinal);

    [Theory]
    [InlineData("depth = 36mm", "depth = \"36mm\"")]
    [InlineData("depth = 1 1/2in # as drawn", "depth = \"1 1/2in\"")]
    [InlineData("depth = 3/4\"", "depth = \"3/4in\"")]
    [InlineData("draft = 5deg", "draft = \"5deg\"")]
    [InlineData("shrinkage=0.5%", "shrinkage = \"0.5%\"")]
    public void A_quantity_without_quotes_is_shown_with_them(string line, string quoted) => Assert.Equal(
        $"sign.toml, line 4: a number with its unit stands in quotes; write {quoted}.",
        Assert.Single(Assert.Throws<JobFileException>(() => JobFile.Read(
            MinimalJob.Replace("depth = \"36mm\"", line, StringComparison.Ordinal), "sign.toml")).Faults).Message);

    [Fact]
    public void Boards_are_named_by_their_id_in_the_catalog_or_by_their_thickness()
    {
        string Job(string stock) => $"[outline]\nfile = \"sign.svg\"\n[buck]\ndepth = \"36mm\"\nstock = {stock}\n";

        var one = JobFile.Read(Job("\"mdf-12\""), "sign.toml").Buck.Stock;
        var several = JobFile.Read(Job("[\"mdf-3\", \"1/2in\"]\n[[stock]]\nthickness = \"9mm\"\n"), "sign.toml").Buck.Stock;

        Assert.Equal([Stock.FromCatalog(Catalog.BuiltIn.FindStock("mdf-12")!)], one);
        Assert.Equal([9, Catalog.BuiltIn.FindStock("mdf-3")!.Thickness, 12.7], several.Select(s => s.Thickness));
        Assert.Contains("line 5: the stock \"teak\" is neither a thickness, such as \"12mm\", nor in the catalog",
            Assert.Throws<JobFileException>(() => JobFile.Read(Job("\"teak\""), "sign.toml")).Message);
    }

    [Fact]
    public void A_base_is_cut_from_a_board_of_the_job_or_of_the_catalog()
    {
        string Job(string stock) => MinimalJob + $"\ncatalog = \"birch-ply-4\"\n[base]\nstock = \"{stock}\"\n";

        // By its id it is the job's own board, with the thickness that was measured.
        Assert.Equal(12, JobFile.Read(Job("birch-ply-4"), "sign.toml").Buck.Base!.Stock.Thickness);
        Assert.Equal(Catalog.BuiltIn.FindStock("mdf-9")!.Thickness,
            JobFile.Read(Job("mdf-9"), "sign.toml").Buck.Base!.Stock.Thickness);
    }

    [Fact]
    public void The_stretches_of_the_side_are_read_in_their_order()
    {
        var job = JobFile.Read(MinimalJob.Replace("[[stock]]", "edge-radius = \"1/8in\"\n[[side]]\ndraft = \"4deg\"\n"
            + "[[side]]\nheight = 0\ninset = \"8mm\"\n[[side]]\nheight = \"12mm\"\ndraft = 10\n[[stock]]"), "sign.toml");

        Assert.Equal(3.175, job.Buck.EdgeRadius, 1e-9);
        Assert.Equal([new() { Draft = 4 }, new() { Height = 0, Inset = 8 }, new() { Height = 12, Draft = 10 }], job.Buck.Side);
    }

    [Theory]
    [InlineData("draft = 3\n[[side]]\ndraft = 4", 5, "\"draft\" is that of the whole side")]
    [InlineData("[[side]]\ndraft = -4", 6, "the draft is -4 degrees; it must be from 0 to 89 degrees: below 0 the wall")]
    [InlineData("[[side]]\ndraft = 4\n[[side]]\nheight = 3\ninset = 1\ndraft = 2", 8,
        "stretch 2 of the side has a draft and an inset")]
    [InlineData("[[side]]\ndraft = 4\n[[side]]\ndraft = 2", 5, "2 stretches of the side have no height; leave out that of one")]
    [InlineData("[[side]]\nslope = 4\ndraft = 3", 6, "in [[side]] \"slope\" is not known")]
    [InlineData("[side]\ndraft = 4", 5, "the table side is written [[side]]")]
    public void A_side_that_cannot_be_is_refused_with_its_line(string side, int line, string says)
    {
        var refused = Assert.Throws<JobFileException>(() =>
            JobFile.Read(MinimalJob.Replace("[[stock]]", side + "\n[[stock]]"), "sign.toml"));

        var fault = Assert.Single(refused.Faults);
        Assert.Equal(line, fault.Line);
        Assert.Contains(says, fault.Message);
    }

    [Fact]
    public void What_is_left_out_has_the_defaults_of_the_library()
    {
        var job = JobFile.Read(MinimalJob, "sign.toml");

        var defaults = new BuckSpec { Depth = 36, Stock = job.Buck.Stock };
        Assert.Equal(defaults, job.Buck);
        Assert.Equal(new CuttingSpec(), job.Cutting);
        Assert.Equal((DxfVersion.R12, false, Paper.A4, false),
            (job.Output.DxfVersion, job.Output.Svg, job.Output.Paper, job.Output.Model));
        Assert.Equal(new FormingSpec(), job.Forming);
        Assert.Equal("sign", job.Title);
        Assert.Null(job.Reading.Units);
        Assert.Equal(("12 mm", 12.0), (job.Buck.Stock[0].Name, job.Buck.Stock[0].Thickness));
    }

    [Fact]
    public void The_template_says_what_the_defaults_are()
    {
        var job = JobFile.Read(JobTemplate.Text("sign.svg"), "job.toml");

        Assert.Equal("sign.svg", job.OutlineFile);
        Assert.Equal(new BuckSpec { Depth = 36, Stock = job.Buck.Stock }, job.Buck);
        Assert.Equal(new CuttingSpec(), job.Cutting);
        Assert.Equal((DxfVersion.R12, false, Paper.A4, false),
            (job.Output.DxfVersion, job.Output.Svg, job.Output.Paper, job.Output.Model));
    }

    [Fact]
    public void Every_setting_of_the_template_is_understood_when_switched_on()
    {
        var job = JobFile.Read(Everything, "job.toml", Catalog.BuiltIn);

        // The values shown beside the comment signs are the defaults too, where there is one.
        var defaults = new BuckSpec { Depth = 36, Stock = job.Buck.Stock, Side = job.Buck.Side };
        Assert.Equal(0.5, job.Buck.Shrinkage);
        Assert.Equal(new BasePlate(job.Buck.Stock[0]) { Under = job.Buck.Stock[0] }, job.Buck.Base);
        Assert.Equal(defaults with
        {
            Shrinkage = 0.5,
            Part = new() { Size = new(120, 80), CutHeight = 6 },
            Base = job.Buck.Base,
            Vents = job.Buck.Vents,
            Plenum = job.Buck.Plenum,
            Sheet = job.Buck.Sheet,
            Former = job.Buck.Former,
            Jig = job.Buck.Jig,
            Flange = job.Buck.Flange,
            Panel = job.Buck.Panel,
            Groups = job.Buck.Groups,
            Prediction = new() { Friction = 0.3, Modulus = 0.2 },
            Checks = job.Buck.Checks
        }, job.Buck);
        Assert.Equal([new Silence("corner-sharp", "the customer wants it so")], job.Buck.Checks.Silenced);
        // What is left out follows the plastic; shown are the values for plastics in general.
        Assert.Equal(new CheckSpec { MinDraftMale = 3, MinDraftFemale = 2, MaxDepthMale = 1, MaxDepthFemale = 0.75 },
            job.Buck.Checks with { Silenced = [] });
        Assert.Equal(
            new SheetSpec
            {
                Plastic = Catalog.BuiltIn.FindPlastic("petg"),
                MinWall = 0.5,
                PricePerSquareMetre = 12.5,
                Sizes = job.Buck.Sheet!.Sizes
            }, job.Buck.Sheet);
        Assert.Equal([new RectangleSize(1220, 610)], job.Buck.Sheet.Sizes);
        Assert.Equal(
            new FormerSpec
            {
                Opening = new(300, 200),
                Platen = new(290, 190),
                Travel = 120,
                Gap = 40,
                PlugGap = 5,
                PlugDepth = 30,
            },
            job.Buck.Former);
        Assert.Equal(new FormingSpec { Friction = 0.3, Modulus = 0.2 }, job.Forming);
        Assert.Equal(new JigSpec { TrimHeight = 12 }, job.Buck.Jig);
        Assert.Equal(new FlangeSpec(job.Buck.Stock[0]) { Margin = 20 }, job.Buck.Flange);
        Assert.Equal(new PanelSpec(job.Buck.Stock[0]) { Fit = 0.5 }, job.Buck.Panel);
        Assert.Equal(new GroupSpec(job.Buck.Stock[0]) { Fit = 0.5 }, job.Buck.Groups);
        var vents = job.Buck.Vents!;
        Assert.Equal(new VentSpec { Diameter = 0.8, Points = vents.Points, KeepOut = vents.KeepOut, Air = vents.Air }, vents);
        // 67.725 kPa below 101.325 kPa of air.
        Assert.Equal((2.0, 40.0, 33_600.0, 1.0),
            (vents.Air.PumpDisplacement, vents.Air.ReservoirVolume, vents.Air.ReservoirPressure, vents.Air.WantedTime));
        Assert.Equal(new PlenumSpec(job.Buck.Stock[0]) { Port = new(100, 60) }, job.Buck.Plenum);
        Assert.Equal(
            new RateSpec
            {
                Currency = "EUR",
                Labour = 40,
                Machine = 30,
                MarkFeed = 3000,
                PathSeconds = 1,
                BoardMinutes = 2,
                DrillSeconds = 10,
                GlueMinutes = 5
            }, job.Output.Rates);
        Assert.Equal((9.8, 900), (job.Buck.Stock[0].Price, job.Buck.Stock[0].CutFeed));
        Assert.Equal(new CuttingSpec { Bed = new(600, 400), Seams = new() }, job.Cutting);
        Assert.Equal(("panel.svg", "PANEL"), (job.PanelDrawing!.File, job.PanelDrawing.Reading.Layers.Single()));
        Assert.Equal(("rim.svg", "RIM"), (job.FlangeDrawing!.File, job.FlangeDrawing.Reading.Layers.Single()));
        Assert.Equal("mm", job.Reading.Units);
        Assert.Equal(["OUTLINE"], job.Reading.Layers);
        Assert.Equal(0.1, job.Reading.Tolerance.Join);
        Assert.Equal(3.8, job.Buck.Stock[1].Thickness);
    }

    [Fact]
    public void The_template_shows_every_key_that_is_understood()
    {
        // A wrong key makes the reader list the ones it knows, table by table.
        foreach (var table in
            (string[])["outline", "part", "base", "vents", "vacuum", "plenum", "sheet", "former", "forming", "jig", "flange",
                "panel", "groups", "seams", "checks", "dowels", "cutting", "rates", "output"])
        {
            var text = Regex.Replace(Everything, $@"^\[{table}\]", $"[{table}]\nzzz = 1", RegexOptions.Multiline);
            var message = Assert.Throws<JobFileException>(() => JobFile.Read(text, "job.toml", Catalog.BuiltIn)).Message;

            var known = message[(message.IndexOf("known here: ", StringComparison.Ordinal) + 12)..].TrimEnd('.').Split(", ");
            Assert.NotEmpty(known);
            Assert.All(known,
                key => Assert.Matches(new Regex($@"^(# )?{Regex.Escape(key)} = ", RegexOptions.Multiline), Everything));
        }
    }

    [Fact]
    public void The_template_shows_every_key_above_the_tables()
    {
        var message =
            Assert.Throws<JobFileException>(() => JobFile.Read("zzz = 1\n" + Everything, "job.toml", Catalog.BuiltIn)).Message;

        Assert.EndsWith("known here: catalog, isolate-plugins, plugin-seconds, plugins, title.", message);
        Assert.Equal("my-catalog.toml", JobFile.CatalogName(Everything, "job.toml"));
        Assert.Equal(["my-plugin.dll"], JobFile.Plugins(Everything, "job.toml").Files);
    }

    [Fact]
    public void A_job_takes_its_stocks_from_the_catalog_it_is_given()
    {
        var catalog =
            CatalogFile.Read("[[stock]]\nid = \"oak\"\nname = \"Oak\"\nthickness = 9.8\nsource = \"measured\"", "my.toml");
        var text = MinimalJob.Replace("thickness = \"12mm\"", "catalog = \"oak\"", StringComparison.Ordinal);

        Assert.Null(JobFile.CatalogName(text, "job.toml"));
        Assert.Equal(("Oak", 9.8),
            JobFile.Read(text, "job.toml", catalog).Buck.Stock.Select(s => (s.Name, s.Thickness)).Single());
        Assert.Contains("\"oak\" is not in the catalog",
            Assert.Throws<JobFileException>(() => JobFile.Read(text, "job.toml")).Message);
    }

    [Fact]
    public void A_job_whose_catalog_was_not_read_along_is_refused()
    {
        var message =
            Assert.Throws<JobFileException>(() => JobFile.Read("catalog = \"my.toml\"\n" + MinimalJob, "job.toml")).Message;

        Assert.StartsWith("job.toml, line 1: the job names the catalog \"my.toml\"", message);
        Assert.StartsWith("job.toml, line 1: ",
            Assert.Throws<JobFileException>(() => JobFile.CatalogName("catalog = 3", "job.toml")).Message);
    }

    [Fact]
    public void A_prediction_out_of_range_is_refused_with_its_line()
    {
        var message =
            Assert.Throws<JobFileException>(() => JobFile.Read(MinimalJob + "\n[forming]\nmodulus = 0\n", "job.toml")).Message;

        Assert.Matches(@"^job\.toml, line 8: .*stiffness of the hot sheet.*from 0\.001 to 10 MPa", message);
    }

    [Fact]
    public void Every_kind_of_value_is_read()
    {
        var job = JobFile.Read("""
            title = "Otter sign"
            [outline]
            file = "../drawings/otter.dxf"
            units = "in"
            layers = ["A", "B"]
            [buck]
            depth = "1 1/2in"
            draft = 3
            kind = "Female"
            outline-at = "base"
            corners = "mitre"
            mitre-limit = 2.5
            steps = "middle"
            shrinkage = "1/2%"
            depth-tolerance = 0.25
            [[stock]]
            name = "oak"
            thickness = 9.2
            board = ["24in", 300]
            [[stock]]
            catalog = "mdf-3"
            thickness = "2.9mm"
            [base]
            stock = "oak"
            margin = "10mm"
            [dowels]
            diameter = "1/4in"
            [cutting]
            machine = "router"
            kerf = 0
            [output]
            dxf = "R2000"
            svg = true
            paper = "Letter"
            model = true
            """, "otter.toml");

        Assert.Equal(("Otter sign", "../drawings/otter.dxf", "in"), (job.Title, job.OutlineFile, job.Reading.Units));
        Assert.Equal((38.1, 3.0, BuckKind.Female, OutlineAt.Base),
            (Math.Round(job.Buck.Depth, 12), job.Buck.Draft, job.Buck.Kind, job.Buck.OutlineAt));
        Assert.Equal(new CornerJoin(Corners.Mitre, 2.5), job.Buck.Corners);
        Assert.Equal((Steps.Middle, 0.5, 0.25), (job.Buck.Steps, job.Buck.Shrinkage, job.Buck.DepthTolerance));
        Assert.Equal(new Stock("oak", 9.2, 24 * 25.4, 300), job.Buck.Stock[0]);
        Assert.Equal(("MDF 3", 2.9), (job.Buck.Stock[1].Name, job.Buck.Stock[1].Thickness));
        Assert.Equal(new BasePlate(job.Buck.Stock[0], 10), job.Buck.Base);
        Assert.Equal(6.35, job.Buck.Dowels.Diameter);
        Assert.Equal((Machine.Router, 0.0), (job.Cutting.Machine, job.Cutting.Kerf));
        Assert.Equal((DxfVersion.R2000, true, Paper.Letter, true),
            (job.Output.DxfVersion, job.Output.Svg, job.Output.Paper, job.Output.Model));
    }

    [Theory]
    [InlineData("[buck]\ndepht = 3", "line 2", "in [buck] \"depht\" is not known; the nearest known is \"depth\"")]
    [InlineData("[buck]\nzigzag = 3", "line 2", "in [buck] \"zigzag\" is not known; known here: ")]
    [InlineData("color = \"red\"", "line 1",
        "\"color\" is not known; known here: catalog, isolate-plugins, plugin-seconds, plugins, title")]
    [InlineData("[bucket]\na = 1", "line 1", "the table [bucket] is not known; the nearest known is [buck]")]
    [InlineData("[zigzag]\na = 1", "line 1", "the table [zigzag] is not known; known are [outline]")]
    [InlineData("[[cutting]]\nkerf = 1", "line 1", "the table cutting is written [cutting]")]
    [InlineData("[buck]\nkind = \"neuter\"", "line 2", "\"kind\" is \"neuter\"; it must be male or female")]
    [InlineData("[buck]\nkind = 1", "line 2", "\"kind\" is 1; it must be male or female")]
    [InlineData("[buck]\nsteps = \"both\"", "line 2", "it must be outside, inside or middle")]
    [InlineData("[buck]\ndraft = \"5mm\"", "line 2", "\"draft\" is \"5mm\"; it must be an angle such as \"5deg\"")]
    [InlineData("[buck]\nletter-height = \"8 furlongs\"", "line 2", "it must be a length such as")]
    [InlineData("[buck]\nshrinkage = \"lots\"", "line 2", "it must be a share such as \"0.5%\"")]
    [InlineData("[buck]\nmitre-limit = \"far\"", "line 2", "it must be a number")]
    [InlineData("[output]\nsvg = \"yes\"", "line 2", "\"svg\" must be true or false")]
    [InlineData("[output]\npaper = \"a3\"", "line 2", "\"paper\" is \"a3\"; it must be a4 or letter")]
    [InlineData("[output]\nmodel = \"stl\"", "line 2", "\"model\" must be true or false")]
    [InlineData("[output]\ndxf = \"R14\"", "line 2", "it must be r12 or r2000")]
    [InlineData("title = 5", "line 1", "\"title\" must be text in quotes")]
    [InlineData("[outline]\nlayers = \"A\"", "line 2", "\"layers\" must be a list of texts")]
    [InlineData("[base]\nstock = \"teak\"", "line 2",
        "the stock \"teak\" is neither a stock of this job (12 mm) nor in the catalog")]
    [InlineData("[base]\nmargin = 3", "line 1", "\"stock\" is missing")]
    [InlineData("[sheet]\nplastic = \"cheese\"", "line 2", "the plastic \"cheese\" is not in the catalog")]
    [InlineData("[checks]\nsilence = [\"web-between\"]", "line 2", "\"silence\" must be a list such as")]
    [InlineData("[[stock]]\ncatalog = \"cheese\"", "line 2", "\"cheese\" is not in the catalog")]
    [InlineData("[[stock]]\nname = \"thin air\"", "line 1", "in [[stock]] \"thickness\" is missing")]
    [InlineData("[[bucket]]\na = 1", "line 1", "the table [[bucket]] is not known; the nearest known is [buck]")]
    [InlineData("[[stock]]\nthickness = 3\nboard = [600]", "line 3", "\"board\" must be two lengths")]
    [InlineData("[buck]\ndraft = 1979-05-27", "line 2", "must be an angle")]
    [InlineData("[buck]\ndraft = nan", "line 2", "must be an angle")]
    public void What_is_not_understood_is_refused_with_file_line_and_remedy(string wrong, string line, string says)
    {
        var message = Assert.Throws<JobFileException>(() => JobFile.Read(With(wrong), "job.toml")).Message;

        Assert.StartsWith($"job.toml, {line}: ", message);
        Assert.Contains(says, message);
        Assert.EndsWith(".", message);
        Assert.DoesNotContain('\n', message);
    }

    [Theory]
    [InlineData("[buck\ndepth = 3", "line 1")]
    [InlineData("a = ", "line 1")]
    [InlineData("[outline]\nfile = \"a.svg", "line 2")]
    [InlineData("x = 1\nx = 2", "line 2")]
    [InlineData("[buck]\n[buck]", "line 2")]
    public void Broken_TOML_is_refused_with_its_line(string text, string line)
    {
        var message = Assert.Throws<JobFileException>(() => JobFile.Read(text, "job.toml")).Message;

        Assert.All(message.Split('\n'), l => Assert.Matches(@"^job\.toml, line \d+: .+\.$", l));
        Assert.StartsWith($"job.toml, {line}: ", message);
    }

    [Theory]
    [InlineData("", "\"file\" is missing")]
    [InlineData("[outline]\nfile = \"a.svg\"", "\"depth\" is missing")]
    public void A_job_without_outline_or_depth_is_refused(string text, string says) =>
        Assert.Contains(says, Assert.Throws<JobFileException>(() => JobFile.Read(text, "job.toml")).Message);

    [Fact]
    public void A_misspelt_key_that_must_be_given_is_one_mistake()
    {
        var text = "[outline]\nfile = \"a.svg\"\n[buck]\ndepht = 36\n[[stock]]\nthikness = 12";

        Assert.Equal(
            "job.toml, line 4: in [buck] \"depht\" is not known; the nearest known is \"depth\".\n"
            + "job.toml, line 6: in [[stock]] \"thikness\" is not known; the nearest known is \"thickness\".",
            Assert.Throws<JobFileException>(() => JobFile.Read(text, "job.toml")).Message);
    }

    [Fact]
    public void A_quote_or_backslash_in_the_outlines_name_survives_the_template()
    {
        const string Name = @"my ""best"" \ sign.svg";

        Assert.Equal(Name, JobFile.Read(JobTemplate.Text(Name), "job.toml").OutlineFile);
    }

    /// <summary>The wrong lines first, so that their numbers stay; what they do not say is filled up after them.</summary>
    private static string With(string wrong)
    {
        var text = wrong;
        if (wrong.Contains("[outline]", StringComparison.Ordinal)) text += "\nfile = \"sign.svg\"";
        else if (wrong.StartsWith("[buck]", StringComparison.Ordinal)) text += "\ndepth = 36";
        if (!wrong.StartsWith("[buck]", StringComparison.Ordinal)) text += "\n[buck]\ndepth = 36";
        if (!wrong.Contains("[outline]", StringComparison.Ordinal)) text += "\n[outline]\nfile = \"sign.svg\"";
        return text + "\n[[stock]]\nthickness = 12\n";
    }

    [GeneratedRegex(@"^(depth|outline-at|draft) = .*\n", RegexOptions.Multiline)]
    private static partial Regex SetOfBuck();

    [GeneratedRegex(@"^# (\w[\w-]* = |\[\[stock\]\])", RegexOptions.Multiline)]
    private static partial Regex CommentedSetting();
}
