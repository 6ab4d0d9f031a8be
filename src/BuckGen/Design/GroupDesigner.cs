using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Design.Forming;
using BuckGen.Design.Grouping;
using BuckGen.Design.Specs;
using BuckGen.Design.Trimming;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Intake.Outlines;

namespace BuckGen.Design;

/// <summary>Designs a sign in several bucks: sorts its islands, designs every buck, then register board and panel.</summary>
internal static class GroupDesigner
{
    /// <summary>Formed pieces nearer than their walls and this, mm, are not parted: no register board could hold them.</summary>
    private const double MinApart = 3;

    /// <summary>The whole sign: no layers of its own, but all its bucks.</summary>
    public static BuckDesign Design(
        Outline outline, BuckSpec spec, GroupSpec wanted, DesignExtensions extensions, IProgress<DesignProgress>? progress,
        CancellationToken cancellation)
    {
        var offsetter = CheckedOffsetter.Standard(spec.Tolerance);
        if (spec.Part is { } part) spec = spec with { OutlineAt = part.PlaneFor(spec.Kind) };
        var sized = BuckSizing.Create(outline, spec with { Prediction = null }, offsetter, cancellation);
        var drawn = sized.Sizing.DrawingScale == 1 ? outline.Region
            : outline.Region.Transformed(Affine.Scaling(sized.Sizing.DrawingScale, outline.Region.Bounds.Centre));
        var units = Units(drawn, sized, spec, offsetter, cancellation);
        var (room, tight) = Room(spec, sized, units);
        var members = IslandGroups.Create([.. units.Select(u => u.Formed)], room.Holds)
            .Select(g => g.SelectMany(u => units[u].Islands).Order().ToImmutableArray()).ToImmutableArray();
        var ofGroup = spec with { Groups = null, Panel = null, Part = spec.Part is null ? null : spec.Part with { Size = null } };
        ImmutableArray<BuckGroup> groups =
        [
            .. members.Select((islands, i) => new BuckGroup(i + 1, BuckDesigner.Design(
                outline with { Region = new([.. islands.Select(n => drawn.Islands[n])]), Repairs = [], Notes = [] },
                ofGroup, extensions, new GroupProgress(progress, i, members.Length), cancellation))),
        ];
        var jigs = Jigs(groups, spec, wanted);
        List<Finding> findings =
        [
            .. units.Where(u => !tight.Holds(u.Formed))
                .Select(u => GroupFindings.TooLarge(u.Formed, tight.Missing(u.Formed), spec.Former.Opening!)),
            .. groups.Length == 1 ? [GroupFindings.OneIsEnough()] : Array.Empty<Finding>(),
            .. jigs.SelectMany(j => j.Findings),
            .. GroupFindings.Neighbours(Pieces(groups)) is { } meet ? [meet] : Array.Empty<Finding>(),
        ];
        var footprint = new Region([.. groups.SelectMany(g => g.Design.Footprint.Islands)]);
        return new(outline, spec, sized.Plan, [], null, footprint, FindingList.Append(
            FindingList.Create(findings, [.. spec.Checks.Silenced.Where(s => findings.Exists(f => f.Id == s.Id))]),
            GroupFindings.Named(groups.SelectMany(g => g.Design.Findings.Select(f => (g.Number, f))), groups.Length)))
        {
            Sizing = sized.Sizing.For(footprint),
            Jigs = jigs,
            Groups = groups,
        };
    }

    /// <summary>What can't be parted: islands that run together at the flange, or whose formed walls would touch.</summary>
    private static List<(Bounds Formed, List<int> Islands)> Units(
        Region drawn, SizedBuck sized, BuckSpec spec, CheckedOffsetter offsetter, CancellationToken cancellation)
    {
        var plane = sized.FlangeOutline(spec.Kind, cancellation);
        var apart = PartShell.Filled(offsetter.Offset(
            PartShell.Filled(plane), spec.Sheet!.Gauge + MinApart / 2, CornerJoin.Round, cancellation));
        var where = new RegionInterior(apart);
        var scale = 1 / new Cooling(spec.ShrinkageAllowed, default).Scale;
        var enlarge = Affine.Scaling(scale, drawn.Bounds.Centre);
        return [.. drawn.Islands.Select((island, i) => (Unit: where.IslandAt(enlarge.Apply(InsidePoint.Find(island))), i))
            .GroupBy(p => p.Unit)
            .Select(g => (Formed(g.Key), g.Select(p => p.i).ToList()))];

        Bounds Formed(int unit) => plane.Islands.Select(i => i.Outer)
            .Where(o => unit >= 0 && where.IslandAt(InsidePoint.Find(o)) == unit)
            .Aggregate(Bounds.Nothing, (b, o) => b.With(o.Bounds));
    }

    /// <summary>
    /// The room in the frame: with the usual gaps where every unit has them, with smaller ones where a unit leaves no more; and
    /// without any gap.
    /// </summary>
    private static (FrameRoom Room, FrameRoom Tight) Room(
        BuckSpec spec, SizedBuck sized, List<(Bounds Formed, List<int> Islands)> units)
    {
        var (male, shape) = (spec.Kind == BuckKind.Male, sized.Shape);
        var formed = shape.At(male ? shape.Foot : shape.Face).Bounds;
        var margin = Math.Max(0, (new StackedSolid(shape, spec).Plan.Width - formed.Width) / 2);
        var gap = new[]
        {
            male ? Math.Max(Blank.MinGap, spec.Checks.MinFrameGap * (sized.Plan.Depth + shape.Foot)) : Blank.MinGap,
            spec.Flange?.Width ?? 0, spec.Panel?.Flange ?? 0,
        }.Max();
        var tight = new FrameRoom(spec.Former, male, margin, 0, 0);
        var fitting = units.Where(u => tight.Holds(u.Formed)).ToArray();
        double Left(double wanted, Func<double, FrameRoom> with) => fitting.Length == 0 ? 0
            : Math.Max(0, wanted - Math.Max(0, fitting.Max(u => with(wanted).Missing(u.Formed))) / 2);
        var baseGap = Left(spec.Former.BaseGap, g => tight with { BaseGap = g });
        return (tight with { BaseGap = baseGap, Gap = Left(gap, g => tight with { Gap = g }) }, tight);
    }

    private static ImmutableArray<JigParts> Jigs(ImmutableArray<BuckGroup> groups, BuckSpec spec, GroupSpec wanted)
    {
        // A buck of which nothing is formed has an error of its own.
        if (groups.Any(g => g.Design.Part?.Shell is null)) return [];
        var shell = PartShell.Joined([.. groups.Select(g => g.Design.Part!.Shell!)]);
        var trimming = new TrimmingSpec(spec, spec.Sheet!, spec.Checks) { Panel = spec.Panel };
        return
        [
            .. spec.Panel is { } panel ? [FacePanel.Create(shell, panel, trimming)] : Array.Empty<JigParts>(),
            RegisterBoard.Create(Pieces(groups), shell, wanted, trimming),
        ];
    }

    /// <summary>The outside of every formed piece where it ends.</summary>
    private static ImmutableArray<Region> Pieces(ImmutableArray<BuckGroup> groups) =>
        [.. groups.Select(g => g.Design.Part?.Mouth.Outside).OfType<Region>()];

    /// <summary>Turns the steps of one buck into steps of all.</summary>
    private sealed class GroupProgress(IProgress<DesignProgress>? progress, int done, int groups) : IProgress<DesignProgress>
    {
        public void Report(DesignProgress value) => progress?.Report(value with
        {
            Step = FormattableString.Invariant($"buck {done + 1} of {groups}: {value.Step}"),
            Number = Math.Max(1, (done * value.Total + value.Number) / groups),
        });
    }
}
