using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Settings;

namespace BuckGen.Intake.Outlines;

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

    /// <summary>Checks tolerances and limits against their ranges.</summary>
    /// <exception cref="SpecException">One is out of range.</exception>
    internal void Validate()
    {
        OutlineSettings.Chord.Require(Tolerance.Chord);
        OutlineSettings.Join.Require(Tolerance.Join);
        OutlineSettings.MinLoopWidth.Require(MinLoopWidth);
    }

    /// <summary>True when a layer is among those to take.</summary>
    public bool Takes(string layer) => Layers.IsDefaultOrEmpty || Layers.Contains(layer, StringComparer.OrdinalIgnoreCase);
}
