using System.Collections.Immutable;
using BuckGen.Bucks;

namespace BuckGen.Venting;

/// <summary>Shapes the plenum once the bores above it are known.</summary>
internal static class PlenumLayer
{
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
                : PlenumFeet.Set(blank.Wood.Bounds, bores, spec.Width, vents?.Spec.BoreDiameter ?? 0, 60),
        };
    }
}
