using System.Collections.Immutable;
using System.Globalization;
using BuckGen.Design.Bucks;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Design.Trimming;

/// <summary>Layers of jigs and panels: pieces with holes and a name, without draft.</summary>
public static class PlainLayers
{
    /// <summary>A layer with its pieces lettered "RING1", or "RING1A", "RING1B" when there are several.</summary>
    /// <param name="number">Number within its stack.</param>
    /// <param name="role">What it is for.</param>
    /// <param name="name">What stands on it before the number, in capital letters A to Z.</param>
    /// <param name="stock">The stock.</param>
    /// <param name="bottom">Height of its lower face, mm.</param>
    /// <param name="wood">Its pieces.</param>
    /// <param name="holes">Round holes through it.</param>
    /// <param name="letterHeight">Wanted height of the lettering, mm; 0 for none.</param>
    /// <param name="glueUp">Lines on it where something is glued.</param>
    /// <param name="markedOnBack">True when its face shows: the lettering stands on the back and says so.</param>
    public static Layer Create(
        int number, LayerRole role, string name, Stock stock, double bottom, Region wood, IReadOnlyList<DowelHole> holes,
        double letterHeight,
        ImmutableArray<Loop>? glueUp = null, bool markedOnBack = false)
    {
        ArgumentNullException.ThrowIfNull(stock);
        ArgumentNullException.ThrowIfNull(wood);
        ArgumentNullException.ThrowIfNull(holes);
        var lines = glueUp ?? [];
        var parts = wood.Islands.OrderBy(i => Math.Round(i.Outer.Bounds.MinX, 4)).ThenBy(i => Math.Round(i.Outer.Bounds.MinY, 4))
            .Select((piece, i) => Part(piece, wood.Islands.Length == 1 ? name : name + IslandLetters.Letter(i)));
        return new(number, role, stock, bottom, bottom + stock.Thickness, [.. parts], [], lines)
        {
            Name = name,
            MarkedOnBack = markedOnBack,
        };

        LayerPart Part(Island piece, string letter)
        {
            ImmutableArray<DowelHole> through = [.. holes.Where(h => piece.Contains(h.Centre))];
            var obstacles =
                new SegmentIndex(
                    [.. piece.Loops.Concat(lines).SelectMany(l => l.Segments),
                        .. through.SelectMany(h => Loop.Circle(h.Centre, h.Diameter / 2).Segments)]);
            var text = letter + number.ToString(CultureInfo.InvariantCulture);
            var label = letterHeight == 0 ? null
                : markedOnBack ? (Place(text + " BACK") ?? Place(text))?.FromBack()
                : Place(text);
            return new(letter, piece, through, [], label);

            Label? Place(string words) => LabelPlacement.Place(words, letterHeight, piece, obstacles, Region.Empty);
        }
    }
}
