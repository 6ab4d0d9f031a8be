using BuckGen.Geometry;
using BuckGen.Physics.Membranes;

namespace BuckGen.Design.Prediction;

/// <summary>Postprocessing: computes the results for the part from a formed sheet.</summary>
internal sealed class PartPostprocessor
{
    /// <summary>
    /// Share of the radius of the ball that must be free, so that a ball on a plain wall counts despite rounding and draft.
    /// </summary>
    private const double MinFreeShare = 0.9;

    /// <summary>Height, in gauges, from which on a fold is a web; lower ones are the wrinkles of tight corners.</summary>
    private const double MinWebHeight = 2;

    /// <summary>Places closer together than this count as one, mm; and the largest number of places.</summary>
    private const double MinSpacing = 15;
    private const int MaxPlaces = 12;

    /// <summary>How far outside the footprint a point still counts as part, mm: upright walls stand on its edge.</summary>
    private const double EdgeTolerance = 0.05;

    private readonly FormedSheet formed;
    private readonly BuckTool tool;
    private readonly PlanDistance footprint;
    private readonly Bridging bridging;
    private readonly double frameHeight;
    private readonly FormingSpec spec;
    private readonly DraftedWall wall;
    private readonly MeshSizes sizes;
    private readonly Vec3[] areaVectors;
    private readonly double[] volumes, areas;

    public PartPostprocessor(
        FormedSheet formed, BuckTool tool, PlanDistance footprint, Bridging bridging, double frameHeight, FormingSpec spec,
        DraftedWall wall, MeshSizes sizes)
    {
        (this.formed, this.tool, this.footprint, this.bridging, this.wall) = (formed, tool, footprint, bridging, wall);
        (this.frameHeight, this.spec, this.sizes) = (frameHeight, spec, sizes);
        var count = formed.Nodes.Length;
        (areaVectors, volumes, areas) = (new Vec3[count], new double[count], new double[count]);
        foreach (var (t, i) in formed.Sheet.Mesh.Triangles.Select((t, i) => (t, i)))
        {
            var normal = (formed.Nodes[t.B] - formed.Nodes[t.A]).Cross(formed.Nodes[t.C] - formed.Nodes[t.A]);
            foreach (var node in (int[])[t.A, t.B, t.C])
            {
                areaVectors[node] += normal;
                areas[node] += normal.Length;
                volumes[node] += normal.Length * formed.Thickness[i];
            }
        }
    }

    /// <summary>Radius of the ball by which a place is judged, mm, wherever it is.</summary>
    public double Ball(Vec2 place) => sizes.Ball(place, spec.CornerBall);

    /// <summary>Width of a gap below which the sheet in it is not judged, mm.</summary>
    public double MinJudgedGap => sizes.MinJudgedGap;

    /// <summary>Whether the simulation converged.</summary>
    public bool IsConverged => formed.Outcome == FormingOutcome.Converged;

    /// <summary>The thinnest place of the part that a ball can touch; null when there is none.</summary>
    /// <param name="ball">The ball's radius at a place, mm.</param>
    public ThinnestPlace? Thinnest(Func<Vec2, double> ball) =>
        Thinnest(Enumerable.Range(0, formed.Nodes.Length).Where(i => IsOnPart(formed.Nodes[i])), ball);

    /// <summary>The results.</summary>
    public FormedPart Part
    {
        get
        {
            var part = new FormedPart
            {
                Spec = spec,
                Gauge = formed.Sheet.Thickness,
                FrameHeight = frameHeight,
                BallRadius = sizes.BallInTheOpen(spec.CornerBall),
                Modulus = new(formed.Sheet.Material.ShearModulus, formed.Sheet.Material.ShearModulus),
                MinEdgeLength = sizes.AtWalls,
                IsConverged = IsConverged,
                Points = [],
                Triangles = [],
                Thinnest = null,
                ThinnestOfSheet = null,
                MeanThickness = 0,
                MeanThicknessOfSheet = 0,
                VolumeError = 0,
                Bridged = [],
                Webs = [],
                BurstAt = formed.Outcome == FormingOutcome.Burst && formed.BurstPosition.Plan is { IsFinite: true } place
                    ? place
                    : null,
            };
            return IsConverged ? WithResults(part) : part;
        }
    }

    private FormedPart WithResults(FormedPart part)
    {
        var thinnest = Thinnest(Ball);
        return part with
        {
            Points = [.. formed.Nodes.Select((n, i) =>
                new FormedPoint(n.X, n.Y, n.Z + frameHeight, volumes[i] / areas[i], formed.ContactOrder[i]))],
            Triangles = [.. formed.Sheet.Mesh.Triangles.Select((t, i) =>
                new FormedTriangle(t.A, t.B, t.C, formed.Thickness[i], formed.Stretches[i].Max))],
            BallRadius = thinnest is null ? part.BallRadius : Ball(thinnest.Place),
            Thinnest = thinnest,
            ThinnestOfSheet = Thinnest(Enumerable.Range(0, formed.Nodes.Length), Ball),
            MeanThickness = MeanThickness(),
            Wall = WallProfile.Create(WallSamples(), wall.Depth, wall.Draft),
            MeanThicknessOfSheet = formed.MeanThickness,
            VolumeError = formed.PlasticVolumeAfter / formed.PlasticVolumeBefore - 1,
            Bridged = [.. Bridged],
            Webs = [.. Webs],
        };
    }

    /// <summary>Where the sheet does not reach the wood, largest gap first.</summary>
    public IEnumerable<BridgedPlace> Bridged => Separated(bridging.Nodes)
        .Select(n => new BridgedPlace(n.Plan, n.Z + frameHeight, tool.DistanceFromWalls(n)));

    /// <summary>Where it folds on itself, highest first.</summary>
    public IEnumerable<WebPlace> Webs =>
        Separated(WebNodes().OrderByDescending(n => n.Z)).Select(n => new WebPlace(n.Plan, n.Z + frameHeight));

    private IEnumerable<Vec3> WebNodes() => formed.WebNodes.Select(i => formed.Nodes[i])
        .Where(n => tool.SignedDistance(n) > MinWebHeight * formed.Sheet.Thickness);

    private bool IsOnPart(Vec3 place) =>
        IsInFootprint(place) && wall.HeightOf(place.Z + frameHeight) >= wall.CutHeight - EdgeTolerance;

    private bool IsInFootprint(Vec3 place) => footprint.At(place.Plan) <= EdgeTolerance;

    private IEnumerable<WallSample> WallSamples()
    {
        foreach (var (t, i) in formed.Sheet.Mesh.Triangles.Select((t, i) => (t, i)))
        {
            var middle = formed.CentroidOf(t);
            if (!IsInFootprint(middle)) continue;
            var normal = (formed.Nodes[t.B] - formed.Nodes[t.A]).Cross(formed.Nodes[t.C] - formed.Nodes[t.A]);
            if (normal.Length == 0) continue;
            var slope = Math.Acos(Math.Min(1, Math.Abs(normal.Z) / normal.Length)) * 180 / Math.PI;
            yield return new(wall.HeightOf(middle.Z + frameHeight), slope, normal.Length / 2, formed.Thickness[i]);
        }
    }

    /// <summary>Thickness that a share of the area of the part does not exceed, mm; 0 when no triangle lies on it.</summary>
    public double Quantile(double share)
    {
        WallSample[] rising = [.. WallSamples().Where(s => s.Height >= wall.CutHeight - EdgeTolerance).OrderBy(s => s.Thickness)];
        return rising.Length == 0 ? 0 : WallProfile.Quantile(rising, share);
    }

    /// <summary>Largest gap between sheet and wood near a place, as far as it counts as bridging, mm; else 0.</summary>
    public double GapNear(Vec2 place) => bridging.GapNear(place, MinSpacing / 2);

    /// <summary>Whether a web stands near a place.</summary>
    public bool HasWebNear(Vec2 place) => WebNodes().Any(n => n.Plan.DistanceTo(place) <= MinSpacing);

    /// <summary>Mean thickness of the part, by areas, mm; 0 when no triangle lies on it.</summary>
    public double MeanThickness()
    {
        var (volume, area) = (0.0, 0.0);
        foreach (var (t, i) in formed.Sheet.Mesh.Triangles.Select((t, i) => (t, i)).Where(t => IsOnPart(formed.CentroidOf(t.t))))
        {
            var twice = (formed.Nodes[t.B] - formed.Nodes[t.A]).Cross(formed.Nodes[t.C] - formed.Nodes[t.A]).Length;
            (volume, area) = (volume + twice * formed.Thickness[i], area + twice);
        }
        return area > 0 ? volume / area : 0;
    }

    private ThinnestPlace? Thinnest(IEnumerable<int> nodes, Func<Vec2, double> ball)
    {
        ThinnestPlace? thinnest = null;
        foreach (var i in nodes)
        {
            var thickness = volumes[i] / areas[i];
            if (thickness >= (thinnest?.Thickness ?? double.PositiveInfinity) || !AdmitsBall(i, ball(formed.Nodes[i].Plan)))
                continue;
            thinnest = new(thickness, formed.Nodes[i].Plan, formed.Nodes[i].Z + frameHeight);
        }
        return thinnest;
    }

    private bool AdmitsBall(int node, double ball)
    {
        var length = areaVectors[node].Length;
        return length > 0
            && tool.DistanceFromWalls(formed.Nodes[node] + areaVectors[node] * (ball / length)) >= MinFreeShare * ball;
    }

    /// <summary>The first of each group of close places.</summary>
    private static List<Vec3> Separated(IEnumerable<Vec3> places)
    {
        var kept = new List<Vec3>();
        foreach (var place in places)
            if (kept.Count < MaxPlaces && kept.TrueForAll(k => (k - place).Length > MinSpacing)) kept.Add(place);
        return kept;
    }
}

/// <summary>The drafted wall of the wood, by its heights above the bottom of the stack.</summary>
/// <param name="Flange">Height of the plane of the flange, mm.</param>
/// <param name="Face">Height of the face, or of the floor of a cavity, mm.</param>
/// <param name="Draft">Slope next to the face, degrees.</param>
/// <param name="CutHeight">Where the part is cut, from the plane of the flange toward the face, mm; 0 or less for no cut.</param>
internal readonly record struct DraftedWall(double Flange, double Face, double Draft, double CutHeight)
{
    /// <summary>From the flange to the face, mm.</summary>
    public double Depth => Math.Abs(Face - Flange);

    /// <summary>From the plane of the flange toward the face, mm.</summary>
    public double HeightOf(double z) => Face > Flange ? z - Flange : Flange - z;
}
