using System.Collections.Immutable;
using BuckGen.Design.Forming;
using BuckGen.Design.Parts;
using BuckGen.Design.Prediction;
using BuckGen.Design.Specs;
using BuckGen.Design.Trimming;
using BuckGen.Findings;
using BuckGen.Geometry.Offsetting;
using BuckGen.Intake.Outlines;

namespace BuckGen.Design;

/// <summary>What follows the forming: the finished part, the jigs that trim it, the panel it goes into.</summary>
/// <param name="Part">The finished part; null when the sheet is not known, or when nothing is formed.</param>
/// <param name="Jigs">Jigs and panel.</param>
/// <param name="Findings">What the maker should know of them.</param>
internal sealed record Finishing(FinishedPart? Part, ImmutableArray<JigParts> Jigs, ImmutableArray<Finding> Findings)
{
    private static readonly Finishing None = new(null, [], []);

    /// <summary>Makes what the spec asks for.</summary>
    public static Finishing Create(Outline outline, BuckSpec spec, SizedBuck sized, Blank? blank, PartWall? predicted,
        ImmutableArray<IJig> jigs, IOffsetter offsetter, CancellationToken cancellation)
    {
        var (sharp, shape) = (sized.Shape, sized.Shape.Finished);
        // Without an area at both ends there is nothing to form; other findings say so.
        if (blank is null || shape.At(shape.Foot, cancellation).IsEmpty || shape.At(shape.Face, cancellation).IsEmpty)
            return None;
        var cooling = new Cooling(spec.ShrinkageOfPart, outline.Region.Bounds.Centre);
        var wall = predicted ?? PartWall.FromMean(blank.MeanThickness);
        var shell = new PartShell(shape, spec, wall, cooling, offsetter, cancellation);
        var sharpShell = shape == sharp ? shell : new PartShell(sharp, spec, wall, cooling, offsetter, cancellation);
        var (made, failures) = Made(shell, spec, jigs, cancellation);
        var part = sized.Cut.Height < shell.Depth ? Measured(outline, spec, sized, shell, sharpShell, cooling) : null;
        return new(part, [.. made],
            [.. made.SelectMany(m => m.Findings), .. failures,
                .. part is null ? [] : FinishedPartFindings.Find(part, spec.DepthTolerance)]);
    }

    private static (List<JigParts> Made, List<Finding> Failures) Made(
        PartShell shell, BuckSpec spec, ImmutableArray<IJig> jigs, CancellationToken cancellation)
    {
        var (made, failures) = (new List<JigParts>(), new List<Finding>());
        var trimming = new TrimmingSpec(spec, spec.Sheet!, spec.Checks)
        {
            Jig = spec.Jig,
            Flange = spec.Flange,
            Panel = spec.Panel,
        };
        foreach (var jig in jigs)
        {
            cancellation.ThrowIfCancellationRequested();
            var (parts, failure) = ForeignCode.Call(
                jig, () => jig.Name, () => NamedApart(JigResult.Make(jig, shell, trimming), made));
            if (failure is not null) failures.Add(failure);
            else made.AddRange(parts);
        }

        return (made, failures);
    }

    private static FinishedPart Measured(Outline outline, BuckSpec spec, SizedBuck sized, PartShell shell, PartShell sharp,
        Cooling cooling)
    {
        var (shape, male) = (sized.Shape, spec.Kind == Bucks.BuckKind.Male);
        double[] heights =
            [.. sized.Heights.Select(h => (male ? h - shape.Foot : shape.Face - h) * cooling.Scale).Order()];
        var part = new PartMeasuring(shell, sharp, sized.Plan, sized.Cut).Measure(heights, spec.Sheet?.Plastic?.Density);
        if (spec.Part is not { } ordered) return part;
        var drawn = outline.Region.Bounds;
        var (width, height) = ordered.Size is { } size ? (size.Width, size.Height) : (drawn.Width, drawn.Height);
        var end = ordered.At == PartEnd.Mouth ? part.Mouth : part.Face;
        var got = (ordered.Side == PartSide.Inside ? end.Inside : end.Outside).Bounds;
        return part with
        {
            Order = new(ordered.Side, ordered.At, width, height, spec.Depth)
            {
                WidthMiss = got.Width - width,
                HeightMiss = got.Height - height,
                DepthMiss = (ordered.Side == PartSide.Inside ? part.InsideDepth : part.OutsideDepth) - spec.Depth,
                FromBoards = sized.Plan.Miss * cooling.Scale,
            },
        };
    }

    /// <summary>The parts, when no two layers have the same name: files are named after them.</summary>
    private static ImmutableArray<JigParts> NamedApart(ImmutableArray<JigParts> parts, List<JigParts> made)
    {
        var taken = made.SelectMany(m => m.Layers).Select(l => (l.Name, l.Number)).ToHashSet();
        foreach (var layer in parts.SelectMany(p => p.Layers))
            if (!taken.Add((layer.Name, layer.Number)))
                throw new ForeignResultException(
                    FormattableString.Invariant($"there is a layer {layer.Name} {layer.Number} already"));
        return parts;
    }
}
