using System.Collections.Immutable;
using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Parts;
using BuckGen.Geometry.Offsetting;
using BuckGen.Geometry.Tests;
using BuckGen.Output.Pictures;
using BuckGen.Output.Pictures.Drawing;
using BuckGen.Output.Pictures.Svg;
using BuckGen.Output.Pictures.Templates;
using BuckGen.Output.Pictures.Thickness;
using BuckGen.Tests.Design.Bucks;
using BuckGen.Tests.Intake.Outlines;
using Snapshooter.Xunit3;
using Xunit;

namespace BuckGen.Tests.Output.Pictures;

/// <summary>
/// Pictures of two small jobs stay as they were, line by line. A browser shows a snapshot when it is saved as HTML.
/// </summary>
public class PictureGoldenTests
{
    /// <summary>Male, on a base, vented, with a counter and straight corners only: few lines.</summary>
    internal static readonly Lazy<BuckDesign> Raised =
        new(() => PlainBuck.Create(Shapes.Counter(60, 40, 24, 12).Moved(50, 50), PlainBuck.Spec with
        {
            Depth = 24,
            Corners = CornerJoin.Mitre,
            Base = new(new("ply 6", 6), 20, new("MDF 9", 9)),
            Sheet = new() { Gauge = 2 },
            Vents = new(),
        }));

    /// <summary>A cavity for a part of a given outside, with a round lip and lines to glue up to.</summary>
    internal static readonly Lazy<BuckDesign> Sunk = new(() => PlainBuck.Create(Shapes.Rectangle(50, 30), PlainBuck.Spec with
    {
        Kind = BuckKind.Female,
        Depth = 24,
        Corners = CornerJoin.Mitre,
        Steps = Steps.Inside,
        EdgeRadius = 2,
        Sheet = new(),
        Part = new() { Side = PartSide.Outside },
    }));

    [Fact]
    public void The_drawings_of_a_raised_buck_stay_as_they_were() => Snapshot.Match(Drawings(Raised.Value));

    [Fact]
    public void The_drawings_of_a_cavity_stay_as_they_were() => Snapshot.Match(Drawings(Sunk.Value));

    [Fact]
    public void The_pages_of_a_template_stay_as_they_were() =>
        Snapshot.Match(Text(Tiles.Split(DrillTemplate.ForPaper(PlainBuck.Create(Shapes.Rectangle(260, 70), PlainBuck.Spec with
        {
            Depth = 12,
            Corners = CornerJoin.Mitre,
            Base = new(new("ply 6", 6), 20),
            Sheet = new(),
            Vents = new(),
        }), "A tray")!, Paper.A4)));

    [Fact]
    public void The_template_on_one_page_and_the_preview_stay_as_they_were() =>
        Snapshot.Match(Text([DrillTemplate.Draw(Raised.Value, "A tray")!, PreviewPicture.Draw(Raised.Value, "A tray", [])]));

    [Fact]
    public void The_picture_of_an_outline_stays_as_it_was() => Snapshot.Match(Text([OutlinePicture.Draw(Reading.Dxf(
        DxfText.Line(0, 0, 80, 0), DxfText.Line(80, 0.05, 80, 50), DxfText.Line(80, 50, 0, 50), DxfText.Line(0, 50, 0, 0),
        DxfText.Line(0, 50, 80, 50)))]));

    [Fact]
    public void The_trim_lines_stay_as_they_were()
    {
        var design = PlainBuck.Create(Shapes.Rectangle(60, 40), PlainBuck.Spec with
        {
            Depth = 24,
            Corners = CornerJoin.Mitre,
            Sheet = new(),
            Jig = new() { TrimHeight = 12 },
            Flange = new(PlainBuck.Mdf12),
            Panel = new(PlainBuck.Mdf12),
        });

        Snapshot.Match(Text([.. TrimTemplates.Create(design, "A tray").Select(t => t.Drawing)]));
    }

    [Fact]
    public void The_pictures_of_a_wall_stay_as_they_were()
    {
        var design = Raised.Value with { Formed = ThicknessTests.Sheet(p => 0.4 + p.X / 200) };

        Snapshot.Match(Text([ThicknessMap.Draw(design)!, ThicknessSection.Draw(design)!]));
    }

    private static string Drawings(BuckDesign design)
    {
        var plan = CutPlan.Create(design, new());
        return Text(
        [
            PlanPicture.Draw(design, plan.AllFindings), SectionPicture.Draw(design)!, StackPicture.Draw("Apart", design.Layers)!,
            CutPicture.Draw(design.Layers[0]), CutPicture.Draw(design.Layers[^1]), CutPicture.Draw(plan.Boards[0]),
        ]);
    }

    private static string Text(ImmutableArray<Picture> pictures) =>
        string.Join('\n', pictures.Select(SvgPicture.Inline)) + "\n";
}
