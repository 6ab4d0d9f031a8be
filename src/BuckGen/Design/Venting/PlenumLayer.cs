using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Physics.Plates;
using BuckGen.Settings;

namespace BuckGen.Design.Venting;

/// <summary>Shapes the plenum once the bores above it are known.</summary>
internal static class PlenumLayer
{
    /// <summary>Feet stand no farther apart than this, mm, however stiff the base (common practice, no source).</summary>
    private const double MaxPitch = 120;

    /// <summary>Thinnest plywood whose strength is known, mm.</summary>
    private const double MinPlywoodThickness = 3.5;

    /// <summary>
    /// Maximum distance of two feet under the base, mm, so that it neither bows nor breaks; null when no distance will do.
    /// </summary>
    public static double? FeetPitch(BuckSpec buck)
    {
        var thickness = Thickness(buck);
        // A round foot bears like a square one of the same area.
        var side = buck.Plenum!.Width * Math.Sqrt(Math.PI) / 2;
        var pitches = Boards(thickness).Select(b => SupportSpacing.MaxFootSpacing(side, thickness, b, buck.Plenum.MaxBow)).ToArray();
        return Array.TrueForAll(pitches, p => p is not null) ? Math.Min(pitches.Min()!.Value, MaxPitch) : null;
    }

    /// <summary>Maximum opening the base spans without bowing or breaking, mm.</summary>
    public static double MaxChannelWidth(BuckSpec buck)
    {
        var thickness = Thickness(buck);
        return Boards(thickness).Min(b => SupportSpacing.MaxRibSpacing(thickness, b, buck.Plenum!.MaxBow));
    }

    /// <summary>Thickness of the board that rests on the plenum, mm.</summary>
    private static double Thickness(BuckSpec buck) => (buck.Base!.Under ?? buck.Base.Stock).Thickness;

    /// <summary>The usual boards; what a stock is made of is not known, so the worse of them counts.</summary>
    private static IEnumerable<BoardProperties> Boards(double thickness)
    {
        yield return BoardProperties.Mdf(thickness);
        if (thickness >= MinPlywoodThickness) yield return BoardProperties.BirchPlywood(thickness);
    }

    /// <summary>The plenum with its feet or channels.</summary>
    /// <param name="blank">The whole plate.</param>
    /// <param name="buck">The spec, with a plenum.</param>
    /// <param name="vents">The vents; null for none.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="SpecException">There would be too many feet.</exception>
    public static LayerBlank Shaped(LayerBlank blank, BuckSpec buck, VentDesign? vents, CancellationToken cancellation)
    {
        var spec = buck.Plenum!;
        var bores = vents is null ? [] : vents.Vents.Select(v => v.Centre).ToImmutableArray();
        var port = spec.Port ?? blank.Wood.Bounds.Centre;
        return blank with
        {
            Wood = spec.Kind == PlenumKind.Channels
                ? PlenumChannels.Cut(blank.Wood, bores, port, spec.Width, spec.PortDiameter, buck.Tolerance.Chord / 8, cancellation)
                : PlenumFeet.Set(blank.Wood.Bounds, bores, spec.Width, vents?.Spec.BoreDiameter ?? 0, FeetPitch(buck) ?? 1.5 * spec.Width, cancellation),
        };
    }
}
