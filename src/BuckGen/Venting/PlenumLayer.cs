using System.Collections.Immutable;
using BuckGen.Bucks;
using BuckGen.Physics.Plates;

namespace BuckGen.Venting;

/// <summary>Shapes the plenum once the bores above it are known.</summary>
internal static class PlenumLayer
{
    /// <summary>Feet stand no farther apart than this, mm, however stiff the base (common practice, no source).</summary>
    private const double LargestPitch = 120;

    /// <summary>Farthest two feet may stand apart under the base, mm, so that it neither bows nor breaks; null when no distance will do.</summary>
    public static double? FeetPitch(BuckSpec buck)
    {
        var (thickness, board) = Board(buck);
        // A round foot bears like a square one of the same area.
        var side = buck.Plenum!.Width * Math.Sqrt(Math.PI) / 2;
        return SupportSpacing.Feet(side, thickness, board, buck.Plenum.LargestBow) is { } pitch ? Math.Min(pitch, LargestPitch) : null;
    }

    /// <summary>Widest opening the base spans without bowing or breaking, mm.</summary>
    public static double WidestChannel(BuckSpec buck)
    {
        var (thickness, board) = Board(buck);
        return SupportSpacing.Ribs(thickness, board, buck.Plenum!.LargestBow);
    }

    /// <summary>What rests on the plenum. Boards are taken as MDF, the weaker of the usual ones.</summary>
    private static (double Thickness, BoardProperties Board) Board(BuckSpec buck)
    {
        var thickness = (buck.Base!.Under ?? buck.Base.Stock).Thickness;
        return (thickness, BoardProperties.Mdf(thickness));
    }

    /// <summary>The plenum with its feet or channels.</summary>
    /// <param name="blank">The whole plate.</param>
    /// <param name="buck">The spec, with a plenum.</param>
    /// <param name="vents">The vents; null for none.</param>
    public static LayerBlank Shaped(LayerBlank blank, BuckSpec buck, VentDesign? vents)
    {
        var spec = buck.Plenum!;
        var bores = vents is null ? [] : vents.Vents.Select(v => v.Centre).ToImmutableArray();
        var port = spec.Port ?? blank.Wood.Bounds.Centre;
        return blank with
        {
            Wood = spec.Kind == PlenumKind.Channels
                ? PlenumChannels.Cut(blank.Wood, bores, port, spec.Width, spec.PortDiameter, buck.Tolerance.Chord / 8)
                : PlenumFeet.Set(blank.Wood.Bounds, bores, spec.Width, vents?.Spec.BoreDiameter ?? 0, FeetPitch(buck) ?? 1.5 * spec.Width),
        };
    }
}
