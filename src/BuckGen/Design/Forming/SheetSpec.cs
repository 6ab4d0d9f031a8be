using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Intake.Catalogs;

namespace BuckGen.Design.Forming;

/// <summary>The plastic sheet that is formed. Lengths in mm.</summary>
public sealed record SheetSpec
{
    /// <summary>The plastic; null when it is not known.</summary>
    public CatalogPlastic? Plastic { get; init; }

    /// <summary>Thickness before forming, mm.</summary>
    public double Gauge { get; init; } = SheetSettings.Gauge.Value;

    /// <summary>
    /// Min wall of the part, mm; null for no limit. The blank's gauge is computed for it as a mean. The thinnest place
    /// of the predicted wall is compared with it.
    /// </summary>
    public double? MinWall { get; init; }

    /// <summary>The sizes in which the shop has the sheet, mm; none when not given.</summary>
    public ImmutableArray<RectangleSize> Sizes { get; init; } = [];

    /// <summary>Price of a square metre, in the shop's money; null when not given.</summary>
    public double? PricePerSquareMetre { get; init; }

    /// <summary>The range in which the plastic shrinks, per cent; null when the plastic is not known.</summary>
    /// <param name="kind">In a cavity it may shrink otherwise than over a male buck.</param>
    internal FigureRange? ShrinkageFor(BuckKind kind) =>
        (kind == BuckKind.Female ? Plastic?.ShrinkageFemale : null) ?? Plastic?.Shrinkage;

    internal void Validate()
    {
        SheetSettings.Price.Require(PricePerSquareMetre);
        SheetSettings.Gauge.Require(Gauge);
        SheetSettings.MinWall.Require(MinWall);
        foreach (var size in Sizes) SheetSettings.Sizes.Require(size.Width, size.Height);
    }
}
