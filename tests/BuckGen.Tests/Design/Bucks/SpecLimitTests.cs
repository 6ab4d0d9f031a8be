using BuckGen.Design.Bucks;
using BuckGen.Design.Checks;
using BuckGen.Design.Parts;
using BuckGen.Design.Specs;
using BuckGen.Design.Trimming;
using BuckGen.Design.Venting;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Geometry.Tests;
using BuckGen.Settings;
using Xunit;

namespace BuckGen.Tests.Design.Bucks;

/// <summary>
/// Every number of a spec has two limits: both are taken, the next number beyond each is refused by name, value and limit.
/// </summary>
public class SpecLimitTests
{
    private static readonly BuckSpec Whole = PlainBuck.Spec with
    {
        Base = new(PlainBuck.Mdf12),
        Sheet = new(),
        Vents = new(),
        Plenum = new(PlainBuck.Mdf12),
        Jig = new(),
        Flange = new(PlainBuck.Mdf12),
        Panel = new(PlainBuck.Mdf12),
    };

    /// <summary>"Above 0": the least number there is.</summary>
    private const double Above0 = double.Epsilon;

    private sealed record Row(string What, double Min, double Max, string Unit, string Range, Func<double, BuckSpec> With);

    private static readonly Row[] Rows =
    [
        new("depth", Above0, 1000, " mm", "above 0 and at most 1000 mm", v => Whole with { Depth = v }),
        new("draft", -45, 45, " degrees", "from -45 to 45 degrees", v => Whole with { Draft = v }),
        new("shrinkage", 0, 10, " %", "from 0 to 10 %", v => Whole with { Shrinkage = v }),
        new("depth tolerance", 0, 50, " mm", "from 0 to 50 mm", v => Whole with { DepthTolerance = v }),
        new("block margin", Above0, 500, " mm", "above 0 and at most 500 mm", v => Whole with { BlockMargin = v }),
        new("dowel diameter", 1, 50, " mm", "from 1 to 50 mm", v => Whole with { Dowels = new(v) }),
        new("dowel fit", 0, 2, " mm", "from 0 to 2 mm", v => Whole with { Dowels = new(6, v) }),
        new("dowel wall", 0.5, 100, " mm", "from 0.5 to 100 mm", v => Whole with { Dowels = new(6, 0.15, v) }),
        new("letter height", 2, 50, " mm", "0 or 2 to 50 mm", v => Whole with { LetterHeight = v }),
        new("mitre limit", 1, 20, "", "from 1 to 20", v => Whole with { Corners = new(Corners.Mitre, v) }),
        new("tolerance", 0.0005, 1, " mm", "from 0.0005 to 1 mm", v => Whole with { Tolerance = new(v) }),
        new("base margin", 0, 500, " mm", "from 0 to 500 mm", v => Whole with { Base = new(PlainBuck.Mdf12, v) }),

        new("minimum gap against webs", 0, 10, " times the depth", "from 0 to 10 times the depth",
            v => Checked(new() { WebGap = v })),
        new("minimum neck", 0, 100, " mm", "from 0 to 100 mm", v => Checked(new() { MinNeck = v })),
        new("minimum draft of a male buck", 0, 45, " degrees", "from 0 to 45 degrees", v => Checked(new() { MinDraftMale = v })),
        new("minimum draft of a cavity", 0, 45, " degrees", "from 0 to 45 degrees", v => Checked(new() { MinDraftFemale = v })),
        new("maximum depth of a cavity over its width", 0.01, 10, " times the width", "from 0.01 to 10 times the width",
            v => Checked(new() { MaxDepthFemale = v })),
        new("maximum height of a buck over its width", 0.01, 10, " times the width", "from 0.01 to 10 times the width",
            v => Checked(new() { MaxDepthMale = v })),
        new("maximum depth with a plug over the width", 0.01, 10, " times the width", "from 0.01 to 10 times the width",
            v => Checked(new() { MaxDepthPlugged = v })),
        new("maximum draw ratio", 1, 20, " times the area", "from 1 to 20 times the area", v => Checked(new() { MaxDraw = v })),
        new("maximum thinning", 1, 100, " times as thin", "from 1 to 100 times as thin", v => Checked(new() { MaxThinning = v })),
        new("minimum mean wall", 0, 25, " mm", "from 0 to 25 mm", v => Checked(new() { MinMeanWall = v })),
        new("minimum radius of a corner", 0, 20, " times the gauge", "from 0 to 20 times the gauge",
            v => Checked(new() { MinCorner = v })),
        new("maximum step between layers", 0, 20, " times the formed thickness", "from 0 to 20 times the formed thickness",
            v => Checked(new() { MaxStep = v })),
        new("gauge up to which grain shows", 0, 25, " mm", "from 0 to 25 mm", v => Checked(new() { GrainGauge = v })),
        new("minimum gap to the frame", 0, 10, " times the depth", "from 0 to 10 times the depth",
            v => Checked(new() { MinFrameGap = v })),
        new("minimum glue land", 0, 100, " mm", "from 0 to 100 mm", v => Checked(new() { MinGlueLand = v })),
        new("minimum bridge of a panel", 0, 20, " times the thickness", "from 0 to 20 times the thickness",
            v => Checked(new() { MinPanelBridge = v })),

        new("spacing of vents", 5, 500, " mm", "from 5 to 500 mm", v => Whole with { Vents = new() { Spacing = v } }),
        new("pitch of the vent grid", 5, 500, " mm", "from 5 to 500 mm", v => Whole with { Vents = new() { GridPitch = v } }),
        new("distance of vents from the wall", 0, 20, " mm", "from 0 to 20 mm",
            v => Whole with { Vents = new() { WallDistance = v } }),
        new("narrowest drill", 0.2, 10, " mm", "from 0.2 to 10 mm", v => Whole with { Vents = new() { MinDrill = v } }),
        new("diameter of vents", 0.2, 10, " mm", "from 0.2 to 10 mm", v => Whole with { Vents = new() { Diameter = v } }),
        new("diameter of relief bores", 1, 30, " mm", "from 1 to 30 mm", v => Whole with { Vents = new() { BoreDiameter = v } }),
        new("thickness left over a relief bore", 0.5, 50, " mm", "from 0.5 to 50 mm",
            v => Whole with { Vents = new() { FaceThickness = v } }),
        new("land round bores", 0.5, 50, " mm", "from 0.5 to 50 mm", v => Whole with { Vents = new() { Land = v } }),

        new("time for the air to leave", 0.01, 60, " s", "from 0.01 to 60 s",
            v => Whole with { Vents = new() { Air = new() { WantedTime = v } } }),
        new("pressure in the reservoir", 0, 101325, " Pa", "from 0 to 101325 Pa",
            v => Whole with { Vents = new() { Air = new() { ReservoirPressure = v } } }),

        new("width of plenum channels and feet", 3, 100, " mm", "from 3 to 100 mm",
            v => Ducted(new(PlainBuck.Mdf12) { Width = v })),
        new("diameter of the port", 3, 200, " mm", "from 3 to 200 mm", v => Ducted(new(PlainBuck.Mdf12) { PortDiameter = v })),
        new("maximum bow of the base", 0.01, 5, " mm", "from 0.01 to 5 mm", v => Ducted(new(PlainBuck.Mdf12) { MaxBow = v })),
        new("thickness of the base over a plenum", 2.5, 45, " mm", "from 2.5 to 45 mm",
            v => Whole with { Base = new(new("plate", v)) }),
        new("thickness of the base over a plenum", 2.5, 45, " mm", "from 2.5 to 45 mm",
            v => Whole with { Base = new(new("thick", 60), 20, new("plate", v)) }),

        new("price of a square metre of plastic", 0, 1e6, "", "from 0 to 1000000",
            v => Whole with { Sheet = new() { PricePerSquareMetre = v } }),
        new("gauge of the sheet", 0.1, 25, " mm", "from 0.1 to 25 mm", v => Whole with { Sheet = new() { Gauge = v } }),
        new("minimum wall of the part", 0.02, 25, " mm", "from 0.02 to 25 mm", v => Whole with { Sheet = new() { MinWall = v } }),
        new("width of a plastic sheet", 50, 5000, " mm", "from 50 to 5000 mm",
            v => Whole with { Sheet = new() { Sizes = [new(600, 400), new(v, 400)] } }),
        new("height of a plastic sheet", 50, 5000, " mm", "from 50 to 5000 mm",
            v => Whole with { Sheet = new() { Sizes = [new(600, v)] } }),

        new("width of the clamp frame", 50, 5000, " mm", "from 50 to 5000 mm",
            v => Whole with { Former = new() { Opening = new(v, 300) } }),
        new("height of the clamp frame", 50, 5000, " mm", "from 50 to 5000 mm",
            v => Whole with { Former = new() { Opening = new(300, v) } }),
        new("width of the platen", 50, 5000, " mm", "from 50 to 5000 mm",
            v => Whole with { Former = new() { Platen = new(v, 100) } }),
        new("height of the platen", 50, 5000, " mm", "from 50 to 5000 mm",
            v => Whole with { Former = new() { Platen = new(100, v) } }),
        new("gap between base and frame", 0, 100, " mm", "from 0 to 100 mm",
            v => Whole with { Former = new() { BaseGap = v } }),
        new("travel of the former", 1, 2000, " mm", "from 1 to 2000 mm", v => Whole with { Former = new() { Travel = v } }),
        new("gap between buck and frame", 0, 1000, " mm", "from 0 to 1000 mm", v => Whole with { Former = new() { Gap = v } }),
        new("gap round the plug", 0, 200, " mm", "from 0 to 200 mm", v => Whole with { Former = new() { PlugGap = v } }),
        new("temperature of the heater", 100, 1000, " degrees C", "from 100 to 1000 degrees C",
            v => Whole with { Former = new() { Heater = v } }),
        new("grip of the clamp frame", 0, 100, " mm", "from 0 to 100 mm", v => Whole with { Former = new() { Grip = v } }),
        new("seal lip", 0, 100, " mm", "from 0 to 100 mm", v => Whole with { Former = new() { Lip = v } }),

        new("trim height", 2, 500, " mm", "from 2 to 500 mm", v => Whole with { Jig = new() { TrimHeight = v } }),
        new("clearance of the jig", 0, 10, " mm", "from 0 to 10 mm", v => Whole with { Jig = new() { Clearance = v } }),
        new("land of the jig", 10, 300, " mm", "from 10 to 300 mm", v => Whole with { Jig = new() { Land = v } }),
        new("flange room of the jig", 0, 200, " mm", "from 0 to 200 mm", v => Whole with { Jig = new() { FlangeRoom = v } }),
        new("blade room over the core", 0, 50, " mm", "from 0 to 50 mm", v => Whole with { Jig = new() { BladeRoom = v } }),

        new("margin of the flange", 1, 500, " mm", "from 1 to 500 mm",
            v => Whole with { Flange = new(PlainBuck.Mdf12) { Margin = v } }),
        new("corner radius of the flange", 0, 500, " mm", "from 0 to 500 mm",
            v => Whole with { Flange = new(PlainBuck.Mdf12) { CornerRadius = v } }),
        new("width of the flange", 0.5, 200, " mm", "from 0.5 to 200 mm",
            v => Whole with { Flange = new(PlainBuck.Mdf12) { Width = v } }),
        new("diameter of the bit", 1, 50, " mm", "from 1 to 50 mm",
            v => Whole with { Flange = new(PlainBuck.Mdf12) { Bit = v, Bushing = 60 } }),
        new("diameter of the bushing", 6, 100, " mm", "from 6 to 100 mm",
            v => Whole with { Flange = new(PlainBuck.Mdf12) { Bushing = v } }),
        new("land of the nest", 10, 300, " mm", "from 10 to 300 mm",
            v => Whole with { Flange = new(PlainBuck.Mdf12) { Land = v } }),
        new("diameter of the screw holes", 1, 20, " mm", "from 1 to 20 mm",
            v => Whole with { Flange = new(PlainBuck.Mdf12) { Screw = v } }),

        new("fit of the panel", -2, 10, " mm", "from -2 to 10 mm", v => Whole with { Panel = new(PlainBuck.Mdf12) { Fit = v } }),
        new("plane of the panel", 0, 500, " mm", "from 0 to 500 mm",
            v => Whole with { Panel = new(PlainBuck.Mdf12) { Plane = v } }),
        new("margin of the panel", 1, 1000, " mm", "from 1 to 1000 mm",
            v => Whole with { Panel = new(PlainBuck.Mdf12) { Margin = v } }),
        new("corner radius of the panel", 0, 500, " mm", "from 0 to 500 mm",
            v => Whole with { Panel = new(PlainBuck.Mdf12) { CornerRadius = v } }),
        new("bit for the panel", 0, 50, " mm", "from 0 to 50 mm", v => Whole with { Panel = new(PlainBuck.Mdf12) { Bit = v } }),
        new("flange behind the panel", 0, 200, " mm", "from 0 to 200 mm",
            v => Whole with { Panel = new(PlainBuck.Mdf12) { Flange = v } }),

        new("price of a board of \"ply\"", 0, 1e6, "", "from 0 to 1000000", v => Stocked(new("ply", 6) { Price = v })),
        new("cutting feed of \"ply\"", 1, 1e6, " mm a minute", "from 1 to 1000000 mm a minute",
            v => Stocked(new("ply", 6) { CutFeed = v })),
    ];

    public static TheoryData<int, string> Numbers
    {
        get
        {
            var numbers = new TheoryData<int, string>();
            foreach (var (index, row) in Rows.Index()) numbers.Add(index, row.What);
            return numbers;
        }
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Both_limits_are_taken_and_what_lies_beyond_them_is_refused(int index, string what)
    {
        var row = Rows[index];
        row.With(row.Min).Validate();
        row.With(row.Max).Validate();
        foreach (var beyond in (double[])[Math.BitDecrement(row.Min), Math.BitIncrement(row.Max), double.NaN])
            Assert.Equal(FormattableString.Invariant($"The {what} is {beyond}{row.Unit}; it must be {row.Range}."),
                Refusal(row.With(beyond)));
    }

    [Theory]
    [InlineData("stock")]
    [InlineData("base")]
    [InlineData("plate under it")]
    [InlineData("plenum")]
    [InlineData("flange")]
    [InlineData("panel")]
    public void Every_board_is_from_a_fifth_of_a_millimetre_to_100_mm_thick_and_from_10_to_10000_mm_long(string where)
    {
        BuckSpec With(Stock board) => where switch
        {
            "stock" => Whole with { Stock = [PlainBuck.Mdf12, board] },
            "base" => Whole with { Base = new(board), Plenum = null },
            "plate under it" => Whole with { Base = new(PlainBuck.Mdf12, 20, board), Plenum = null },
            "plenum" => Ducted(new(board)),
            "flange" => Whole with { Flange = new(board) },
            _ => Whole with { Panel = new(board) },
        };

        foreach (var thickness in (double[])[0.2, 100]) With(new("b", thickness)).Validate();
        foreach (var thickness in (double[])[Math.BitDecrement(0.2), Math.BitIncrement(100)])
            Assert.Equal(
                FormattableString.Invariant($"The thickness of \"b\" is {thickness} mm; it must be from 0.2 to 100 mm."),
                Refusal(With(new("b", thickness))));

        With(new("b", 12, 10, 10000)).Validate();
        With(new("b", 12, 10000, 10)).Validate();
        foreach (var side in (double[])[Math.BitDecrement(10), Math.BitIncrement(10000)])
        {
            Assert.Equal(
                FormattableString.Invariant($"The width of a board of \"b\" is {side} mm; it must be from 10 to 10000 mm."),
                Refusal(With(new("b", 12, side, 400))));
            Assert.Equal(
                FormattableString.Invariant($"The height of a board of \"b\" is {side} mm; it must be from 10 to 10000 mm."),
                Refusal(With(new("b", 12, 600, side))));
        }
    }

    private static readonly (string Says, BuckSpec Spec)[] DoNotGoTogether =
    [
        ("Vents need a base plate to open on; add a base.", Whole with { Base = null, Plenum = null }),
        ("A plenum needs a base plate above it; add a base.", Whole with { Base = null, Vents = null }),
        (SizedBySheet, Bare with { Base = new(PlainBuck.Mdf12), Vents = new() }),
        (SizedBySheet, Bare with { Jig = new() }),
        (SizedBySheet, Bare with { Flange = new(PlainBuck.Mdf12) }),
        (SizedBySheet, Bare with { Panel = new(PlainBuck.Mdf12) }),
        ("To size the buck from the part, give the thickness of the plastic sheet.", Bare with { Part = new() }),
        ("To size the buck from the part, give the thickness of the plastic sheet.",
            Bare with { Part = new() { Side = PartSide.Outside } }),
        ("No stock is given; name at least one thickness, such as 12mm.", Whole with { Stock = [] }),
        ("No stock is given; name at least one thickness, such as 12mm.", Whole with { Stock = default }),
        ("The panel's edge is set to drawn, but no outline is given for it; name its drawing.", Paneled(PanelEdge.Drawn, null)),
        ("The panel's edge is set to drawn, but no outline is given for it; name its drawing.",
            Paneled(PanelEdge.Drawn, Region.Empty)),
        ("The panel has a drawn outline, but its edge is not set to drawn; set the edge to drawn or leave the drawing out.",
            Paneled(PanelEdge.Offset, Shapes.Rectangle(200, 200))),
        ("A silenced finding needs its id and a reason.",
            Checked(new() { Silenced = [new("web-between", "tried before"), new("", "why")] })),
        ("A silenced finding needs its id and a reason.", Checked(new() { Silenced = [new("web-between", " ")] })),
    ];

    private const string SizedBySheet =
        "Vents, jigs and panels are sized from the formed sheet: give the thickness of the plastic sheet.";

    private static BuckSpec Bare => PlainBuck.Spec;

    [Fact]
    public void Parts_of_a_spec_that_do_not_go_together_are_refused_with_the_remedy() =>
        Assert.All(DoNotGoTogether, row => Assert.Equal(row.Says, Refusal(row.Spec)));

    [Fact]
    public void Parts_of_a_spec_that_do_are_taken() =>
        Assert.All(
            (BuckSpec[])
            [
                Whole, Bare, Whole with { Part = new() }, Whole with { Base = null, Vents = null, Plenum = null },
                Paneled(PanelEdge.Drawn, Shapes.Rectangle(200, 200)), Paneled(PanelEdge.Offset, null),
                Checked(new() { Silenced = [new("web-between", "tried before")] }),
            ],
            spec => spec.Validate());

    private static BuckSpec Checked(CheckSpec checks) => Whole with { Checks = checks };

    private static BuckSpec Ducted(PlenumSpec plenum) => Whole with { Plenum = plenum };

    private static BuckSpec Stocked(Stock stock) => Whole with { Stock = [stock] };

    private static BuckSpec Paneled(PanelEdge edge, Region? outline) =>
        Whole with { Panel = new(PlainBuck.Mdf12) { Edge = edge, Outline = outline } };

    private static string Refusal(BuckSpec spec) => Assert.Throws<SpecException>(spec.Validate).Message;
}
