using System.Globalization;
using BuckGen.Cutting.Boards;
using BuckGen.Design.Bucks;

namespace BuckGen.Cutting.CutFiles;

/// <summary>Where cut files lie below the output folder.</summary>
internal static class CutFilePaths
{
    /// <summary>A stock's share of a file name is cut off here; the board's number keeps names apart.</summary>
    private const int MaxNameLength = 40;

    /// <summary>A layer's DXF: "layers/layer-01.dxf".</summary>
    public static string Layer(int number) => string.Create(CultureInfo.InvariantCulture, $"layers/layer-{number:00}.dxf");

    /// <summary>The DXF of a layer of a jig or panel: "jig/ring-01.dxf", "panel/panel-01.dxf".</summary>
    public static string Accessory(Layer layer)
    {
        ArgumentNullException.ThrowIfNull(layer);
        return string.Create(CultureInfo.InvariantCulture,
            $"{(layer.Role == LayerRole.Panel ? "panel" : "jig")}/{layer.Name.ToLowerInvariant()}-{layer.Number:00}.dxf");
    }

    /// <summary>A board's DXF: "cut/board-01-mdf-12.dxf".</summary>
    public static string Board(BoardLayout board)
    {
        ArgumentNullException.ThrowIfNull(board);
        return string.Create(CultureInfo.InvariantCulture, $"cut/board-{board.Number:00}-{FileName(board.Stock.Name)}.dxf");
    }

    /// <summary>Lower-case letters and digits of a name, joined by dashes: "MDF 12 mm" becomes "mdf-12-mm".</summary>
    private static string FileName(string name)
    {
        var kept = name.Select(c => char.IsAsciiLetterOrDigit(c) || c == '.' ? char.ToLowerInvariant(c) : '-').ToArray();
        var parts = new string(kept).Split('-', StringSplitOptions.RemoveEmptyEntries);
        var joined = string.Join('-', parts);
        return parts.Length == 0 ? "stock" : joined[..Math.Min(joined.Length, MaxNameLength)];
    }
}
