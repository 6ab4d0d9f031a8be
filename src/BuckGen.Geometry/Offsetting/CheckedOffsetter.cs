using System.Runtime.CompilerServices;

namespace BuckGen.Geometry.Offsetting;

/// <summary>Tries one offsetter after another and takes the first result that keeps the distance law.</summary>
/// <param name="tolerance">Maximum deviation from the distance, mm.</param>
/// <param name="rungs">The offsetters, the best first.</param>
internal sealed class CheckedOffsetter(double tolerance, params IReadOnlyList<IOffsetter> rungs) : IOffsetter
{
    // Many heights are checked by one outline; it is prepared once, and forgotten with its region.
    private readonly ConditionalWeakTable<Region, PreparedRegion> sources = [];

    /// <summary>
    /// First exact on lines and arcs, then the same without trust in the drawn direction, then with chords in place of very flat
    /// arcs. The last is the polygon offset of the outline without its tiny pieces.
    /// </summary>
    public static CheckedOffsetter Standard(Tolerance tolerance)
    {
        ArgumentNullException.ThrowIfNull(tolerance);
        return new(
            tolerance.Chord, new ArcOffsetter(), new ArcOffsetter(MovedSides.Both),
            new FlatArcOffsetter(new ArcOffsetter(), tolerance.Chord / 4),
            new TidiedOffsetter(new PolygonOffsetter(tolerance.Chord)));
    }

    /// <inheritdoc/>
    public Region Offset(Region region, double distance, CornerJoin join, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(region);
        var faults = new List<string>();
        foreach (var rung in rungs)
        {
            try
            {
                var result = rung.Offset(region, distance, join, cancellation);
                var fault = OffsetCheck.Fault(Prepared(region), result, distance, join, tolerance, cancellation);
                if (fault is null) return result;
                faults.Add(fault);
            }
            catch (OffsetFailedException failure)
            {
                faults.Add(failure.Message);
            }
        }

        // For a distance this far below the tolerance the unchanged outline is a good offset, if it keeps the laws.
        if (Math.Abs(distance) <= tolerance / 4
            && OffsetCheck.Fault(Prepared(region), region, distance, join, tolerance, cancellation) is null) return region;
        throw new OffsetFailedException(FormattableString.Invariant(
            $"The outline could not be offset by {distance} mm: {string.Join("; ", faults)}. Does it cross itself?"));
    }

    private PreparedRegion Prepared(Region region) => sources.GetValue(region, r => new(r));
}
