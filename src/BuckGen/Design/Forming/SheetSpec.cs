using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Intake.Catalogs;

namespace BuckGen.Design.Forming;

/// <summary>The plastic sheet that is formed. Lengths in mm.</summary>
public sealed record SheetSpec
{
    /// <summary>Min and max gauge, mm.</summary>
    internal const double MinGauge = 0.1, MaxGauge = 25;

    /// <summary>The plastic; null when it is not known.</summary>
    public CatalogPlastic? Plastic { get; init; }

    /// <summary>Thickness before forming, mm.</summary>
    public double Gauge { get; init; } = 1;

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
    internal FigureRange? ShrinkageFor(BuckKind kind) => (kind == BuckKind.Female ? Plastic?.ShrinkageFemale : null) ?? Plastic?.Shrinkage;

    internal void Validate()
    {
        if (PricePerSquareMetre is { } price) SpecRange.Require(price is >= 0 and <= 1e6, "price of a square metre of plastic", price, "", "from 0 to 1000000");
        SpecRange.Require(Gauge is >= MinGauge and <= MaxGauge, "gauge of the sheet", Gauge, " mm", "from 0.1 to 25 mm");
        if (MinWall is { } wall) SpecRange.Require(wall is >= 0.02 and <= 25, "thinnest wall of the part", wall, " mm", "from 0.02 to 25 mm");
        foreach (var size in Sizes)
        {
            SpecRange.Require(size.Width is >= 50 and <= 5000, "width of a plastic sheet", size.Width, " mm", "from 50 to 5000 mm");
            SpecRange.Require(size.Height is >= 50 and <= 5000, "height of a plastic sheet", size.Height, " mm", "from 50 to 5000 mm");
        }
    }
}
