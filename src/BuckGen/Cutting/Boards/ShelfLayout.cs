using BuckGen.Design.Bucks;
using BuckGen.Geometry;

namespace BuckGen.Cutting.Boards;

/// <summary>
/// Lays parts on boards in shelves: the tallest first, each beside the one before while the board is wide enough, then a
/// new shelf above, then a new board. Parts are turned by a quarter where that helps.
/// </summary>
internal static class ShelfLayout
{
    /// <summary>The pieces of board used of one stock; parts that fit on none are returned apart.</summary>
    public static (List<List<Placement>> Boards, List<CutPart> TooLarge) Arrange(
        IEnumerable<CutPart> parts, RectangleSize piece, CuttingSpec spec, CancellationToken cancellation = default)
    {
        var usable = new Vec2(piece.Width - 2 * spec.EdgeMargin, piece.Height - 2 * spec.EdgeMargin);
        var boards = new List<Board>();
        var tooLarge = new List<CutPart>();
        foreach (var part in parts.OrderByDescending(p => Math.Min(p.Bounds.Width, p.Bounds.Height))
                     .ThenByDescending(p => Math.Max(p.Bounds.Width, p.Bounds.Height)))
        {
            cancellation.ThrowIfCancellationRequested();
            if (Poses(part).All(p => p.Width > usable.X || p.Height > usable.Y)) tooLarge.Add(part);
            else if (!boards.Exists(s => s.TryPlace(part))) boards.Add(Board.StartedWith(part, usable, spec));
        }

        return ([.. boards.Select(s => s.Placements)], tooLarge);
    }

    /// <summary>Lying flat first: low shelves hold more.</summary>
    private static IEnumerable<(bool Turned, double Width, double Height)> Poses(CutPart part)
    {
        var (w, h) = (part.Bounds.Width, part.Bounds.Height);
        return w >= h ? [(false, w, h), (true, h, w)] : [(true, h, w), (false, w, h)];
    }

    private sealed class Board(Vec2 usable, CuttingSpec spec)
    {
        private readonly List<Shelf> shelves = [];

        public List<Placement> Placements { get; } = [];

        public static Board StartedWith(CutPart part, Vec2 usable, CuttingSpec spec)
        {
            var board = new Board(usable, spec);
            board.TryPlace(part);
            return board;
        }

        public bool TryPlace(CutPart part)
        {
            foreach (var (turned, width, height) in Poses(part))
            {
                var shelf = shelves.Find(s => height <= s.Height && s.Used + width <= usable.X);
                if (shelf is not null) return Put(part, turned, shelf, width);
            }

            var bottom = shelves.Count == 0 ? 0 : shelves[^1].Bottom + shelves[^1].Height + spec.Spacing;
            foreach (var (turned, width, height) in Poses(part))
            {
                if (width > usable.X || bottom + height > usable.Y) continue;
                shelves.Add(new(bottom, height));
                return Put(part, turned, shelves[^1], width);
            }

            return false;
        }

        private bool Put(CutPart part, bool turned, Shelf shelf, double width)
        {
            var corner = new Vec2(spec.EdgeMargin + shelf.Used, spec.EdgeMargin + shelf.Bottom);
            var side = part.IsFaceDown ? Affine.Reflection(part.Bounds.Centre, new(0, 1)) : Affine.Identity;
            var turn = turned ? Affine.Rotation(Math.PI / 2, part.Bounds.LowerLeft)
                .Then(Affine.Translation(new(part.Bounds.Height, 0))) : Affine.Identity;
            var size = turned ? new Vec2(part.Bounds.Height, part.Bounds.Width) : new Vec2(part.Bounds.Width, part.Bounds.Height);
            Placements.Add(
                new(part, side.Then(turn).Then(Affine.Translation(corner - part.Bounds.LowerLeft)),
                    Bounds.FromCorners(corner, corner + size)));
            shelf.Used += width + spec.Spacing;
            return true;
        }
    }

    private sealed class Shelf(double bottom, double height)
    {
        public double Bottom => bottom;
        public double Height => height;
        public double Used { get; set; }
    }
}
