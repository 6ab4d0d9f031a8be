using System.Collections.Immutable;
using BuckGen.Dxf;
using BuckGen.Dxf.Reading;
using BuckGen.Intake.Dxf;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Svg;

namespace BuckGen.Intake.Reading;

/// <summary>The kinds of drawing files that the library reads itself.</summary>
internal static class OutlineFormats
{
    public static ImmutableArray<IOutlineFormat> All { get; } = [new SvgFormat(), new DxfFormat()];

    private sealed class SvgFormat : IOutlineFormat
    {
        public string Name => "SVG";

        public bool Recognises(ReadOnlySpan<byte> content) => ContentKind.Foreign(content) is null && ContentKind.IsSvg(content);

        public Drawing Read(byte[] content, string name, OutlineOptions options) =>
            Read(content, name, options, CancellationToken.None);

        public Drawing Read(byte[] content, string name, OutlineOptions options, CancellationToken cancellation) =>
            SvgReader.Read(content, name, Options(name, options.Units), cancellation);

        /// <summary>An SVG may leave only its user unit open, the pixel; named lengths in it stay what they are.</summary>
        private static SvgReadOptions Options(string name, string? unit)
        {
            if (unit is null) return SvgReadOptions.Default;
            var pixelsPerInch = 25.4 / DrawingUnit.MillimetresIn(unit);
            return pixelsPerInch >= 1
                ? SvgReadOptions.Default with { PixelsPerInch = pixelsPerInch }
                : throw new OutlineException($"{name}: the user unit of an SVG can be taken as mm, cm or in, not as {unit}");
        }
    }

    private sealed class DxfFormat : IOutlineFormat
    {
        public string Name => "DXF";

        public bool Recognises(ReadOnlySpan<byte> content) => ContentKind.Foreign(content) is null && !ContentKind.IsSvg(content);

        public Drawing Read(byte[] content, string name, OutlineOptions options) =>
            Read(content, name, options, CancellationToken.None);

        public Drawing Read(byte[] content, string name, OutlineOptions options, CancellationToken cancellation)
        {
            try
            {
                return DxfOutline.Read(DxfReader.Read(content, cancellation: cancellation), name, options, cancellation);
            }
            catch (DxfException e)
            {
                throw new OutlineException($"{name}: {FirstOf(e)}", e);
            }
        }

        private static string FirstOf(DxfException e) =>
            e.Faults.Length == 1 ? e.Faults[0].ToString()
                : $"{e.Faults[0]} (and {CountText.Format(e.Faults.Length - 1, "more fault")})";
    }
}
