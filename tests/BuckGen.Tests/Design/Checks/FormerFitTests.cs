using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Design.Venting;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Tests.Design.Forming;
using Xunit;

namespace BuckGen.Tests.Design.Checks;

/// <summary>Everything that stands under the sheet must go through the frame, onto the platen and up to the sheet.</summary>
public class FormerFitTests
{
    private static readonly Stock Board = new("board 6", 6, 2000, 2000);

    [Fact]
    public void A_base_of_283_x_202_mm_does_not_pass_a_frame_of_300_x_200_mm()
    {
        var spec = Male(20, 20) with { Former = new() { Opening = new(300, 200) } };

        var finding = Find(Formed.Rectangle(243, 162), spec, "base-over-frame");

        Assert.Equal((Severity.Error, 202.0, 200.0), (finding.Severity, finding.Value, finding.Limit));
        Assert.Contains("283 x 202 mm", finding.Message);
        Assert.Contains("300 x 200 mm", finding.Message);
        Assert.Contains("2 mm too large", finding.Message);
        // 3 mm of room on every side: (200 - 162) / 2 - 3.
        Assert.Contains("base margin of at most 16 mm", finding.Remedy);
        Assert.Empty(FormerFindings(Formed.Rectangle(243, 162), spec with { Base = new(Board, 16) }, "base-"));
    }

    [Fact]
    public void A_margin_is_offered_only_where_one_would_do()
    {
        var spec = Male(20, 20) with { Former = new() { Opening = new(300, 200) } };

        Assert.DoesNotContain("margin", Find(Formed.Rectangle(243, 196), spec, "base-over-frame").Remedy);
        // A margin of 2 mm leaves no plate for vents and sheet beside the foot.
        Assert.DoesNotContain("margin",
            Find(Formed.Rectangle(243, 190), spec, "base-over-frame").Remedy);
    }

    [Fact]
    public void A_base_that_goes_through_with_little_room_is_a_warning()
    {
        var spec = Male(20, 18) with { Former = new() { Opening = new(300, 200) } };

        var finding = Find(Formed.Rectangle(243, 162), spec, "base-near-frame");

        Assert.Equal((Severity.Warning, 1.0, 3.0), (finding.Severity, finding.Value, finding.Limit));
        Assert.Contains("base margin of at most 16 mm", finding.Remedy);
    }

    [Fact]
    public void A_part_larger_than_the_frame_is_reported_with_what_is_missing_each_way()
    {
        var spec = Male(20, 20) with { Former = new() { Opening = new(300, 200) } };

        var finding = Find(Formed.Rectangle(604, 150), spec, "frame-too-small");

        Assert.Equal((604.0, 300.0), (finding.Value, finding.Limit));
        Assert.Contains("304 mm too large", finding.Message);
        // The base is larger yet; one finding says it.
        Assert.Empty(FormerFindings(Formed.Rectangle(604, 150), spec, "base-over"));
    }

    [Fact]
    public void The_frame_is_checked_although_no_sheet_is_given()
    {
        var spec = Male(20, 20) with { Former = new() { Opening = new(300, 200) }, Sheet = null };

        Assert.Equal(Severity.Error, Find(Formed.Rectangle(243, 162), spec, "base-over-frame").Severity);
    }

    [Fact]
    public void A_cavity_passes_the_frame_or_carries_it_all_round()
    {
        // The block is 100 x 60 mm with 25 mm round it, 150 x 110 mm; the base 190 x 150 mm.
        BuckSpec In(double width, double height) => Male(20, 20) with
        {
            Kind = BuckKind.Female,
            Former = new() { Opening = new(width, height) },
        };
        var mouth = Formed.Rectangle(100, 60);

        Assert.Empty(FormerFindings(mouth, In(200, 160), "base-"));
        Assert.Empty(FormerFindings(mouth, In(150, 110), "base-"));
        var finding = Find(mouth, In(200, 110), "base-over-frame");
        Assert.Contains("carries", finding.Message);
    }

    [Fact]
    public void The_platen_carries_the_whole_base()
    {
        var spec = Male(20, 20) with { Former = new() { Platen = new(180, 280) } };

        Assert.Empty(FormerFindings(Formed.Rectangle(240, 140), spec, "platen"));
        var finding = Find(Formed.Rectangle(240, 142), spec, "platen-too-small");
        Assert.Equal((Severity.Error, 182.0, 180.0), (finding.Severity, finding.Value, finding.Limit));
        Assert.Contains("2 mm", finding.Message);
        Assert.Contains("base margin of at most 19 mm", finding.Remedy);
    }

    [Fact]
    public void The_lift_counts_base_and_plenum_and_says_what_would_fit()
    {
        var spec = Male(36, 20) with
        {
            Plenum = new(Board, PlenumKind.Feet),
            Former = new() { Travel = 45 },
        };

        var finding = Find(Formed.Rectangle(100, 80), spec, "taller-than-travel");

        Assert.Equal((48.0, 45.0), (finding.Value, finding.Limit));
        Assert.Contains("3 mm", finding.Message);
        Assert.Contains("12 mm of base and plenum", finding.Message);
        Assert.Contains("Leave out the plenum (6 mm)", finding.Remedy);
        Assert.DoesNotContain("Leave out", Find(Formed.Rectangle(100, 80),
            spec with { Former = new() { Travel = 20 } }, "taller-than-travel").Remedy);
    }

    [Fact]
    public void A_sheet_smaller_than_the_blank_is_an_error()
    {
        // The blank is 100 + 2 (20 + 6 + 12 + 15) = 206 by 186 mm: 20 mm of buck on a plate of 6 mm.
        var spec = Male(20, 10) with { Sheet = new() { Sizes = [new(300, 180)] } };

        var finding = Find(Formed.Rectangle(100, 80), spec, "sheet-too-small");

        Assert.Equal((Severity.Error, 186.0, 180.0), (finding.Severity, finding.Value, finding.Limit));
        Assert.Empty(FormerFindings(Formed.Rectangle(100, 80),
            spec with { Sheet = new() { Sizes = [new(300, 180), new(186, 206)] } }, "sheet-"));
    }

    [Fact]
    public void Without_a_frame_the_opening_lets_the_base_pass()
    {
        var blank = Formed.Blank(Formed.Rectangle(100, 80), Male(20, 60));

        // The base is 220 x 200 mm and takes 3 mm on every side.
        Assert.Equal((226.0, 206.0), (blank.Opening.Width, blank.Opening.Height));
        Assert.Equal(3, blank.BaseGap, 1e-9);
        Assert.Equal(63, blank.Gap, 1e-9);
    }

    [Fact]
    public void A_blank_knows_whether_the_frame_is_turned()
    {
        var spec = Male(20, 20) with { Former = new() { Opening = new(300, 200), Platen = new(290, 190) } };

        Assert.False(Formed.Blank(Formed.Rectangle(120, 80), spec).IsTurned);
        Assert.True(Formed.Blank(Formed.Rectangle(80, 120), spec).IsTurned);
        Assert.Empty(FormerFindings(Formed.Rectangle(80, 120), spec, "platen"));
    }

    private static BuckSpec Male(double depth, double margin) =>
        Formed.Spec(BuckKind.Male, depth) with { Base = new(Board, margin) };

    private static Finding Find(Region outline, BuckSpec spec, string id) =>
        Formed.Design(outline, spec).Findings.Single(f => f.Id == id);

    private static IEnumerable<Finding> FormerFindings(Region outline, BuckSpec spec, string start) =>
        Formed.Design(outline, spec).Findings.Where(f => f.Id.StartsWith(start, StringComparison.Ordinal));
}
