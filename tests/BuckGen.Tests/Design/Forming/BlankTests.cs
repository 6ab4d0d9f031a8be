using BuckGen.Design.Bucks;
using BuckGen.Design.Parts;
using BuckGen.Settings;
using Xunit;

namespace BuckGen.Tests.Design.Forming;

public class BlankTests
{
    [Fact]
    public void The_smallest_blank_is_footprint_gap_lip_and_grip()
    {
        var blank = Formed.Blank(Formed.Rectangle(120, 80), Formed.Spec(BuckKind.Male, 40));

        // As much gap as the buck is high; 12 mm for the seal and 15 mm for the grip on every side.
        Assert.Equal((120 + 2 * (40 + 12 + 15.0), 80 + 2 * (40 + 12 + 15.0)), (blank.Width, blank.Height));
        Assert.Equal((200.0, 160.0, 40.0), (blank.Opening.Width, blank.Opening.Height, blank.Gap));
    }

    [Theory]
    [InlineData(BuckKind.Male, 10)]
    [InlineData(BuckKind.Female, 60)]
    public void The_gap_is_never_under_25_mm_and_a_cavity_needs_no_more(BuckKind kind, double depth) =>
        Assert.Equal(25, Formed.Blank(Formed.Rectangle(120, 80), Formed.Spec(kind, depth)).Gap, 1e-9);

    [Fact]
    public void A_frame_decides_the_blank_and_is_turned_to_suit()
    {
        var spec = Formed.Spec(BuckKind.Male, 40) with { Former = new() { Opening = new(200, 300), Grip = 10, Lip = 0 } };

        var blank = Formed.Blank(Formed.Rectangle(120, 80), spec);

        Assert.Equal((320.0, 220.0, 60.0), (blank.Width, blank.Height, blank.Gap));
    }

    [Theory]
    [InlineData(1220, 610, 12, 0.79)]
    [InlineData(400, 250, 2, 0.98)]
    [InlineData(230, 300, 1, 0.70)]
    [InlineData(240, 200, 0, 0)]
    public void Sheets_are_cut_the_way_that_gives_more(double width, double height, int count, double share)
    {
        // The blank is 245 x 200 mm; the counts are found by hand on squared paper.
        var spec = Formed.Spec(BuckKind.Male, 40) with
        {
            Former = new() { Opening = new(191, 146) },
            Sheet = new() { Sizes = [new(width, height)] },
        };

        var yield = Assert.Single(Formed.Blank(Formed.Rectangle(100, 60), spec).Yields);

        Assert.Equal(count, yield.Count);
        Assert.Equal(share, yield.Share, 0.02);
    }

    [Fact]
    public void Without_a_sheet_there_is_no_blank_and_jigs_are_refused()
    {
        var spec = Formed.Spec(BuckKind.Male, 40) with { Sheet = null };

        Assert.Null(Formed.Design(Formed.Rectangle(100, 60), spec).Blank);
        Assert.Contains("give the thickness of the plastic sheet", Assert.Throws<SpecException>(
            () => Formed.Design(Formed.Rectangle(100, 60), spec with { Jig = new() })).Message);
        Assert.Contains("give the thickness of the plastic sheet", Assert.Throws<SpecException>(
            () => Formed.Design(Formed.Rectangle(100, 60), spec with
            {
                Part = new() { Side = PartSide.Outside, At = PartEnd.Face },
            })).Message);
    }
}
