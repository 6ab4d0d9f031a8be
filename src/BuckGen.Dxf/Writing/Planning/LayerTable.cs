using System.Collections.Immutable;

namespace BuckGen.Dxf.Writing.Planning;

/// <summary>The layers a file needs: 0, those of the table, and those that only entities name.</summary>
internal static class LayerTable
{
    private const int MaxNameLength = 31;
    private const string Always = "0";

    public static ImmutableArray<DxfLayer> Complete(DxfDrawing drawing)
    {
        var used = drawing.Entities.Select(entity => new DxfLayer(entity.Layer));
        var layers = drawing.Layers.Concat(used).Prepend(drawing.FindLayer(Always) ?? new(Always))
            .DistinctBy(layer => layer.Name)
            .ToImmutableArray();
        foreach (var layer in layers)
            Check(layer);
        return layers;
    }

    private static void Check(DxfLayer layer)
    {
        if (layer.Name.Length is 0 or > MaxNameLength || !layer.Name.All(IsAllowed))
        {
            throw new DxfException(
                $"the layer name \"{layer.Name}\" is not safe everywhere; use 1 to {MaxNameLength} characters of A-Z 0-9 $ _ -");
        }

        if (layer.Colour is < 1 or > 255)
            throw new DxfException($"the colour of layer {layer.Name} is {layer.Colour}; it must be from 1 to 255");
    }

    private static bool IsAllowed(char c) => char.IsAsciiLetterUpper(c) || char.IsAsciiDigit(c) || c is '$' or '_' or '-';
}
