using BuckGen.Design.Bucks;
using BuckGen.Findings;

namespace BuckGen.Design.Checks;

/// <summary>Tells when the former does not lift the whole stack up to the sheet, base and plenum included.</summary>
internal static class LiftFinding
{
    /// <summary>The finding; null when the travel is enough or not given.</summary>
    public static Finding? Find(DesignView design)
    {
        if (design.Former.Travel is not { } travel || design.Height <= travel) return null;
        var missing = design.Height - travel;
        var plates = design.Layers.Where(l => l.Role != LayerRole.Wall).ToArray();
        var under = plates.Length == 0 ? ""
            : FormattableString.Invariant($" with {plates.Sum(Thickness):0.#} mm of {Names(plates)}");
        return new("taller-than-travel", Severity.Error,
            FormattableString.Invariant($"The buck is {design.Height:0.#} mm high{under}; the former lifts it {travel:0.#} mm, ")
                + FormattableString.Invariant($"{missing:0.#} mm too little."),
            Remedy(plates, missing))
        {
            Height = design.Height,
            Value = design.Height,
            Limit = travel,
        };
    }

    /// <summary>The plates are left out only where that is enough: the plenum alone, or all of them.</summary>
    private static string Remedy(LayerBlank[] plates, double missing)
    {
        var shallower = FormattableString.Invariant($"ake the part {missing:0.#} mm shallower");
        var plenum = plates.Where(l => l.Role == LayerRole.Plenum).ToArray();
        foreach (var some in (LayerBlank[][])[plenum, plates])
            if (some.Length > 0 && some.Sum(Thickness) >= missing)
                return FormattableString.Invariant($"Leave out the {Names(some)} ({some.Sum(Thickness):0.#} mm), or ")
                    + $"m{shallower}.";
        return "M" + shallower + ", or use a former that lifts farther.";
    }

    private static string Names(LayerBlank[] plates) => string.Join(" and ",
        plates.Select(l => l.Role == LayerRole.Plenum ? "plenum" : "base").Distinct().Order(StringComparer.Ordinal));

    private static double Thickness(LayerBlank layer) => layer.Top - layer.Bottom;
}
