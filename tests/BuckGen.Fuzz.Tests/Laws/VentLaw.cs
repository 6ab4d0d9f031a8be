using BuckGen.Design.Bucks;
using BuckGen.Design.Venting;
using BuckGen.Fuzz.Tests.Judging;
using BuckGen.Fuzz.Tests.Runs;
using BuckGen.Geometry;

namespace BuckGen.Fuzz.Tests.Laws;

/// <summary>
/// A vent lies under air and over wood, clear of the wall, of edges, dowels and other vents, in every layer it passes.
/// </summary>
internal sealed class VentLaw : ILaw
{
    /// <summary>What rounding of the drafted wall and of chords may take, mm.</summary>
    private const double Near = 0.03;

    public IEnumerable<string> Broken(DesignRun run)
    {
        if (run.Design.Vents is not { } design) yield break;
        var (vents, spec, layers) = (design.Vents, design.Spec, run.Design.Layers.Where(l => l.Role != LayerRole.Plenum)
            .ToArray());
        foreach (var vent in vents)
        {
            foreach (var layer in layers.Where(l => l.Number <= vent.Layer))
            {
                var hole = layer.Number == vent.Layer ? vent.Diameter : spec.BoreDiameter;
                var depth = run.Wood(layer).DepthAt(vent.Centre);
                if (depth < hole / 2 + spec.Land - Near)
                    yield return FormattableString.Invariant(
                        $"{vent} lies {depth:0.####} mm from the edge of layer {layer.Number}");
                if (layer.Parts.Sum(p => p.Vents.Count(v => v.Centre == vent.Centre && v.Diameter == hole)) != 1)
                    yield return $"{vent} is not drilled once through layer {layer.Number}";
                if (layer.Parts.SelectMany(p => p.Dowels)
                    .Any(d => d.Centre.DistanceTo(vent.Centre) < (d.Diameter + hole) / 2 + spec.Land - Near))
                    yield return $"{vent} runs into a dowel of layer {layer.Number}";
            }

            // Walls that lean the wrong way hang over what lies at their foot; a finding says that they are wrong.
            foreach (var layer in layers.Where(l => l.Number > vent.Layer && run.Design.Spec.Draft >= 0))
                if (run.Wood(layer).DepthAt(vent.Centre) > Near - vent.Diameter / 2)
                    yield return $"{vent} is covered by layer {layer.Number}";
            if (vent.Layer == layers.Last(l => l.Role == LayerRole.Base).Number && UnderTheWall(run, vent, spec) is { } under)
                yield return under;
            if (spec.KeepOut.Any(k => vent.Centre.X > k.MinX && vent.Centre.X < k.MaxX && vent.Centre.Y > k.MinY
                && vent.Centre.Y < k.MaxY)) yield return $"{vent} lies where none may be";
        }

        for (var i = 0; i < vents.Length; i++)
            for (var j = 0; j < i; j++)
                if (vents[i].Centre.DistanceTo(vents[j].Centre) < spec.BoreDiameter + spec.Land - 1e-6)
                    yield return $"{vents[i]} and {vents[j]} run into each other";
    }

    /// <summary>
    /// The sheet traps air outside a male buck's foot and inside a cavity; half the distance from the wall is always kept. Where
    /// a finding says that a counter or pocket closes within the lowest layer, which may be cut higher up, its one vent keeps it
    /// from the wood as cut.
    /// </summary>
    private static string? UnderTheWall(DesignRun run, Vent vent, VentSpec spec)
    {
        var inAir = InAir(run.Wall, vent.Centre);
        var wanted = vent.Reason == VentReason.Given ? 0 : vent.Diameter / 2 + spec.WallDistance / 2;
        if (inAir >= wanted - Near) return null;
        // From a foot that was moved away from the place it is at least so far, and farther beside a corner: then the wood of the
        // foot decides.
        if (!Probes.Disc(vent.Centre, Math.Max(0, wanted - Near)).Any(p => InAir(run.Wall, p) < 0)) return null;
        return IsReportedTooClose(run, vent) && run.Walls is [var lowest, ..]
            && -run.Wood(lowest).DepthAt(vent.Centre) >= wanted - Near
            ? null
            : FormattableString.Invariant($"{vent} lies {inAir:0.####} mm from the foot of the wall");
    }

    /// <summary>At most so far lies a place in the air at the foot of the wall, mm; negative under it.</summary>
    private static double InAir(DraftedWall wall, Vec2 p)
    {
        var (min, max) = wall.InOutline(p, wall.Foot);
        return wall.IsMale ? -min : max;
    }

    /// <summary>True when a finding names the place, or gathers too many to name each.</summary>
    private static bool IsReportedTooClose(DesignRun run, Vent vent) =>
        vent.Reason == VentReason.Counter && run.Design.Findings.Any(f =>
        f.Id is "counter-closes" or "pocket-vanishes"
            && (f.Place == vent.Centre || f.Message.Contains(" such places", StringComparison.Ordinal)));
}
