using System.Xml.Linq;
using BuckGen.Intake.Outlines;
using ShimSkiaSharp;
using Svg;
using Svg.Model;
using Svg.Model.Services;
using Svg.Skia;

namespace BuckGen.Intake.Svg;

/// <summary>Has the Svg libraries resolve styles, references and transforms of a prepared tree.</summary>
internal static class SvgLibraries
{
    // The libraries walk by recursion; this bears the deepest tree that is let through, whatever thread calls.
    private const int StackBytes = 64 * 1024 * 1024;

    /// <summary>How long a wait for the libraries lasts before a look whether it is to be stopped, ms.</summary>
    private const int PollInterval = 50;

    /// <summary>The resolved scene.</summary>
    /// <remarks>
    /// The libraries can't be stopped: when the caller is, they work on in the background to their end, which the limits on a
    /// file bring near.
    /// </remarks>
    public static SvgSceneDocument Resolve(XDocument tree, string file, CancellationToken cancellation)
    {
        SvgSceneDocument? scene = null;
        Exception? failure = null;
        var worker = new Thread(() =>
        {
            try
            {
                scene = Compile(tree);
            }
            catch (Exception e)
            {
                failure = e;
            }
        }, StackBytes)
        { IsBackground = true };
        worker.Start();
        while (!worker.Join(PollInterval)) cancellation.ThrowIfCancellationRequested();

        // What a library trips over is wrong in the file, whatever the exception is called.
        if (scene is null)
        {
            var reason = Excerpt.Shorten(failure?.Message ?? "no reason given");
            throw new OutlineException($"{file}: the drawing can't be resolved ({reason}); save it as plain SVG.", failure);
        }

        return scene;
    }

    private static SvgSceneDocument? Compile(XDocument tree)
    {
        using var reader = tree.CreateReader();
        if (SvgService.Open(reader) is not { } document) return null;
        document.LoadOptions = new()
        {
            ProcessingMode = SvgProcessingMode.SecureStatic,
            ExternalResources = SvgExternalResourcePolicy.Disabled,
        };
        return SvgSceneRuntime.TryCompile(document, new NoAssets(), DrawAttributes.None, out var scene) ? scene : null;
    }

    /// <summary>Pictures and fonts: there are none, for text and images are taken out before.</summary>
    private sealed class NoAssets : ISvgAssetLoader
    {
        public bool EnableSvgFonts => false;

        public SKImage LoadImage(Stream stream) => throw new NotSupportedException("Pictures are not loaded.");

        public List<TypefaceSpan> FindTypefaces(string? text, SKPaint paintPreferredTypeface) => [];

        public SKFontMetrics GetFontMetrics(SKPaint paint) => default;

        public float MeasureText(string? text, SKPaint paint, ref SKRect bounds) => 0;

        public SKPath? GetTextPath(string? text, SKPaint paint, float x, float y) => null;
    }
}
