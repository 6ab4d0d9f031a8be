using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Physics.Membranes;

namespace BuckGen.Design.Prediction;

/// <summary>Computes from a formed sheet what its maker wants to know.</summary>
internal sealed class PartReading
{
    /// <summary>
    /// Share of the ball's radius that must lie free, so that a ball on a plain wall counts despite rounding and draft.
    /// </summary>
    private const double BallSlack = 0.9;

    /// <summary>Triangles that a ball must span, so that its place is resolved.</summary>
    private const double TrianglesInBall = 2;

    /// <summary>
    /// Least distance at which the sheet counts as standing off, mm, if it is no less than the gauge: less is the rounding of
    /// every corner.
    /// </summary>
    private const double LeastBridge = 1;

    /// <summary>Height, in gauges, from which a fold is a web; lower ones are the wrinkles of tight corners.</summary>
    private const double LeastWeb = 2;

    /// <summary>Places nearer to each other than this count as one, mm; at most this many are reported.</summary>
    private const double Apart = 15;
    private const int MostPlaces = 12;

    /// <summary>How far outside the footprint the part still counts, mm: upright walls stand on its edge.</summary>
    private const double EdgeSlack = 0.05;

    private readonly FormedSheet formed;
    private readonly BuckTool tool;
    private readonly PlanDistance footprint;
    private readonly Bounds box;
    private readonly double frame;
    private readonly FormingSpec spec;
    private readonly Vec3[] normals;
    private readonly double[] volumes, areas;

    public PartReading(FormedSheet formed, BuckTool tool, PlanDistance footprint, Bounds box, double frame, FormingSpec spec, double finest)
    {
        (this.formed, this.tool, this.footprint, this.box, this.frame, this.spec, Finest) = (formed, tool, footprint, box, frame, spec, finest);
        var count = formed.Nodes.Length;
        (normals, volumes, areas) = (new Vec3[count], new double[count], new double[count]);
        foreach (var (t, i) in formed.Sheet.Mesh.Triangles.Select((t, i) => (t, i)))
        {
            var normal = (formed.Nodes[t.B] - formed.Nodes[t.A]).Cross(formed.Nodes[t.C] - formed.Nodes[t.A]);
            foreach (var node in (int[])[t.A, t.B, t.C])
            {
                normals[node] += normal;
                areas[node] += normal.Length;
                volumes[node] += normal.Length * formed.Thickness[i];
            }
        }
    }

    /// <summary>Sides of the smallest triangles, mm.</summary>
    public double Finest { get; }

    /// <summary>
    /// Radius of the ball by which the thinnest place is found: the wanted one, if the triangles are small enough to resolve it,
    /// mm.
    /// </summary>
    public double Ball => Math.Max(spec.CornerBall, TrianglesInBall * Finest);

    /// <summary>Whether the sheet came to rest.</summary>
    public bool IsAtRest => formed.Outcome == FormingOutcome.AtRest;

    /// <summary>The thinnest place of the part that a ball can touch; null when there is none.</summary>
    /// <param name="ball">The ball's radius, mm.</param>
    public ThinnestPlace? Thinnest(double ball) => Thinnest(Enumerable.Range(0, formed.Nodes.Length).Where(i => IsOnPart(formed.Nodes[i])), ball);

    /// <summary>The part.</summary>
    public FormedPart Part
    {
        get
        {
            var part = new FormedPart
            {
                Spec = spec, Gauge = formed.Sheet.Thickness, FrameHeight = frame, Ball = Ball, Finest = Finest, IsAtRest = IsAtRest,
                Points = [], Triangles = [], Thinnest = null, ThinnestOfSheet = null, Mean = 0, MeanOfSheet = 0, VolumeError = 0, Bridged = [], Webs = [],
                BurstAt = formed.Outcome == FormingOutcome.Burst && formed.BurstPlace.Plan is { IsFinite: true } place ? place : null,
            };
            return IsAtRest ? Read(part) : part;
        }
    }

    private FormedPart Read(FormedPart part)
    {
        var (before, after) = formed.Plastic;
        return part with
        {
            Points = [.. formed.Nodes.Select((n, i) => new FormedPoint(n.X, n.Y, n.Z + frame, volumes[i] / areas[i], formed.ContactOrder[i]))],
            Triangles = [.. formed.Sheet.Mesh.Triangles.Select((t, i) => new FormedTriangle(t.A, t.B, t.C, formed.Thickness[i], formed.Stretch[i].Larger))],
            Thinnest = Thinnest(Ball),
            ThinnestOfSheet = Thinnest(Enumerable.Range(0, formed.Nodes.Length), Ball),
            Mean = Mean(),
            MeanOfSheet = formed.MeanThickness,
            VolumeError = after / before - 1,
            Bridged = Bridged(),
            Webs = [.. Separate(formed.Webbed.Select(i => formed.Nodes[i]).Where(n => tool.Distance(n) > LeastWeb * formed.Sheet.Thickness)).Select(n => n.Plan)],
        };
    }

    private bool IsOnPart(Vec3 place) => footprint.At(place.Plan) <= EdgeSlack;

    private double Mean()
    {
        var (volume, area) = (0.0, 0.0);
        foreach (var (t, i) in formed.Sheet.Mesh.Triangles.Select((t, i) => (t, i)).Where(t => IsOnPart(formed.MiddleOf(t.t))))
        {
            var twice = (formed.Nodes[t.B] - formed.Nodes[t.A]).Cross(formed.Nodes[t.C] - formed.Nodes[t.A]).Length;
            (volume, area) = (volume + twice * formed.Thickness[i], area + twice);
        }
        return area > 0 ? volume / area : 0;
    }

    private ThinnestPlace? Thinnest(IEnumerable<int> nodes, double ball)
    {
        ThinnestPlace? thinnest = null;
        foreach (var i in nodes)
        {
            var thickness = volumes[i] / areas[i];
            if (thickness >= (thinnest?.Thickness ?? double.PositiveInfinity) || !TakesBall(i, ball)) continue;
            thinnest = new(thickness, formed.Nodes[i].Plan, formed.Nodes[i].Z + frame);
        }
        return thinnest;
    }

    private bool TakesBall(int node, double ball)
    {
        var length = normals[node].Length;
        return length > 0 && tool.DistanceFromWalls(formed.Nodes[node] + normals[node] * (ball / length)) >= BallSlack * ball;
    }

    private ImmutableArray<BridgedPlace> Bridged()
    {
        var least = Math.Max(LeastBridge, formed.Sheet.Thickness);
        // Counters and gaps between pieces of a male buck lie outside its footprint, but among it.
        var open = formed.Nodes.Where((n, i) => formed.ContactOrder[i] < 0 && box.Contains(n.Plan)).Select(n => (Place: n, Distance: tool.DistanceFromWalls(n)))
            .Where(o => o.Distance > least).OrderByDescending(o => o.Distance);
        return [.. Separate(open.Select(o => o.Place)).Select(n => new BridgedPlace(n.Plan, n.Z + frame, tool.DistanceFromWalls(n)))];
    }

    /// <summary>The first of each group of near places.</summary>
    private static List<Vec3> Separate(IEnumerable<Vec3> places)
    {
        var kept = new List<Vec3>();
        foreach (var place in places)
            if (kept.Count < MostPlaces && kept.TrueForAll(k => (k - place).Length > Apart)) kept.Add(place);
        return kept;
    }
}
