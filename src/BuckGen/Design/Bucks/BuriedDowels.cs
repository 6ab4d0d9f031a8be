using BuckGen.Geometry;

namespace BuckGen.Design.Bucks;

/// <summary>
/// Dowels that end below what the sheet touches. A laser cuts no blind holes, so the piece on top gets none: it is glued on by
/// the glue-up line of the layer below.
/// </summary>
internal static class BuriedDowels
{
    /// <summary>Takes out every hole that opens where nothing lies on it, and those that then join no two layers.</summary>
    /// <param name="holes">The holes of each piece of each layer, lowest first.</param>
    /// <param name="covers">What lies on each layer.</param>
    public static void Keep(List<DowelHole>[][] holes, LayerCover[] covers)
    {
        for (var n = 0; n < holes.Length; n++)
            foreach (var piece in holes[n]) piece.RemoveAll(h => !covers[n].Hides(h.Centre, h.Diameter / 2));
        HashSet<Vec2>[] places = [.. holes.Select(l => l.SelectMany(p => p).Select(h => h.Centre).ToHashSet())];
        for (var n = 0; n < holes.Length; n++)
            foreach (var piece in holes[n]) piece.RemoveAll(h => !IsAt(n - 1, h.Centre) && !IsAt(n + 1, h.Centre));

        bool IsAt(int layer, Vec2 place) => layer >= 0 && layer < places.Length && places[layer].Contains(place);
    }
}
