using System.Collections.Immutable;
using System.Globalization;
using BuckGen.Design.Bucks;
using BuckGen.Findings;
using BuckGen.Geometry;

namespace BuckGen.Design.Grouping;

/// <summary>What to know of a sign in several bucks.</summary>
internal static class GroupFindings
{
    /// <summary>A unit that no frame holds.</summary>
    public static Finding TooLarge(Bounds formed, double missing, RectangleSize frame) =>
        new("island-larger-than-frame", Severity.Error,
            FormattableString.Invariant($"The island of {formed.Width:0.#} x {formed.Height:0.#} mm at x = ")
                + FormattableString.Invariant($"{formed.MinX:0.#} to {formed.MaxX:0.#} mm does not go through the frame of ")
                + FormattableString.Invariant($"{frame.Width:0.#} x {frame.Height:0.#} mm with its base: {missing:0.#} mm are ")
                + "missing.",
            "Use a larger former, a smaller base margin, or draw this island smaller or in two.")
        {
            Place = formed.Centre,
            Value = missing,
            Limit = 0,
        };

    /// <summary>All goes through one frame.</summary>
    public static Finding OneIsEnough() => new("one-buck-is-enough", Severity.Note,
        "The whole sign fits the frame: it is made with one buck.", "Leave the table [groups] out.");

    /// <summary>How the sheets of neighbours meet.</summary>
    /// <param name="pieces">Outside of every formed piece, by its buck.</param>
    public static Finding? Neighbours(ImmutableArray<Region> pieces)
    {
        var near = Enumerable.Range(0, pieces.Length).SelectMany(a => Enumerable.Range(a + 1, pieces.Length - a - 1)
            .Select(b => (First: a, Second: b, Room: Between(pieces[a], pieces[b])))).OrderBy(p => p.Room).FirstOrDefault();
        return pieces.Length < 2 ? null : new("sheets-meet", Severity.Note,
            FormattableString.Invariant($"The nearest formed pieces of two bucks, {near.First + 1} and {near.Second + 1}, stand ")
                + FormattableString.Invariant($"{near.Room:0.#} mm apart in the sign."),
            FormattableString.Invariant($"Where the sheet stays on them, cut it off {near.Room / 2:0.#} mm beside the pieces, ")
                + "so that the sheets of neighbours do not lie on each other.")
        {
            Value = near.Room,
        };
    }

    /// <summary>Findings of the bucks as findings of the whole: each names the bucks it is about.</summary>
    public static IEnumerable<Finding> Named(IEnumerable<(int Number, Finding Finding)> found, int bucks) =>
        found.GroupBy(f => (f.Finding.Id, f.Finding.Message, f.Finding.Remedy, f.Finding.Silenced))
            .Select(g => (Numbers: g.Select(f => f.Number).Distinct().ToArray(), g.First().Finding))
            // That a silenced finding does not occur is worth a word only when it occurs in none.
            .Where(f => f.Finding.Id != Silencing.IdleId || f.Numbers.Length == bucks)
            .Select(f => f.Finding with { Message = $"{Bucks(f.Numbers)}: {f.Finding.Message}" });

    /// <summary>"Buck 2", "Bucks 1, 2 and 4".</summary>
    private static string Bucks(int[] numbers)
    {
        string[] words = [.. numbers.Select(n => n.ToString(CultureInfo.InvariantCulture))];
        return words.Length == 1 ? $"Buck {words[0]}" : $"Bucks {string.Join(", ", words[..^1])} and {words[^1]}";
    }

    private static double Between(Region a, Region b)
    {
        var edge = new Geometry.Offsetting.SegmentIndex(b.Segments);
        var reach = a.Bounds.With(b.Bounds).Diagonal;
        return a.Segments.Min(s => Enumerable.Range(0, 5).Min(i => edge.DistanceWithin(s.PointAt(i / 4.0), reach)));
    }
}
