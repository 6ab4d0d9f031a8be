using BuckGen.Design.Venting;
using BuckGen.Geometry;

namespace BuckGen.Tests.Design.Venting;

/// <summary>
/// The ways of the air as a graph. Its nodes are the bores in the layer files and the openings of the plenum, which is the lowest
/// file; a bore is joined to one below that it opens into wholly, and to the opening that it lies over wholly.
/// </summary>
internal sealed class AirPaths
{
    private const double Written = 2e-4;

    private readonly LayerFile[] files;
    private readonly PlenumKind plenum;
    private readonly Loop? portOpening;

    public AirPaths(LayerFile[] files, PlenumKind plenum, Vec2 port)
    {
        (this.files, this.plenum) = (files, plenum);
        portOpening = plenum == PlenumKind.Channels ? OpeningAt(port) : null;
        Mouths = [.. files.SelectMany(f => f.Bores).Where(b => !BoresOf(b.Layer + 1).Any(a => OpensInto(a, b)))];
    }

    /// <summary>The bores that no other opens into: where air enters.</summary>
    public IReadOnlyList<Bore> Mouths { get; }

    /// <summary>True when no layer above has wood over the mouth.</summary>
    public bool IsOpenAbove(Bore mouth) =>
        files.Where(f => f.Number > mouth.Layer).All(f => Rim(mouth).Append(mouth.Centre).All(p => !f.HasWoodAt(p)));

    /// <summary>Follows the bores down to the plenum.</summary>
    public bool ReachesPort(Bore bore)
    {
        // In its own layer a bore must go through wood, or it is drawn in the air.
        if (!files[bore.Layer - 1].HasWoodAt(bore.Centre)) return false;
        if (bore.Layer > 2) return BoresOf(bore.Layer - 1).Where(b => OpensInto(bore, b)).Any(ReachesPort);
        return plenum == PlenumKind.Channels ? LiesOver(bore, portOpening) : LiesBetweenFeet(bore);
    }

    private IEnumerable<Bore> BoresOf(int layer) => layer <= files.Length ? files[layer - 1].Bores : [];

    private static bool OpensInto(Bore upper, Bore lower) =>
        upper.Centre.DistanceTo(lower.Centre) + upper.Radius <= lower.Radius + Written;

    private bool LiesOver(Bore bore, Loop? opening) =>
        opening is not null && Rim(bore).Append(bore.Centre).All(p => ReferenceEquals(OpeningAt(p), opening));

    /// <summary>The cut round the open place that a point lies in; null over wood and outside.</summary>
    private Loop? OpeningAt(Vec2 p)
    {
        var round = files[0].Cuts.Where(c => c.Contains(p)).OrderBy(c => Math.Abs(c.SignedArea)).ToArray();
        return round.Length > 0 && round.Length % 2 == 0 ? round[0] : null;
    }

    /// <summary>Feet that stand apart leave one open space round all of them, and the port is open to it.</summary>
    private bool LiesBetweenFeet(Bore bore)
    {
        var feet = files[0].Cuts;
        for (var i = 0; i < feet.Count; i++)
            for (var j = 0; j < i; j++)
                if (feet[i].Bounds.Centre.DistanceTo(feet[j].Bounds.Centre) <= (feet[i].Bounds.Width + feet[j].Bounds.Width) / 2)
                    return false;
        return feet.All(f => f.DistanceTo(bore.Centre) >= bore.Radius && !f.Contains(bore.Centre));
    }

    private static IEnumerable<Vec2> Rim(Bore bore) =>
        Enumerable.Range(0, 16).Select(k => bore.Centre + new Vec2(bore.Radius - Written, 0).Turned(Math.PI / 8 * k));
}
