namespace BuckGen.Physics.Heat;

/// <summary>Heat exchange at a face of the sheet: radiation, convection or contact, and a given flux.</summary>
/// <remarks>
/// Radiation is that of grey bodies and is absorbed at the surface. Thin or clear sheet absorbs a part of it deeper inside, which
/// heats the core sooner, so the heating times are rather too long.
/// </remarks>
public sealed record SheetFace
{
    /// <summary>Stefan-Boltzmann constant, W/(m²·K⁴): CODATA, rounded.</summary>
    private const double StefanBoltzmann = 5.670374e-8;

    private const double AbsoluteZero = -273.15;

    /// <summary>Heat transfer coefficient to the air, or thermal conductance of the contact, W/(m²·K), 0 to 1 000 000.</summary>
    /// <remarks>About 5 to 10 in still air, 20 to 100 in forced air (Incropera and DeWitt, from memory).</remarks>
    public double FilmCoefficient { get; init; }

    /// <summary>Temperature of the air, or of the body in contact with the face, degrees C, -100 to 1500.</summary>
    public double AirTemperature { get; init; } = 20;

    /// <summary>
    /// Effective emissivity between the face and the surface that it faces, 0 to 1; see <see cref="EffectiveEmissivity"/>.
    /// </summary>
    public double Emissivity { get; init; }

    /// <summary>
    /// Temperature of the surface that the face exchanges radiation with, the heater or the walls of the room, degrees C, -100 to
    /// 1500.
    /// </summary>
    public double HeaterTemperature { get; init; } = 20;

    /// <summary>Heat flux into the face that does not depend on its temperature, W/m², 0 to 1 000 000.</summary>
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
    /// <param name="filmCoefficient">Heat transfer coefficient, W/(m²·K), 0 to 1 000 000.</param>
    /// <param name="air">Temperature of the air, degrees C, -100 to 1500.</param>
    public static SheetFace InAir(double filmCoefficient, double air) =>
        new() { FilmCoefficient = filmCoefficient, AirTemperature = air };

    /// <summary>A face in contact with a buck that keeps its temperature, such as a cooled one of metal.</summary>
    /// <remarks>The surface of a wooden buck warms, and the sheet cools more slowly: see <see cref="SheetBacking"/>.</remarks>
    /// <param name="conductance">Thermal conductance of the contact, W/(m²·K), 0 to 1 000 000; some hundreds are common practice
    /// (no source).</param>
    /// <param name="buck">Temperature of the surface of the buck, degrees C, -100 to 1500.</param>
    public static SheetFace OnBuck(double conductance, double buck) => InAir(conductance, buck);

    /// <summary>
    /// Effective emissivity of the enclosure of two grey surfaces of equal area (Incropera and DeWitt, from memory).
    /// </summary>
    /// <param name="heater">Emissivity of the heater, 0.01 to 1.</param>
    /// <param name="sheet">Emissivity of the sheet, 0.01 to 1; about 0.9 for plastics (from memory).</param>
    /// <param name="viewFactor">View factor from the heater to the sheet, 0.01 to 1; 1 for large surfaces face to face.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range; the message names it and its limits.</exception>
    public static double EffectiveEmissivity(double heater, double sheet, double viewFactor = 1)
    {
        Bound.Check(heater, 0.01, 1, "emissivity of the heater");
        Bound.Check(sheet, 0.01, 1, "emissivity of the sheet");
        Bound.Check(viewFactor, 0.01, 1, "view factor");
        return 1 / ((1 - heater) / heater + 1 / viewFactor + (1 - sheet) / sheet);
    }

    /// <summary>Heat flux into the face, W/m²; negative when the face loses heat.</summary>
    /// <param name="temperature">Temperature of the face, degrees C.</param>
    public double FluxInto(double temperature) =>
        Flux + FilmCoefficient * (AirTemperature - temperature)
        + Emissivity * StefanBoltzmann
            * (FourthPower(HeaterTemperature - AbsoluteZero) - FourthPower(temperature - AbsoluteZero));

    /// <summary>Decrease of the heat flux into the face per degree of its own temperature, W/(m²·K).</summary>
    internal double LinearizedFilmCoefficient(double temperature) =>
        FilmCoefficient + 4 * Emissivity * StefanBoltzmann * Math.Pow(Math.Abs(temperature - AbsoluteZero), 3);

    /// <summary>True when the heat flux depends on the temperature of the face.</summary>
    internal bool DependsOnTemperature => FilmCoefficient > 0 || Emissivity > 0;

    internal void Validate()
    {
        Bound.Check(FilmCoefficient, 0, 1_000_000, "film coefficient", " W/(m2 K)");
        Bound.Check(AirTemperature, -100, 1500, "temperature of the air", " degrees C");
        Bound.Check(Emissivity, 0, 1, "effective emissivity");
        Bound.Check(HeaterTemperature, -100, 1500, "temperature of the heater", " degrees C");
        Bound.Check(Flux, 0, 1_000_000, "flux into the face", " W/m2");
    }

    /// <summary>Odd, so that an iterate below absolute zero still points in the right direction.</summary>
    private static double FourthPower(double kelvin) => kelvin * Math.Abs(kelvin) * kelvin * kelvin;
}
