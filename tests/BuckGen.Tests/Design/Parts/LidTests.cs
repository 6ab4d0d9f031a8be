using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Parts;
using BuckGen.Design.Specs;
using BuckGen.Geometry;
using BuckGen.Settings;
using BuckGen.Tests.Design.Forming;
using Xunit;

namespace BuckGen.Tests.Design.Parts;

/// <summary>Part and lid from one drawing: the play along the skirt follows from the drafts of both walls.</summary>
[Trait("Tier", "slow")]
public class LidTests
{
    private const double Skirt = 12, Clearance = 0.3;

    /// <summary>The part that all lids close; designed once.</summary>
    private static readonly Lazy<BuckDesign> Male = new(() => Part(BuckKind.Male)), Female = new(() => Part(BuckKind.Female));

    /// <summary>
    /// Over the part the lid widens downward while the part narrows: the play grows by both slopes. Inside it both narrow, and
    /// the play grows by the difference of the slopes.
    /// </summary>
    [Theory]
    [InlineData(BuckKind.Male, LidFit.Over, 5, 5, 1, 1)]
    [InlineData(BuckKind.Male, LidFit.Over, 5, 3, 1, 1)]
    [InlineData(BuckKind.Male, LidFit.Into, 5, 5, -1, 1)]
    [InlineData(BuckKind.Male, LidFit.Into, 5, 8, -1, 1)]
    [InlineData(BuckKind.Male, LidFit.Flush, 5, 3, 1, -1)]
    [InlineData(BuckKind.Female, LidFit.Over, 5, 5, 1, 1)]
    [InlineData(BuckKind.Female, LidFit.Into, 5, 7, -1, 1)]
    public void The_play_lies_between_the_clearance_and_what_the_drafts_add(
        BuckKind kind, LidFit fit, double draft, double ofLid, int partSign, int lidSign)
    {
        var part = kind == BuckKind.Male ? Male.Value : Female.Value;
        Assert.Equal(draft, part.Spec.Draft);

        var play = part.CreateLid(new() { Fit = fit, Skirt = Skirt, Clearance = Clearance, Draft = ofLid }).Mating!;

        var added = Skirt * (partSign * Slope(draft) + lidSign * Slope(ofLid));
        // The boards may leave the skirt up to a millimetre short; a play that is smallest at its end is then larger.
        Assert.InRange(play.Min, Clearance - 0.01, partSign > 0 && lidSign < 0 ? Clearance + 0.05 : Clearance + 0.01);
        Assert.InRange(play.Max, Clearance + added * 0.92 - 0.01, Clearance + added + 0.01);
    }

    [Fact]
    public void A_lid_is_a_part_of_its_own_with_jig_and_blank()
    {
        var lid = Male.Value.CreateLid(new() { Skirt = Skirt });

        Assert.NotNull(lid.Jig);
        Assert.NotNull(lid.Blank);
        Assert.Equal(Skirt, lid.Part!.InsideDepth, 0.55);
        Assert.True(lid.Part.Face.Inside.Bounds.Width > Male.Value.Part!.Mouth.Outside.Bounds.Width);
        Assert.DoesNotContain(lid.Findings, f => f.Severity == BuckGen.Findings.Severity.Error);
        Assert.Contains(lid.Findings, f => f.Id == "lid-within-tolerance");
    }

    /// <summary>The flange of a flush lid ends at the part's outside; that of a lid with a brim stands out by the brim.</summary>
    [Fact]
    public void A_flush_lid_ends_where_the_part_ends()
    {
        var outside = Male.Value.Part!.Mouth.Outside.Bounds.Width;

        Assert.Equal(outside, Male.Value.CreateLid(new() { Fit = LidFit.Flush }).Flange!.TrimLine.Bounds.Width, 0.3);
        Assert.Equal(outside + 2 * 4,
            Male.Value.CreateLid(new() { Fit = LidFit.Into, Brim = 4 }).Flange!.TrimLine.Bounds.Width, 0.3);
    }

    /// <summary>A lid made for a box 2 mm narrower can't go over this one.</summary>
    [Fact]
    public void A_lid_that_is_too_small_jams()
    {
        var small = Formed.Design(
            Region.FromLoops([Loop.Rectangle(new(1, 1, 119, 79))]), Spec(BuckKind.Male));
        var lid = small.CreateLid(new() { Clearance = Clearance, Skirt = Skirt });

        var play = MatingPlay.Measure(LidFit.Over, Skirt, Clearance,
            new(Male.Value.Part!.Shell!, Male.Value.Part.Cut.Height), new(lid.Part!.Shell!, 0));

        // At a corner the walls are farther apart than along a side.
        Assert.InRange(play!.Min, (Clearance - 1) * Math.Sqrt(2) - 0.05, Clearance - 1 + 0.05);
        var jam = Assert.Single(MatingFindings.Find(play, 1.2));
        Assert.Equal("lid-jams", jam.Id);
        Assert.Equal(play.Min, jam.Value);
    }

    [Fact]
    public void A_lid_of_a_part_that_is_not_formed_is_refused() =>
        Assert.Contains("nothing is formed", Assert.Throws<SpecException>(() =>
            Formed.Design(Formed.Rectangle(120, 80), Spec(BuckKind.Male) with { Sheet = null, Part = null, Jig = null })
                .CreateLid(new())).Message);

    /// <summary>Without a ring the lid is cut as the part is; what the maker accepts of the part is no news of the lid.</summary>
    [Fact]
    public void A_lid_is_cut_as_its_part_is()
    {
        var spec = Spec(BuckKind.Male);
        var part = Formed.Design(Formed.Rectangle(120, 80), spec with
        {
            Jig = null,
            Part = new() { CutHeight = 6 },
            Checks = new() { Silenced = [new("too-deep", "tried it")] },
        });

        var lid = part.CreateLid(new() { Skirt = Skirt });

        Assert.Contains(part.Findings, f => f.Id == "silence-idle");
        Assert.DoesNotContain(lid.Findings, f => f.Id == "silence-idle");
        Assert.Equal((BuckGen.Design.Trimming.TrimTool.Saw, 6.0), (lid.Part!.Cut.Tool, lid.Part.Cut.Height));
    }

    /// <summary>Two boxes from one drawing have two lids.</summary>
    [Fact]
    public void Every_island_gets_its_lid()
    {
        var two = Region.FromLoops([Loop.Rectangle(new(0, 0, 60, 50)), Loop.Rectangle(new(120, 0, 180, 50))]);
        var lid = Formed.Design(two, Spec(BuckKind.Male) with { Depth = 20 }).CreateLid(new() { Skirt = 8 });

        Assert.Equal(2, lid.Part!.Mouth.Inside.Islands.Length);
        Assert.Equal(0.3, lid.Mating!.Min, 0.01);
    }

    private static double Slope(double draft) => Math.Tan(draft * Math.PI / 180);

    private static BuckDesign Part(BuckKind kind) => Formed.Design(Formed.Rectangle(120, 80), Spec(kind));

    private static BuckSpec Spec(BuckKind kind) => Formed.Spec(kind, 48, 5, 1) with
    {
        DepthTolerance = 0.5,
        Jig = new(),
        Part = new(),
    };
}
