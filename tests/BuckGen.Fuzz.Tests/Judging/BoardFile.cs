using BuckGen.Cutting.Boards;

namespace BuckGen.Fuzz.Tests.Judging;

/// <summary>A board's file, taken apart: a part's paths end with its outer edge.</summary>
/// <param name="Layout">What was laid out.</param>
/// <param name="Parts">Each part with its paths on the board.</param>
internal sealed record BoardFile(BoardLayout Layout, IReadOnlyList<(Placement Placement, IReadOnlyList<DxfPath> Paths)> Parts)
{
    public static BoardFile Read(BoardLayout layout, IEnumerable<byte> dxf)
    {
        var (parts, paths) = (new List<IReadOnlyList<DxfPath>>(), new List<DxfPath>());
        foreach (var path in DxfText.Read(dxf))
        {
            paths.Add(path);
            if (path.Layer != "CUT_OUTER") continue;
            parts.Add(paths);
            paths = [];
        }

        if (parts.Count != layout.Placements.Length || paths.Count > 0)
            throw new InvalidDataException(
                $"Board {layout.Number} has {parts.Count} outer edges for {layout.Placements.Length} parts, and "
                + $"{paths.Count} paths after them.");
        return new(layout, [.. layout.Placements.Zip(parts)]);
    }
}
