using BuckGen.Design.Bucks;

namespace BuckGen.Design.Venting;

/// <summary>What the vents do to each layer: a narrow hole in the surface layer, a relief bore in every layer under it.</summary>
internal static class LayerVents
{
    /// <summary>The holes of each layer, lowest first. A plenum gets none: its channels lie under the bores.</summary>
    public static IReadOnlyList<VentHole>[] ByLayer(IReadOnlyList<LayerBlank> layers, VentDesign? design) =>
    [
        .. layers.Select(layer => (IReadOnlyList<VentHole>)(design is null || layer.Role == LayerRole.Plenum
            ? []
            : [.. design.Vents.Where(v => v.Layer >= layer.Number).Select(v => v.Layer == layer.Number
                ? new VentHole(v.Centre, v.Diameter, false)
                : new VentHole(v.Centre, design.Spec.BoreDiameter, true))])),
    ];
}
