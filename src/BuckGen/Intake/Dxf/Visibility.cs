using BuckGen.Dxf;
using BuckGen.Dxf.Entities;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Dxf;

/// <summary>Decides which entities of a drawing are hidden, and why.</summary>
internal sealed class Visibility(DxfDrawing drawing, OutlineOptions options)
{
    private readonly ILookup<string, DxfLayer> layers = drawing.Layers.ToLookup(l => l.Name, StringComparer.OrdinalIgnoreCase);

    /// <summary>Why an entity is left out; null when it is to be seen.</summary>
    /// <param name="entity">The entity.</param>
    /// <param name="layer">The layer it counts to.</param>
    public string? ReasonHidden(DxfEntity entity, string layer)
    {
        if (entity.PaperSpace) return "paper space";
        if (entity.Invisible) return "invisible";
        if (string.Equals(layer, "Defpoints", StringComparison.OrdinalIgnoreCase)) return "never plotted";
        if (layers[layer].FirstOrDefault() is { } row)
        {
            if (row.Frozen) return "frozen";
            // A block on a layer that is off still shows what it has on other layers.
            if (row.Off && entity is not DxfInsert) return "off";
        }

        return entity is DxfInsert || options.Takes(layer) ? null : "layer not asked for";
    }
}
