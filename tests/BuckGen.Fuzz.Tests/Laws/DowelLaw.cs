using BuckGen.Design.Bucks;
using BuckGen.Fuzz.Tests.Runs;

namespace BuckGen.Fuzz.Tests.Laws;

/// <summary>
/// A dowel goes down through every layer to the base, has its wall of wood all round in each, and keeps off other dowels. It
/// opens on nothing that the sheet touches, unless the maker wants it so.
/// </summary>
internal sealed class DowelLaw : ILaw
{
    private const double SamePlace = 1e-9;

    public IEnumerable<string> Broken(DesignRun run)
    {
        var spec = run.Design.Spec;
        var layers = run.Design.Layers.Where(l => l.Role != LayerRole.Plenum).ToArray();
        // Walls that lean the wrong way leave less wood lower down; a finding says that they are wrong.
        var free = spec.Draft < 0 ? 0 : spec.Dowels.HoleDiameter / 2 + spec.Dowels.Wall - Slack.Curve;
        for (var n = 0; n < layers.Length; n++)
        {
            var holes = layers[n].Parts.SelectMany(p => p.Dowels).ToArray();
            foreach (var hole in holes)
            {
                var depth = run.Wood(layers[n]).DepthAt(hole.Centre);
                if (depth < free)
                    yield return FormattableString.Invariant(
                        $"the dowel at {hole.Centre} lies {depth:0.####} mm from the edge of layer {layers[n].Number}");
                if (n > 0 && spec.Draft >= 0
                    && !layers[n - 1].Parts.Any(p => p.Dowels.Any(d => d.Centre.DistanceTo(hole.Centre) <= SamePlace)))
                    yield return FormattableString.Invariant(
                        $"the dowel at {hole.Centre} of layer {layers[n].Number} stops there");
            }

            for (var i = 0; i < holes.Length; i++)
                for (var j = 0; j < i; j++)
                    if (holes[i].Centre.DistanceTo(holes[j].Centre) < spec.Dowels.HoleDiameter
                        + Math.Min(spec.Dowels.Wall, spec.Dowels.HoleDiameter) - Slack.Curve)
                        yield return FormattableString.Invariant(
                            $"dowels at {holes[i].Centre} and {holes[j].Centre} of layer {layers[n].Number} run into each other");
            var open = n + 1 < layers.Length ? holes.FirstOrDefault(h => !run.Wood(layers[n + 1]).Contains(h.Centre))
                : holes.FirstOrDefault();
            if (!spec.Dowels.ThroughFace && open is not null)
                yield return $"the dowel at {open.Centre} opens on the top face of layer {layers[n].Number}";
            if (n > 0 && layers[n].Parts.Any(p => p.Dowels.Length < 2 && (spec.Dowels.ThroughFace || !p.IsTop))
                && run.Design.Findings.All(f => f.Id is not ("dowels-no-room" or "dowel-alone")))
                yield return $"a piece of layer {layers[n].Number} has fewer than two dowels, and nothing says so";
        }
    }
}
