using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Tests.Design.Bucks;
using Xunit;

namespace BuckGen.Tests.Design.Checks;

/// <summary>What is found in very many places is reported once, with their number and the worst of them.</summary>
public class GatheringTests
{
    [Fact]
    public void A_few_findings_are_listed_one_by_one()
    {
        var few = Many("near", 20).Append(Named("other", 1)).ToArray();

        Assert.Equal(few, Gathering.Apply(few));
    }

    [Fact]
    public void Of_very_many_the_worst_stands_for_all()
    {
        var gathered = Gathering.Apply([.. Many("near", 20), Named("other", 1), Named("near", -30), Named("near", 21)]).ToArray();

        Assert.Equal(["near", "other"], gathered.Select(f => f.Id));
        // The limit is 5: nothing lies farther from it than -30.
        Assert.Equal((-30, "near at -30. There are 22 such places, this one the worst."),
            (gathered[0].Value, gathered[0].Message));
    }

    [Fact]
    public void The_gravest_is_worse_than_the_farthest_from_its_limit()
    {
        var grave = Named("near", 6) with { Severity = Severity.Error };

        Assert.Equal(6, Assert.Single(Gathering.Apply([.. Many("near", 25), grave])).Value);
    }

    [Fact]
    public void Findings_without_numbers_are_reported_at_the_first_place()
    {
        var many = Many("near", 30).Select((f, i) => f with { Value = null, Place = new Vec2(i, 0) });

        Assert.Equal(new Vec2(0, 0), Assert.Single(Gathering.Apply(many)).Place);
    }

    /// <summary>
    /// Found by an attack: 1,600 findings "vent-spacing" along the teeth of one wall, and one for every small island that can
    /// be turned.
    /// </summary>
    [Fact]
    public void A_design_of_many_alike_parts_has_few_findings()
    {
        var squares =
            Region.FromLoops(Enumerable.Range(0, 64)
                .Select(i => Loop.Rectangle(new(i % 8 * 40, i / 8 * 40, i % 8 * 40 + 25, i / 8 * 40 + 25))));

        var finding = Assert.Single(PlainBuck.Create(squares, PlainBuck.Spec with { Depth = 36 }).Named("dowels-turnable"));

        Assert.EndsWith(" There are 64 such places.", finding.Message);
    }

    private static IEnumerable<Finding> Many(string id, int count) => Enumerable.Range(1, count).Select(i => Named(id, i));

    private static Finding Named(string id, double value) =>
        new(id, Severity.Warning, FormattableString.Invariant($"{id} at {value}."), "Move it.") { Value = value, Limit = 5 };
}
