using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using BuckGen.Geometry;

namespace BuckGen.Output.Pictures.Png;

/// <summary>
/// Pixels, and areas painted on them. A pixel is covered as far as eight lines through it say; each of them is measured exactly.
/// Only plain arithmetic is used, in one order: the same areas give the same pixels on every machine.
/// </summary>
internal sealed class Raster
{
    /// <summary>For work done once a run: compiled well before the first turn, not after the thirtieth.</summary>
    public const MethodImplOptions AtOnce = MethodImplOptions.AggressiveOptimization;

    private const int Lines = 8, Channels = 3;

    private const int None = -1;

    private readonly double[] change;

    /// <summary>All crossings of an area, chained line by line; then those of one line, in order.</summary>
    private readonly List<Crossing> crossings = [], ordered = [];

    /// <summary>The last crossing that was found on each line.</summary>
    private readonly int[] last;

    /// <summary>White pixels.</summary>
    public Raster(int width, int height)
    {
        (Width, Height, Pixels) = (width, height, new byte[width * height * Channels]);
        Array.Fill(Pixels, byte.MaxValue);
        change = new double[width + 2];
        last = new int[height * Lines];
    }

    public int Width { get; }

    public int Height { get; }

    /// <summary>Red, green and blue of each pixel, row by row from the top.</summary>
    public byte[] Pixels { get; }

    /// <summary>Paints what loops enclose.</summary>
    /// <param name="loops">The corners of each, in pixels from the upper left.</param>
    /// <param name="colour">As "#161616".</param>
    /// <param name="evenOdd">True where what lies within two loops is outside; false where it is inside.</param>
    /// <param name="window">What may be painted on.</param>
    [MethodImpl(AtOnce)]
    public void Fill(IEnumerable<IReadOnlyList<Vec2>> loops, string colour, bool evenOdd, Bounds window)
    {
        IReadOnlyList<Vec2>[] all = [.. loops];
        var (high, low) = Heights(all);
        var (top, bottom) = (LineAt(Math.Max(high, window.MinY)), LineAt(Math.Min(low, window.MaxY)));
        if (!Find(all, top, bottom)) return;
        var ink = Convert.FromHexString(colour.AsSpan(1));
        var (left, right) = (Math.Clamp(window.MinX, 0, Width), Math.Clamp(window.MaxX, 0, Width));
        for (var row = top / Lines; row * Lines < bottom; row++)
        {
            var (from, to) = (Width, 0);
            for (var line = Math.Max(top, row * Lines); line < Math.Min(bottom, (row + 1) * Lines); line++)
            {
                var crossings = InOrder(line);
                var turns = 0;
                for (var i = 0; i < crossings.Length; i++)
                {
                    if (evenOdd ? (turns & 1) != 0 : turns != 0)
                    {
                        var (a, b) = (Math.Clamp(crossings[i - 1].X, left, right), Math.Clamp(crossings[i].X, left, right));
                        Cover(a, 1.0 / Lines);
                        Cover(b, -1.0 / Lines);
                        (from, to) = (Math.Min(from, (int)a), Math.Max(to, (int)b + 1));
                    }

                    turns += crossings[i].Turn;
                }
            }

            if (from < to) Paint(row, from, Math.Min(to, Width - 1), ink);
        }
    }

    private readonly record struct Crossing(double X, int Turn, int Next) : IComparable<Crossing>
    {
        public int CompareTo(Crossing other) => X != other.X ? X.CompareTo(other.X) : Turn.CompareTo(other.Turn);
    }

    private static (double Top, double Bottom) Heights(IReadOnlyList<IReadOnlyList<Vec2>> loops)
    {
        var (top, bottom) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var loop in loops)
            for (var i = 0; i < loop.Count; i++) (top, bottom) = (Math.Min(top, loop[i].Y), Math.Max(bottom, loop[i].Y));
        return (Math.Floor(top), Math.Ceiling(bottom));
    }

    private int LineAt(double y) => (int)Math.Round(Math.Clamp(y, 0, Height) * Lines);

    /// <summary>Finds where the loops cross the lines; false where they cross none.</summary>
    [MethodImpl(AtOnce)]
    private bool Find(IReadOnlyList<IReadOnlyList<Vec2>> loops, int top, int bottom)
    {
        if (top >= bottom) return false;
        Array.Fill(last, None, top, bottom - top);
        crossings.Clear();
        foreach (var loop in loops)
            for (var i = 0; i < loop.Count; i++)
            {
                var (a, b) = (loop[i], loop[i + 1 < loop.Count ? i + 1 : 0]);
                var turn = b.Y > a.Y ? 1 : -1;
                if (turn < 0) (a, b) = (b, a);
                // Each line runs through the middle of its eighth.
                var first = Math.Max(top, (int)Math.Ceiling(Math.Clamp(a.Y * Lines - 0.5, -1, Height * Lines)));
                var end = Math.Min(bottom, (int)Math.Ceiling(Math.Clamp(b.Y * Lines - 0.5, -1, Height * Lines)));
                for (var line = first; line < end; line++)
                {
                    crossings.Add(new(a.X + (b.X - a.X) * (((line + 0.5) / Lines - a.Y) / (b.Y - a.Y)), turn, last[line]));
                    last[line] = crossings.Count - 1;
                }
            }

        return crossings.Count > 0;
    }

    /// <summary>The crossings of a line from the left.</summary>
    [MethodImpl(AtOnce)]
    private ReadOnlySpan<Crossing> InOrder(int line)
    {
        ordered.Clear();
        for (var k = last[line]; k != None; k = crossings[k].Next) ordered.Add(crossings[k]);
        var found = CollectionsMarshal.AsSpan(ordered);
        if (found.Length == 2 && found[0].CompareTo(found[1]) > 0) (found[0], found[1]) = (found[1], found[0]);
        else if (found.Length > 2) found.Sort();
        return found;
    }

    /// <summary>From here to the right, the coverage rises by this amount.</summary>
    private void Cover(double x, double much)
    {
        var (whole, part) = ((int)x, x - (int)x);
        change[whole] += much * (1 - part);
        change[whole + 1] += much * part;
    }

    [MethodImpl(AtOnce)]
    private void Paint(int row, int from, int to, byte[] colour)
    {
        var cover = 0.0;
        for (var x = from; x <= to; x++)
        {
            cover += change[x];
            change[x] = 0;
            if (cover < 1e-6) continue;
            var place = (row * Width + x) * Channels;
            if (cover > 1 - 1e-6) (Pixels[place], Pixels[place + 1], Pixels[place + 2]) = (colour[0], colour[1], colour[2]);
            else for (var c = 0; c < Channels; c++)
                Pixels[place + c] = (byte)Math.Round(Pixels[place + c] + (colour[c] - Pixels[place + c]) * cover);
        }

        change[to + 1] = 0;
    }
}
