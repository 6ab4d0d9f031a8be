using BuckGen.Physics.Heat;

namespace BuckGen.Intake.Catalogs;

/// <summary>A plastic known by name.</summary>
public sealed record CatalogPlastic : CatalogEntry
{
    /// <summary>Below this thickness the smaller vents are meant, mm. Sources put it at 1.5 to 3 mm.</summary>
    private const double HeavyGauge = 3;

    /// <summary>Coldest core that can be formed, degrees C; null when not known.</summary>
    public double? FormingLower => NumberOf("forming-lower");

    /// <summary>Usual forming temperature, degrees C; null when not known.</summary>
    public FigureRange? FormingNormal => RangeOf("forming-normal");

    /// <summary>Hottest face before the plastic suffers, degrees C; null when not known.</summary>
    public double? FormingUpper => NumberOf("forming-upper");

    /// <summary>
    /// Set temperature, degrees C: when its hottest place is colder, the part keeps its shape and may be taken off; null when not
    /// known.
    /// </summary>
    /// <remarks>
    /// It is no higher than <see cref="HeatDeflection"/> of the softest grade. A plastic that melts is held by its crystals far
    /// above that, and its limit is <see cref="HeatDeflectionLight"/>.
    /// </remarks>
    public double? SetTemperature => NumberOf("set-temperature");

    /// <summary>
    /// Heat deflection temperature at 1.8 MPa, degrees C: a loaded bar of it bends (ISO 75-2 method A, ASTM D648 at 264 psi);
    /// null when not known.
    /// </summary>
    public FigureRange? HeatDeflection => RangeOf("heat-deflection");

    /// <summary>
    /// Heat deflection temperature at 0.45 MPa, degrees C: the same with a quarter of the load (ISO 75-2 method B, ASTM D648 at
    /// 66 psi); null when not known.
    /// </summary>
    public FigureRange? HeatDeflectionLight => RangeOf("heat-deflection-light");

    /// <summary>Shrinkage on cooling on a male buck, per cent of length.</summary>
    public FigureRange Shrinkage =>
        RangeOf("shrinkage") ?? throw new InvalidOperationException($"The plastic {Id} has no shrinkage.");

    /// <summary>Shrinkage on cooling in a female buck, per cent of length; null when not known.</summary>
    public FigureRange? ShrinkageFemale => RangeOf("shrinkage-female");

    /// <summary>Draft advised for a male buck, degrees.</summary>
    public double DraftMale => NumberOf("draft-male") ?? throw new InvalidOperationException($"The plastic {Id} has no draft.");

    /// <summary>Minimum draft for a male buck, degrees; null when not known.</summary>
    public double? MinDraftMale => NumberOf("min-draft-male");

    /// <summary>
    /// From the minimum to the maximum draft that sources advise for a male buck, degrees; null when not known.
    /// </summary>
    public FigureRange? DraftMalePublished => RangeOf("draft-male-published");

    /// <summary>Draft advised for a female buck, degrees; null when not known.</summary>
    public double? DraftFemale => NumberOf("draft-female");

    /// <summary>Minimum draft for a female buck, degrees; null when not known.</summary>
    public double? MinDraftFemale => NumberOf("min-draft-female");

    /// <summary>
    /// From the minimum to the maximum draft that sources advise for a female buck, degrees; null when not known.
    /// </summary>
    public FigureRange? DraftFemalePublished => RangeOf("draft-female-published");

    /// <summary>Maximum depth over width of straight male forming; null when not known.</summary>
    public double? DepthMale => NumberOf("depth-male");

    /// <summary>Maximum depth over width of straight female forming; null when not known.</summary>
    public double? DepthFemale => NumberOf("depth-female");

    /// <summary>Density, kg/m³; null when not known.</summary>
    public FigureRange? Density => RangeOf("density");

    /// <summary>Thermal conductivity, W/(m·K); null when not known.</summary>
    public FigureRange? Conductivity => RangeOf("conductivity");

    /// <summary>Heat capacity from room to forming temperature without melting, J/(kg·K); null when not known.</summary>
    public FigureRange? HeatCapacity => RangeOf("heat-capacity");

    /// <summary>Heat of melting, kJ/kg; null for plastics that only soften, or when not known.</summary>
    public FigureRange? MeltingHeat => RangeOf("melting-heat");

    /// <summary>Emissivity of its surface, 0 to 1; null when not known.</summary>
    public FigureRange? Emissivity => RangeOf("emissivity");

    /// <summary>Expansion, millionths of length per degree C; null when not known.</summary>
    public FigureRange? Expansion => RangeOf("expansion");

    /// <summary>
    /// Shear modulus during forming, from the hot end of its forming range to the cold one, MPa; null when not known.
    /// </summary>
    public FigureRange? HotModulus => RangeOf("hot-modulus");

    /// <summary>Price of a square metre in the shop's money, from the shop's own file; null when not known.</summary>
    public double? Price => NumberOf("price");

    /// <summary>How to dry it before forming; null when not known.</summary>
    public string? Drying => TextOf("drying");

    /// <summary>Whether a laser may cut it; null when not known.</summary>
    public Suitability? Laser => SuitabilityOf("laser");

    /// <summary>A caution; null when there is no caution.</summary>
    public string? Caution => TextOf("caution");

    /// <summary>Maximum diameter of a vent that leaves no visible mark, mm; null when not known.</summary>
    /// <param name="gauge">Thickness of the sheet, mm.</param>
    internal double? MaxVentDiameter(double gauge) => NumberOf(gauge < HeavyGauge ? "vent-thin" : "vent-heavy");

    /// <summary>
    /// How the plastic takes up heat between two temperatures, with the middle of each range; the heat of melting counts whole
    /// and evenly, which errs on the slow side. Null when a figure is missing.
    /// </summary>
    /// <param name="from">Temperature at the start, degrees C.</param>
    /// <param name="to">Temperature at the end, degrees C, at least 1 above the start.</param>
    /// <exception cref="ArgumentOutOfRangeException">The end is not above the start.</exception>
    internal SheetMaterial? Heat(double from, double to)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(to, from + 1);
        return (Conductivity, Density, HeatCapacity) is ({ } conductivity, { } density, { } capacity)
            ? new(conductivity.Middle, density.Middle, capacity.Middle + (MeltingHeat?.Middle ?? 0) * 1000 / (to - from))
            : null;
    }
}
