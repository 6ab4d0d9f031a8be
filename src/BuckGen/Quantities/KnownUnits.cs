using System.Globalization;
using UnitsNet;
using UnitsNet.Units;

namespace BuckGen.Quantities;

/// <summary>The units that text may name. UnitsNet takes longer to make its table of all units than a small job takes.</summary>
internal static class KnownUnits
{
    private static readonly UnitParser Parser = new(Names());

    /// <summary>Finds a unit by its name; lower and upper case are the same where no two units differ by it.</summary>
    public static bool TryParse<TUnit>(string name, out TUnit unit)
        where TUnit : struct, Enum => Parser.TryParse(name, CultureInfo.InvariantCulture, out unit);

    private static UnitAbbreviationsCache Names()
    {
        var names = UnitAbbreviationsCache.CreateEmpty();
        Name(LengthUnit.Millimeter, "mm");
        Name(LengthUnit.Centimeter, "cm");
        Name(LengthUnit.Meter, "m");
        Name(LengthUnit.Inch, "in", "\"", "″");
        Name(LengthUnit.Foot, "ft", "'", "′");
        Name(AngleUnit.Degree, "deg", "°");
        Name(AngleUnit.Radian, "rad");
        Name(PressureUnit.Pascal, "Pa");
        Name(PressureUnit.Hectopascal, "hPa");
        Name(PressureUnit.Kilopascal, "kPa");
        Name(PressureUnit.Megapascal, "MPa");
        Name(PressureUnit.Millibar, "mbar");
        Name(PressureUnit.Bar, "bar");
        Name(PressureUnit.Atmosphere, "atm");
        Name(PressureUnit.Torr, "torr");
        Name(PressureUnit.MillimeterOfMercury, "mmHg");
        Name(PressureUnit.InchOfMercury, "inHg");
        Name(PressureUnit.PoundForcePerSquareInch, "psi");
        return names;

        void Name<TUnit>(TUnit unit, params string[] texts)
            where TUnit : struct, Enum => names.MapUnitToAbbreviation(unit, CultureInfo.InvariantCulture, texts);
    }
}
