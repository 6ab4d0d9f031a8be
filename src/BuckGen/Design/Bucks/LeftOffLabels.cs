using BuckGen.Findings;
using BuckGen.Intake.Outlines;

namespace BuckGen.Design.Bucks;

/// <summary>Reports all lettering that is left off in one finding: the feet of a base alone may be thousands.</summary>
internal static class LeftOffLabels
{
    private const int MaxNamed = 12;

    /// <summary>One finding at the first piece that its lettering does not fit on; none when all lettering fits.</summary>
    /// <param name="layers">The layers with their lettering.</param>
    public static IEnumerable<Finding> Find(IReadOnlyCollection<Layer> layers)
    {
        var bare = layers.SelectMany(l => l.Parts.Where(p => p is { Label: null, IsTop: false })
            .Select(p => (Name: l.NameOf(p), p.Shape, l.Top))).ToArray();
        foreach (var finding in OnTop(layers)) yield return finding;
        if (bare.Length == 0) yield break;
        var smallest = LabelPlacement.MinHeight;
        yield return new("label-no-room", Severity.Note,
            bare.Length == 1
                ? FormattableString.Invariant(
                    $"The lettering {bare[0].Name} does not fit on its piece, even {smallest} mm high; it is left off.")
                : FormattableString.Invariant(
                    $"The lettering of {bare.Length} pieces does not fit on them, even {smallest} mm high; it is left off: ")
                    + FormattableString.Invariant($"{Excerpt.ShortenList([.. bare.Select(b => b.Name)], MaxNamed)}."),
            "Pencil the number on the piece when it comes off the machine.")
        {
            Place = bare[0].Shape.Outer.Bounds.Centre,
            Height = bare[0].Top,
        };
    }

    /// <summary>Pieces that the sheet comes down on. One alone is known by having no lettering.</summary>
    private static IEnumerable<Finding> OnTop(IEnumerable<Layer> layers)
    {
        var tops = layers.SelectMany(l => l.Parts.Where(p => p is { Label: null, IsTop: true })
            .Select(p => (Name: l.NameOf(p), p.Shape, l.Top))).ToArray();
        if (tops.Length < 2) yield break;
        yield return new("label-on-face", Severity.Note,
            FormattableString.Invariant($"{tops.Length} pieces carry no lettering, for the sheet comes down on them: ")
                + $"{Excerpt.ShortenList([.. tops.Select(t => t.Name)], MaxNamed)}.",
            "Pencil the number on the underside when a piece comes off the machine.")
        {
            Place = tops[0].Shape.Outer.Bounds.Centre,
            Height = tops[0].Top,
            Source = "common practice, no source",
        };
    }
}
