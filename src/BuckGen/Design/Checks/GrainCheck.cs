using BuckGen.Design.Bucks;
using BuckGen.Findings;

namespace BuckGen.Design.Checks;

/// <summary>Does the grain of plywood show through a thin sheet?</summary>
internal sealed class GrainCheck : IDesignCheck
{
    public string Name => "grain";

    private static readonly string[] Plywood = ["ply", "plywood", "birchply"];

    public IEnumerable<Finding> Run(DesignView design)
    {
        var thin = design.Checks.GrainGauge;
        if (design.Sheet is not { } sheet || sheet.Gauge > thin) yield break;
        var walls = design.Layers.Where(l => l.Role == LayerRole.Wall).ToArray();
        var face = design.IsMale ? walls[^1] : design.Layers.LastOrDefault(l => l.Role == LayerRole.Base) ?? walls[0];
        if (!(face.Stock.Material?.GrainShows
            ?? face.Stock.MaterialWords.Any(w => Plywood.Contains(w, StringComparer.OrdinalIgnoreCase)))) yield break;
        yield return new("grain-telegraphs", Severity.Note,
            FormattableString.Invariant(
                $"The face of the buck is {face.Stock.Name}; its grain and core gaps show through a clear sheet of ")
                + FormattableString.Invariant($"{sheet.Gauge:0.##} mm."),
            "Use MDF for the face, or fill and sand it.")
        {
            Height = face.Top,
            Value = sheet.Gauge,
            Limit = thin,
            Source = "common practice, no source",
        };
    }
}
