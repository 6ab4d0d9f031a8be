namespace BuckGen.Geometry.Facing;

/// <summary>One search for a <see cref="NarrowestPlace"/>.</summary>
internal sealed class NarrowestSearch(EdgeTree tree, bool wood, double error, CancellationToken cancellation)
{
    /// <summary>
    /// How many faces and branches are checked: a number for any edge, and some for each piece. Our own, no source.
    /// </summary>
    private const long BaseVisits = 10_000_000, VisitsPerPiece = 20;

    /// <summary>A search that has become long ends where only places narrower by less than this, mm, can be left.</summary>
    private const double NearEnough = 1e-3;

    /// <summary>A circle may be entered by this share of its radius.</summary>
    private const double Entered = 1e-3;

    /// <summary>Widths that differ by less, mm, are equal: so that rounding does not choose between them.</summary>
    private const double SameWidth = 1e-6;

    /// <summary>More than rounding changes in an angle, radians.</summary>
    private const double AngleSlack = 1e-9;

    private readonly PriorityQueue<(int A, int B), double> stretches = new();
    private readonly List<OppositePoints> ways = [];
    private readonly List<Place> equals = [];
    private readonly Face?[] faces = FacesOf(tree.Pieces, wood);
    private Place? best;
    private long visits = BaseVisits + VisitsPerPiece * tree.Pieces.Length;

    /// <summary>Wider places need no check.</summary>
    private double Limit => best is { } place ? place.Way.Width + SameWidth : double.PositiveInfinity;

    public NarrowestFound Find()
    {
        stretches.Enqueue((tree.Root, tree.Root), 0);
        while (stretches.TryDequeue(out var pair, out var least) && least <= Limit)
        {
            cancellation.ThrowIfCancellationRequested();
            // Stretches come nearest first, so that nothing narrower than this one is left.
            if (visits < 0)
                return new(best is { } soFar ? Found(soFar) : null, best is { } near
                    && near.Way.Width - least <= NearEnough ? null : least);
            var (a, b) = pair;
            if (tree[a].IsLeaf && tree[b].IsLeaf)
            {
                if (MinDistance(tree[a], tree[b]) <= Limit) LookBetween(tree[a], tree[b]);
            }
            else if (a == b)
            {
                Add(tree[a].First, tree[a].First);
                Add(tree[a].First, tree[a].Second);
                Add(tree[a].Second, tree[a].Second);
            }
            else
            {
                if (tree[a].IsLeaf || (!tree[b].IsLeaf && tree[b].Bounds.Diagonal > tree[a].Bounds.Diagonal)) (a, b) = (b, a);
                Add(tree[a].First, b);
                Add(tree[a].Second, b);
            }
        }

        // Only now, since it takes long to see that a circle which touches the edge nearly everywhere is clear.
        foreach (var place in equals.Order())
        {
            cancellation.ThrowIfCancellationRequested();
            if (visits < 0) break;
            if (IsClear(place.Way)) return new(Found(place), null);
        }

        return new(best is { } found ? Found(found) : null, null);
    }

    private NarrowestPlace Found(Place place) =>
        new(place.Way.A, place.Way.B, tree.Pieces[place.PieceA].Loop, tree.Pieces[place.PieceB].Loop);

    /// <summary>Puts a pair of stretches on the list unless no narrow place can lie between them.</summary>
    private void Add(int a, int b)
    {
        var (one, other) = (tree[a], tree[b]);
        if (!one.Normals.Intersects(other.Normals.Opposite, AngleTolerances.Parallel + AngleSlack)) return;
        var least = one.Bounds.DistanceTo(other.Bounds);
        if (least > Limit) return;
        if (least > 0)
        {
            var way = DirectionRange.Between(one.Bounds, other.Bounds);
            var (from, to) = wood ? (one.Normals, other.Normals.Opposite) : (one.Normals.Opposite, other.Normals);
            if (!from.Intersects(way, AngleTolerances.Square + AngleSlack)
                || !to.Intersects(way, AngleTolerances.Square + AngleSlack)) return;
            // Middles of ways between the two lie no farther than this from the middle of the two.
            var spread = (one.Bounds.Diagonal + other.Bounds.Diagonal) / 4;
            var clear = Clear(least / 2, Math.Max(one.Facet, other.Facet) + AngleTolerances.Parallel) - spread;
            visits -= EdgeTree.FewVisits / 4;
            if (clear > 0 && tree.SoonHasNearer(one.Bounds.Centre.MidpointTo(other.Bounds.Centre), clear)) return;
        }

        stretches.Enqueue((a, b), least);
    }

    /// <summary>
    /// No two points of two leaves lie nearer, as seen along the way from one to the other; closer than by their bounds.
    /// </summary>
    private double MinDistance(EdgeTree.Branch one, EdgeTree.Branch other)
    {
        var way = other.Bounds.Centre - one.Bounds.Centre;
        if (way.LengthSquared == 0) return 0;
        way = way.Unit();
        var (nearest, farthest) = (double.PositiveInfinity, double.NegativeInfinity);
        for (var i = one.From; i < one.To; i++)
        {
            var piece = tree.Pieces[i].Segment;
            farthest = Math.Max(farthest, Math.Max(piece.Start.Dot(way), piece.End.Dot(way)) + Reach(piece));
        }

        for (var i = other.From; i < other.To; i++)
        {
            var piece = tree.Pieces[i].Segment;
            nearest = Math.Min(nearest, Math.Min(piece.Start.Dot(way), piece.End.Dot(way)) - Reach(piece));
        }

        return nearest - farthest;

        // A point of an arc lies no farther from the nearer end of it than this.
        static double Reach(Segment piece) => piece.IsArc ? Math.Abs(piece.Bulge) <= 1 ? piece.Sagitta : 2 * piece.Radius : 0;
    }

    private void LookBetween(EdgeTree.Branch one, EdgeTree.Branch other)
    {
        visits -= 4L * (one.To - one.From) * (other.To - other.From);
        for (var i = 2 * one.From; i < 2 * one.To; i++)
        {
            if (faces[i] is not { } a) continue;
            for (var j = one == other ? i : 2 * other.From; j < 2 * other.To; j++)
            {
                if (faces[j] is not { } b || !a.Normals.Intersects(b.Normals.Opposite, AngleTolerances.Parallel + AngleSlack))
                    continue;
                ways.Clear();
                OppositePoints.Find(a, b, ways);
                foreach (var way in ways) Take(new(way, i / 2, j / 2));
            }
        }
    }

    private void Take(Place place)
    {
        if (place.Way.Width > Limit) return;
        if (best is { } known && place.Way.Width > known.Way.Width - SameWidth)
        {
            if (place.CompareTo(known) < 0) equals.Add(place);
        }
        else if (IsClear(place.Way))
        {
            best = place;
            equals.Clear();
        }
    }

    private bool IsClear(OppositePoints way) => !tree.HasNearer(way.Middle, Clear(way.Width / 2, way.Misfit), ref visits);

    /// <summary>How far from its middle a circle has to be clear of edges, mm.</summary>
    private double Clear(double radius, double misfit)
    {
        var round = radius * Math.Cos(misfit) * (1 - Entered);
        // Where the error is as large as the place itself, half of the circle still has to be clear.
        return Math.Max(round - 2 * error, round / 2);
    }

    /// <summary>For each piece what it shows, then what the corner at its start shows.</summary>
    private static Face?[] FacesOf(EdgePiece[] pieces, bool wood)
    {
        var faces = new Face?[2 * pieces.Length];
        for (var i = 0; i < pieces.Length; i++)
            (faces[2 * i], faces[2 * i + 1]) = (Face.OfPiece(pieces[i], wood), Face.OfCorner(pieces[i], wood));
        return faces;
    }

    /// <summary>A way across; of those of equal width a middle comes first, then the lower and the more to the left.</summary>
    private readonly record struct Place(OppositePoints Way, int PieceA, int PieceB) : IComparable<Place>
    {
        private (bool, double, double) Rank => (!Way.IsMiddle, Math.Round(Way.Middle.Y, 5), Math.Round(Way.Middle.X, 5));

        public int CompareTo(Place other) => Rank.CompareTo(other.Rank);
    }
}
