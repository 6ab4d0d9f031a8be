namespace BuckGen.Geometry;

/// <summary>An order of rectangles in which neighbours lie near each other.</summary>
internal static class HilbertOrder
{
    private const int Bits = 16;

    /// <summary>The numbers of the rectangles as Hilbert's curve passes through their middles.</summary>
    public static int[] FromBoxes(ReadOnlySpan<Bounds> items)
    {
        var all = Bounds.Nothing;
        foreach (var item in items) all = all.With(item.Centre);
        var scale = ((1 << Bits) - 1) / Math.Max(Math.Max(all.Width, all.Height), double.Epsilon);
        if (!double.IsFinite(scale)) scale = 0;
        var (keys, numbers) = (new uint[items.Length], new int[items.Length]);
        for (var i = 0; i < items.Length; i++)
        {
            var middle = items[i].Centre;
            keys[i] = Place((uint)((middle.X - all.MinX) * scale), (uint)((middle.Y - all.MinY) * scale));
            numbers[i] = i;
        }

        Array.Sort(keys, numbers);
        return numbers;
    }

    /// <summary>How far along the curve a square lies.</summary>
    private static uint Place(uint x, uint y)
    {
        var place = 0u;
        for (var side = 1u << (Bits - 1); side > 0; side >>= 1)
        {
            var (right, upper) = ((x & side) > 0, (y & side) > 0);
            place += side * side * ((right ? 3u : 0u) ^ (upper ? 1u : 0u));
            if (upper) continue;
            if (right) (x, y) = (side - 1 - (x & (side - 1)), side - 1 - (y & (side - 1)));
            (x, y) = (y, x);
        }

        return place;
    }
}
