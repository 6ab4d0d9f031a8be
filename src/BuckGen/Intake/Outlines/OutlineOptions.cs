using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Settings;

namespace BuckGen.Intake.Outlines;

/// <summary>What to do with a rectangle behind everything else.</summary>
public enum Background
{
    /// <summary>It is left out where its paint shows that it is a background.</summary>
    Auto,

    /// <summary>It is an outline as any other.</summary>
    Keep,

    /// <summary>It is left out.</summary>
    Drop,
}

/// <summary>How an outline file is read.</summary>
/// <param name="Tolerance">The tolerances of the run.</param>
/// <param name="Units">The drawing's unit when the file is wrong or silent about it: mm, cm, m, in or ft; null to trust the
/// file.</param>
/// <param name="Layers">The layers to take, without regard to case; none named takes all of them.</param>
/// <param name="MinLoopWidth">Loops that lie within a strip narrower than this, mm, are left out and reported; 0 to 10 mm, such
/// as the kerf.</param>
public sealed record OutlineOptions(
    Tolerance Tolerance, string? Units = null, ImmutableArray<string> Layers = default, double MinLoopWidth = 0.005)
{
    /// <summary>The default tolerances, the file's own unit, all layers.</summary>
    public static OutlineOptions Default { get; } = new(Tolerance.Default);

    /// <summary>
    /// The kinds of files that are understood, in the order in which they are tried; none named takes those of the library.
    /// </summary>
    public ImmutableArray<IOutlineFormat> Formats { get; init; } = [];

    /// <summary>What to do with a rectangle behind everything else.</summary>
    public Background Background { get; init; }

    /// <summary>
    /// True when shapes that overlap or touch become one. Shapes filled with one colour always do.
    /// </summary>
    public bool Unite { get; init; }

    /// <summary>
    /// The width that the outline gets, 0.1 to 100000 mm, its proportions kept; null to leave that open. With a height it becomes
    /// as large as fits both.
    /// </summary>
    public double? Width { get; init; }

    /// <summary>The height that the outline gets, 0.1 to 100000 mm, its proportions kept; null to leave that open.</summary>
    public double? Height { get; init; }

    /// <summary>How many times as large as drawn the outline gets, 0.000001 to 1000000; null for its own size.</summary>
    public double? Scale { get; init; }

    /// <summary>True when the outline does not get the size in which it is drawn.</summary>
    internal bool IsSized => (Width ?? Height ?? Scale) is not null;

    /// <summary>How a drawing that belongs to the same job is read: at the same scale, with every rectangle in it.</summary>
    /// <param name="scale">How many times as large as drawn the outline of the job is; null where it has its own size.</param>
    internal OutlineOptions ForFurther(double? scale) =>
        this with { Width = null, Height = null, Scale = scale, Background = Background.Keep };

    /// <summary>Checks tolerances and limits against their ranges.</summary>
    /// <exception cref="SpecException">One is out of range, or more than one size is given.</exception>
    internal void Validate()
    {
        OutlineSettings.Width.Require(Width);
        OutlineSettings.Height.Require(Height);
        OutlineSettings.Scale.Require(Scale);
        if (Scale is not null && (Width ?? Height) is not null) throw new SpecException(OutlineSettings.OneSize);
        OutlineSettings.Chord.Require(Tolerance.Chord);
        OutlineSettings.Join.Require(Tolerance.Join);
        OutlineSettings.MinLoopWidth.Require(MinLoopWidth);
    }

    /// <summary>True when a layer is among those to take.</summary>
    public bool Takes(string layer) => Layers.IsDefaultOrEmpty || Layers.Contains(layer, StringComparer.OrdinalIgnoreCase);
}
