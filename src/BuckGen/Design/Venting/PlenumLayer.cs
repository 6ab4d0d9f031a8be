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
    public static double? FeetPitch(PlenumSpec spec, BasePlate plate)
    {
        var thickness = Thickness(plate);
        // A round foot bears like a square one of the same area.
        var side = spec.Width * Math.Sqrt(Math.PI) / 2;
        var pitches = Boards(thickness).Select(b => SupportSpacing.MaxFootSpacing(side, thickness, b, spec.MaxBow)).ToArray();
        return Array.TrueForAll(pitches, p => p is not null) ? Math.Min(pitches.Min()!.Value, MaxPitch) : null;
    }

    /// <summary>Maximum opening the base spans without bowing or breaking, mm.</summary>
    public static double MaxChannelWidth(PlenumSpec spec, BasePlate plate)
    {
        var thickness = Thickness(plate);
        return Boards(thickness).Min(b => SupportSpacing.MaxRibSpacing(thickness, b, spec.MaxBow));
    }

    /// <summary>Thickness of the board that rests on the plenum, mm.</summary>
    private static double Thickness(BasePlate plate) => (plate.Under ?? plate.Stock).Thickness;

    /// <summary>The usual boards; what a stock is made of is not known, so the worse of them counts.</summary>
    private static IEnumerable<BoardProperties> Boards(double thickness)
    {
        yield return BoardProperties.Mdf(thickness);
        if (thickness >= MinPlywoodThickness) yield return BoardProperties.BirchPlywood(thickness);
    }

    /// <summary>The plenum with its feet or channels.</summary>
    /// <param name="blank">The whole plate.</param>
    /// <param name="spec">What is wanted.</param>
    /// <param name="stack">The stack over it, with its base plate.</param>
    /// <param name="vents">The vents; null for none.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="SpecException">There would be too many feet.</exception>
    public static LayerBlank Shaped(
        LayerBlank blank, PlenumSpec spec, StackSpec stack, VentDesign? vents, CancellationToken cancellation)
    {
        var bores = vents is null ? [] : vents.Vents.Select(v => v.Centre).ToImmutableArray();
        var port = spec.Port ?? blank.Wood.Bounds.Centre;
        return blank with
        {
            Wood = spec.Kind == PlenumKind.Channels
                ? PlenumChannels.Cut(blank.Wood, bores, port, spec.Width, spec.PortDiameter, stack.Tolerance.Chord / 8,
                    cancellation)
                : PlenumFeet.Set(
                    blank.Wood.Bounds, bores, spec.Width, vents?.Spec.BoreDiameter ?? 0,
                    FeetPitch(spec, stack.Base!) ?? 1.5 * spec.Width, cancellation),
        };
    }
}
