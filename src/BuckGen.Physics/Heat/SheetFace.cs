namespace BuckGen.Physics.Heat;

/// <summary>
/// How a face of the sheet gets and loses heat: by radiation, to the air or whatever touches it, and as a given flux.
/// </summary>
/// <remarks>
/// Radiation is that of grey bodies and is taken up in the face itself. Thin or clear sheet lets some of it in deeper, which
/// heats the core sooner, so the times err on the slow side.
/// </remarks>
internal sealed record SheetFace
{
    /// <summary>The constant of Stefan and Boltzmann, W/(m²·K⁴): CODATA, exact since 2019 but for the digits left out.</summary>
    private const double StefanBoltzmann = 5.670374e-8;

    private const double AbsoluteZero = -273.15;

    /// <summary>Film coefficient to the air, or conductance of the contact, W/(m²·K), 0 to 1 000 000.</summary>
    /// <remarks>Still air takes about 5 to 10, air that is blown 20 to 100 (Incropera and DeWitt, from memory).</remarks>
    public double FilmCoefficient { get; init; }

    /// <summary>Temperature of the air, or of what touches the face, degrees C, -100 to 1500.</summary>
    public double AirTemperature { get; init; } = 20;

    /// <summary>
    /// Effective emissivity between the face and what it looks at, 0 to 1; see <see cref="EffectiveEmissivity"/>.
    /// </summary>
    public double Emissivity { get; init; }

    /// <summary>Temperature of what the face looks at, the heater or the walls of the room, degrees C, -100 to 1500.</summary>
    public double HeaterTemperature { get; init; } = 20;

    /// <summary>Heat that reaches the face whatever its temperature, W/m², 0 to 1 000 000.</summary>
    public double Flux { get; init; }

    /// <summary>A face that no heat passes.</summary>
    public static SheetFace Insulated { get; } = new();

    /// <summary>A face below a heater.</summary>
    /// <param name="heater">Temperature of the heater, degrees C, -100 to 1500.</param>
    /// <param name="emissivity">Effective emissivity, 0 to 1.</param>
    /// <param name="filmCoefficient">Film coefficient to the air between them, W/(m²·K), 0 to 1 000 000.</param>
    /// <param name="air">Temperature of that air, degrees C, -100 to 1500.</param>
    public static SheetFace Heated(double heater, double emissivity, double filmCoefficient, double air) =>
        new() { HeaterTemperature = heater, Emissivity = emissivity, FilmCoefficient = filmCoefficient, AirTemperature = air };

    /// <summary>A face in air.</summary>
    /// <param name="filmCoefficient">Film coefficient, W/(m²·K), 0 to 1 000 000.</param>
    /// <param name="air">Temperature of the air, degrees C, -100 to 1500.</param>
    public static SheetFace InAir(double filmCoefficient, double air) => new() { FilmCoefficient = filmCoefficient, AirTemperature = air };

    /// <summary>A face that lies on a buck.</summary>
    /// <remarks>
    /// The buck keeps its temperature. A wooden one does not: its face warms, so the sheet cools more slowly than computed.
    /// </remarks>
    /// <param name="conductance">Conductance of the contact, W/(m²·K), 0 to 1 000 000; some hundreds are common (no
    /// source).</param>
    /// <param name="buck">Temperature of the buck's face, degrees C, -100 to 1500.</param>
    public static SheetFace OnBuck(double conductance, double buck) => InAir(conductance, buck);

    /// <summary>
    /// Effective emissivity between two grey faces of equal area, of which each sees the other by a share of its view: the
    /// enclosure of two surfaces (Incropera and DeWitt, from memory).
    /// </summary>
    /// <param name="heater">Emissivity of the heater, 0.01 to 1.</param>
    /// <param name="sheet">Emissivity of the sheet, 0.01 to 1; about 0.9 for plastics (from memory).</param>
    /// <param name="viewFactor">Share of the heater's radiation that meets the sheet, 0.01 to 1; 1 for large faces side by
    /// side.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public static double EffectiveEmissivity(double heater, double sheet, double viewFactor = 1)
    {
        Bound.Check(heater, 0.01, 1, "emissivity of the heater");
        Bound.Check(sheet, 0.01, 1, "emissivity of the sheet");
        Bound.Check(viewFactor, 0.01, 1, "view factor");
        return 1 / ((1 - heater) / heater + 1 / viewFactor + (1 - sheet) / sheet);
    }

    /// <summary>Heat that enters the face, W/m²; negative when it loses heat.</summary>
    /// <param name="temperature">Temperature of the face, degrees C.</param>
    public double FluxInto(double temperature) =>
        Flux + FilmCoefficient * (AirTemperature - temperature)
        + Emissivity * StefanBoltzmann * (FourthPower(HeaterTemperature - AbsoluteZero) - FourthPower(temperature - AbsoluteZero));

    /// <summary>How much less heat enters when the face is a degree hotter, W/(m²·K).</summary>
    internal double LinearizedFilmCoefficient(double temperature) =>
        FilmCoefficient + 4 * Emissivity * StefanBoltzmann * Math.Pow(Math.Abs(temperature - AbsoluteZero), 3);

    /// <summary>True when the face's own temperature has a say in its heat.</summary>
    internal bool DependsOnTemperature => FilmCoefficient > 0 || Emissivity > 0;

    internal void Validate()
    {
        Bound.Check(FilmCoefficient, 0, 1_000_000, "film coefficient", " W/(m2 K)");
        Bound.Check(AirTemperature, -100, 1500, "temperature of the air", " degrees C");
        Bound.Check(Emissivity, 0, 1, "effective emissivity");
        Bound.Check(HeaterTemperature, -100, 1500, "temperature of the heater", " degrees C");
        Bound.Check(Flux, 0, 1_000_000, "flux into the face", " W/m2");
    }

    /// <summary>Odd, so that a guess below absolute zero on the way to a solution still points the right way.</summary>
    private static double FourthPower(double kelvin) => kelvin * Math.Abs(kelvin) * kelvin * kelvin;
}
