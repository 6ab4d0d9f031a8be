using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Design.Venting;

/// <summary>What a floor needs, computed once, and the placing of its vents for one spacing after another.</summary>
internal sealed class FloorVents
{
    /// <summary>How often vents are added between others that had to give way.</summary>
    private const int Rounds = 6;

    /// <summary>A foot on a wall is the edge of a floor when it lies within this, mm.</summary>
    private const double OnWall = 1e-4;

    private readonly VentCandidates candidates;
    private readonly WallFoot[] feet;

    public FloorVents(AirFloor floor, double distance, VentSpec spec, double apart, Vec2 middle, IOffsetter offsetter,
        CancellationToken cancellation)
    {
        Floor = floor;
        candidates = new(floor, distance, spec, apart, middle, offsetter, cancellation);
        // A vent does the work of another that it leaves no room for: it may lie that much farther from the wall.
        feet = spec.Pattern.AlongWalls && floor.DeepestPoint is null
            ? [.. floor.Air.Loops.Where(IsWall).Select(l => new WallFoot(l, floor, distance, distance + apart, middle))
                .OrderByDescending(f => Math.Round(f.Length, 3))]
            : [];
    }

    public AirFloor Floor { get; }

    /// <summary>Why a plug-in's pattern failed; none when it did not.</summary>
    public IEnumerable<Finding> Failures => candidates.Failures;

    /// <summary>The wishes of the shape.</summary>
    public IEnumerable<VentCandidate> Candidates(double spacing) => candidates.At(spacing);

    /// <summary>
    /// Adds vents where those placed by the shape leave too long a stretch of wall; reports each stretch that stays too long.
    /// </summary>
    public IEnumerable<Finding> Fill(VentPlacement placement, double spacing, CancellationToken cancellation)
    {
        foreach (var foot in feet)
        {
            cancellation.ThrowIfCancellationRequested();
            var stretches = foot.TooLong(placement.Inside(foot.Within), spacing);
            for (var round = 0; round < Rounds && stretches.Count > 0; round++)
            {
                // All of them are divided before any is measured again.
                bool[] placed = [.. stretches.Select(s => Divide(foot, s, placement, spacing))];
                if (!placed.Contains(true)) break;
                stretches = foot.TooLong(placement.Inside(foot.Within), spacing);
            }

            foreach (var stretch in stretches)
                yield return VentFindings.FarApart(foot.PointAt((stretch.From + stretch.To) / 2), stretch.Length, spacing,
                    Floor.Layer);
        }
    }

    /// <summary>True when a vent could be placed on the stretch.</summary>
    private static bool Divide(WallFoot foot, WallStretch stretch, VentPlacement placement, double spacing)
    {
        var count = Math.Max(1, (int)Math.Ceiling(stretch.Length / spacing - 1e-9));
        var placed = false;
        for (var k = stretch.IsServed ? 1 : 0; k < count; k++)
            placed |= placement.TryPlace(foot.CandidateAt(stretch.From + stretch.Length * k / count));
        return placed;
    }

    /// <summary>False for the edge of the plate.</summary>
    private bool IsWall(Loop loop) => loop.Segments.All(s => Floor.ToWall(s.PointAt(0.37), OnWall) <= OnWall);
}
