using System.Collections.Frozen;
using BuckGen.Design.Bucks;
using BuckGen.Findings;
using BuckGen.Intake.Catalogs;

namespace BuckGen.Cutting.Boards;

/// <summary>
/// Decides whether a laser may cut this stock, from the words of its name and from the catalog where the stock comes from there.
/// </summary>
internal static class LaserCheck
{
    /// <summary>
    /// Why a material must never be cut by laser. Sources: lists of prohibited materials of university workshops; PVC gives off
    /// hydrogen chloride, ABS hydrogen cyanide; polycarbonate chars and flames; the rest melt, drip and burn.
    /// </summary>
    private static readonly FrozenDictionary<string, string> Never = new Dictionary<string, string>
    {
        ["pvc"] = "it gives off hydrogen chloride, which harms lungs and machine",
        ["vinyl"] = "it gives off hydrogen chloride, which harms lungs and machine",
        ["leatherette"] = "it gives off chlorinated fumes",
        ["abs"] = "it burns and gives off hydrogen cyanide",
        ["pc"] = "it chars and flames",
        ["polycarbonate"] = "it chars and flames",
        ["petg"] = "it melts and burns",
        ["hips"] = "it melts, drips and burns",
        ["polystyrene"] = "it melts, drips and burns",
        ["styrene"] = "it melts, drips and burns",
        ["hdpe"] = "it melts, drips and burns",
        ["polyethylene"] = "it melts, drips and burns",
        ["pp"] = "it melts and burns",
        ["polypropylene"] = "it melts and burns",
        ["foam"] = "foams catch fire",
        ["fibreglass"] = "its resin and dust are harmful",
        ["fiberglass"] = "its resin and dust are harmful",
        ["carbon"] = "its resin and dust are harmful",
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    /// <summary>Words of wood, paper and acrylic, which workshops cut with good exhaust.</summary>
    private static readonly FrozenSet<string> Usual = new[]
    {
        "mdf", "hdf", "ply", "plywood", "wood", "board", "hardboard", "chipboard", "birch", "poplar", "oak", "beech", "pine",
        "spruce", "maple", "walnut", "cherry",
        "lime", "basswood", "balsa", "bamboo", "cork", "card", "cardboard", "paper", "acrylic", "pmma",
    }.ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    /// <summary>The finding on a stock; null when a laser may cut it, or when the material is not given.</summary>
    public static Finding? Run(Stock stock, CuttingSpec spec)
    {
        if (spec.Machine != Machine.Laser) return null;
        string[] words = [.. stock.MaterialWords];
        if (words.FirstOrDefault(Never.ContainsKey) is { } bad)
            return new("laser-never", Severity.Error,
                $"\"{stock.Name}\" must never be cut with a laser: {Never[bad]}.",
                "Cut it with a router or a saw, or use another stock.")
            {
                Source = "lists of prohibited materials of university workshops",
            };
        if (stock.Material is { } material)
            return OfCatalog(stock, material);
        return words.Length == 0 || words.Any(Usual.Contains)
            ? null
            : new("laser-unknown", Severity.Error,
                $"It is not known what \"{stock.Name}\" gives off in a laser.",
                "Say what it is made of, such as \"MDF 6\" or \"birch plywood 4\", and ask its supplier for a data sheet; "
                + "if it may hold chlorine, never cut it.")
            {
                Source = "common practice, no source",
            };
    }

    /// <summary>What the catalog says about it; no entry there does not mean that it may be cut.</summary>
    private static Finding? OfCatalog(Stock stock, CatalogStock material) => material.Laser switch
    {
        Suitability.Yes => null,
        Suitability.No => new("laser-never", Severity.Error,
            $"\"{stock.Name}\" must never be cut with a laser{Reason(material)}.",
            "Cut it with a router or a saw, or use another stock.")
        {
            Source = Sources(material),
        },
        _ => new("laser-ask", Severity.Warning,
            $"Whether a laser may cut \"{stock.Name}\" depends on its make{Reason(material)}.",
            "Ask the supplier of the board and the maker of the laser first.")
        {
            Source = Sources(material),
        },
    };

    private static string Reason(CatalogStock material) =>
        material.Find("laser-reason")?.Text is { } reason ? $": {reason.TrimEnd('.')}" : "";

    private static string Sources(CatalogStock material) =>
        material.Find("laser") is { } figure ? string.Join("; ", figure.Sources) : "common practice, no source";
}
