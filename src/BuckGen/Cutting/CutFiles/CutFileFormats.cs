using System.Collections.Immutable;
using BuckGen.Cutting.CutPaths;
using BuckGen.Dxf;

namespace BuckGen.Cutting.CutFiles;

/// <summary>The kinds of cut files that the library writes itself.</summary>
internal static class CutFileFormats
{
    /// <summary>DXF in one of its forms.</summary>
    public static ICutFileFormat Dxf(DxfVersion version) => new DxfFormat(version);

    /// <summary>SVG at full size.</summary>
    public static ICutFileFormat Svg { get; } = new SvgFormat();

    private sealed class DxfFormat(DxfVersion version) : ICutFileFormat
    {
        public string Name => "DXF";

        public string Extension => ".dxf";

        public ImmutableArray<byte> Write(CutDrawing drawing) => DxfCutFile.Write(drawing, version);
    }

    private sealed class SvgFormat : ICutFileFormat
    {
        public string Name => "SVG";

        public string Extension => ".svg";

        public ImmutableArray<byte> Write(CutDrawing drawing) => SvgCutFile.Write(drawing);
    }
}
