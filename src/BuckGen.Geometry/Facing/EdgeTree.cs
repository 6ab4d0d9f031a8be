namespace BuckGen.Geometry.Facing;

/// <summary>
/// The pieces of an edge in a tree. Loops that lie near each other share a branch, and each loop is halved along its way. So a
/// branch is a short stretch of edge that runs in few directions.
/// </summary>
internal sealed class EdgeTree
{
    private const int LeafSize = 4;

    /// <summary>A few times the depth of a tree of a hundred thousand pieces.</summary>
    public const int FewVisits = 60;
    private readonly List<Branch> branches = [];

    public EdgeTree(EdgePiece[] pieces)
    {
        Pieces = pieces;
        var loops = new List<(int From, int To, Bounds Bounds)>();
        for (var (from, to) = (0, 0); from < pieces.Length; from = to)
        {
            var bounds = Bounds.Nothing;
            for (; to < pieces.Length && pieces[to].Loop == pieces[from].Loop; to++)
                bounds = bounds.With(pieces[to].Segment.Bounds);
            loops.Add((from, to, bounds));
        }

        Root = AddLoops(loops.ToArray());
    }

    /// <summary>The pieces, loop by loop.</summary>
    public EdgePiece[] Pieces { get; }

    /// <summary>The number of the branch that holds all.</summary>
    public int Root { get; }

    /// <summary>A branch by its number.</summary>
    public Branch this[int number] => branches[number];

    /// <summary>True when an edge lies nearer to a point than a distance.</summary>
    /// <param name="p">The point.</param>
    /// <param name="distance">The distance, mm.</param>
    /// <param name="looks">How many more branches the caller may check; it goes below 0 rather than end the search.</param>
    public bool HasNearer(Vec2 p, double distance, ref long looks)
    {
        var left = int.MaxValue;
        var has = HasNearer(Root, p, distance, ref left);
        looks -= int.MaxValue - left;
        return has;
    }

    /// <summary>
    /// True when an edge that lies nearer to a point than a distance is found in a few checks; false means nothing.
    /// </summary>
    public bool SoonHasNearer(Vec2 p, double distance)
    {
        var looks = FewVisits;
        return HasNearer(Root, p, distance, ref looks);
    }

    private bool HasNearer(int number, Vec2 p, double distance, ref int looks)
    {
        if (looks-- <= 0) return false;
        var branch = branches[number];
        if (DistanceTo(branch.Bounds, p) >= distance) return false;
        if (MaxDistance(branch.Bounds, p) < distance) return true;
        if (branch.IsLeaf)
        {
            for (var i = branch.From; i < branch.To; i++)
                if (Pieces[i].Segment.DistanceTo(p) < distance) return true;
            return false;
        }

        var (near, far) = (branch.First, branch.Second);
        if (DistanceTo(branches[near].Bounds, p) > DistanceTo(branches[far].Bounds, p)) (near, far) = (far, near);
        return HasNearer(near, p, distance, ref looks) || HasNearer(far, p, distance, ref looks);
    }

    private int AddLoops(Span<(int From, int To, Bounds Bounds)> loops)
    {
        if (loops.Length == 1) return AddChain(loops[0].From, loops[0].To);
        var bounds = Bounds.Nothing;
        foreach (var loop in loops) bounds = bounds.With(loop.Bounds);
        if (bounds.Width > bounds.Height)
            loops.Sort((a, b) => (a.Bounds.Centre.X, a.From).CompareTo((b.Bounds.Centre.X, b.From)));
        else loops.Sort((a, b) => (a.Bounds.Centre.Y, a.From).CompareTo((b.Bounds.Centre.Y, b.From)));
        return Joined(AddLoops(loops[..(loops.Length / 2)]), AddLoops(loops[(loops.Length / 2)..]));
    }

    private int AddChain(int from, int to)
    {
        var middle = (from + to) / 2;
        if (to - from > LeafSize) return Joined(AddChain(from, middle), AddChain(middle, to));
        var (bounds, normals, facet) = (Pieces[from].Segment.Bounds, Pieces[from].Normals, 0.0);
        for (var i = from; i < to; i++)
        {
            bounds = bounds.With(Pieces[i].Segment.Bounds);
            normals = normals.With(Pieces[i].Normals).With(Pieces[i].NormalsOfCorner);
            if (Math.Abs(Pieces[i].Turn) is var turn && turn <= AngleTolerances.Facet) facet = Math.Max(facet, turn);
        }

        return Add(new(bounds, normals, facet, from, to, -1, -1));
    }

    private int Joined(int first, int second)
    {
        var (a, b) = (branches[first], branches[second]);
        return Add(new(a.Bounds.With(b.Bounds), a.Normals.With(b.Normals), Math.Max(a.Facet, b.Facet), -1, -1, first, second));
    }

    private int Add(Branch branch)
    {
        branches.Add(branch);
        return branches.Count - 1;
    }

    private static double DistanceTo(Bounds b, Vec2 p) => b.DistanceTo(new Bounds(p.X, p.Y, p.X, p.Y));

    private static double MaxDistance(Bounds b, Vec2 p) =>
        new Vec2(Math.Max(p.X - b.MinX, b.MaxX - p.X), Math.Max(p.Y - b.MinY, b.MaxY - p.Y)).Length;

    /// <summary>A stretch of edge, or several.</summary>
    /// <param name="Bounds">What encloses it.</param>
    /// <param name="Normals">The ways into the region, those between the sides of its corners included.</param>
    /// <param name="Facet">The largest turn of its joints that count as parts of curves, radians.</param>
    /// <param name="From">Its first piece, in a leaf.</param>
    /// <param name="To">One past its last piece, in a leaf.</param>
    /// <param name="First">Its first half, when it is no leaf.</param>
    /// <param name="Second">Its second half, when it is no leaf.</param>
    internal sealed record Branch(Bounds Bounds, DirectionRange Normals, double Facet, int From, int To, int First, int Second)
    {
        public bool IsLeaf => First < 0;
    }
}
