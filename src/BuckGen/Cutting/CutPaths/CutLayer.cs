namespace BuckGen.Cutting.CutPaths;

/// <summary>What a machine does along a path. Each has a layer of its own in a cut file.</summary>
public enum CutLayer
{
    /// <summary>Drawn on the surface, not cut through.</summary>
    Mark,

    /// <summary>A vent or a relief bore.</summary>
    Vent,

    /// <summary>A dowel hole.</summary>
    Dowel,

    /// <summary>Cut through; the waste is inside.</summary>
    CutInner,

    /// <summary>Cut through; the waste is outside. Cut last, since the part is loose after it.</summary>
    CutOuter,
}

/// <summary>Names and colours of the layers in cut files.</summary>
internal static class CutLayers
{
    /// <summary>The layer's name in a cut file.</summary>
    public static string Name(this CutLayer layer) => layer switch
    {
        CutLayer.Mark => "MARK",
        CutLayer.Vent => "VENT",
        CutLayer.Dowel => "DOWEL",
        CutLayer.CutInner => "CUT_INNER",
        CutLayer.CutOuter => "CUT_OUTER",
        _ => throw new ArgumentOutOfRangeException(nameof(layer), layer, "No such layer."),
    };

    /// <summary>Colour number of the layer in DXF: they differ in grey as well.</summary>
    public static int ColourNumber(this CutLayer layer) => layer switch
    {
        CutLayer.Mark => 42,
        CutLayer.Vent => 202,
        CutLayer.Dowel => 112,
        CutLayer.CutInner => 152,
        CutLayer.CutOuter => 7,
        _ => throw new ArgumentOutOfRangeException(nameof(layer), layer, "No such layer."),
    };

    /// <summary>Stroke colour of the layer in SVG.</summary>
    public static string StrokeColour(this CutLayer layer) => layer switch
    {
        CutLayer.Mark => "#b07a2a",
        CutLayer.Vent => "#8a3ffc",
        CutLayer.Dowel => "#007d79",
        CutLayer.CutInner => "#1f5fbf",
        CutLayer.CutOuter => "#161616",
        _ => throw new ArgumentOutOfRangeException(nameof(layer), layer, "No such layer."),
    };
}
