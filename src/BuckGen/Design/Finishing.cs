using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Design.Forming;
using BuckGen.Design.Specs;
using BuckGen.Design.Trimming;
using BuckGen.Findings;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Design;

/// <summary>What follows the forming: the jigs that trim the part, the panel it goes into.</summary>
internal sealed record Finishing(ImmutableArray<JigParts> Jigs, ImmutableArray<Finding> Findings)
{
    private static readonly Finishing None = new([], []);

    /// <summary>Makes what the spec asks for.</summary>
    public static Finishing Create(DraftedShape shape, BuckSpec spec, Blank? blank, ImmutableArray<IJig> jigs,
        IOffsetter offsetter, CancellationToken cancellation)
    {
        // Without an area at both ends there is nothing to form; other findings say so.
        if (blank is null || shape.At(shape.Foot, cancellation).IsEmpty || shape.At(shape.Face, cancellation).IsEmpty)
            return None;
        var part = new PartShell(shape, spec.Kind, PartSizing.LevelWall(blank, spec.Draft), offsetter, cancellation);
        var (made, findings) = (new List<JigParts>(), new List<Finding>());
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
                jig, () => jig.Name, () => NamedApart(JigResult.Make(jig, part, trimming), made));
            if (failure is not null) findings.Add(failure);
            else made.AddRange(parts);
        }

        return new([.. made], [.. made.SelectMany(m => m.Findings), .. findings]);
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
