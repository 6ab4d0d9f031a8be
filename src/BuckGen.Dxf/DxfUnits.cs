namespace BuckGen.Dxf;

/// <summary>The meaning of the numbers that <c>$INSUNITS</c> may hold.</summary>
public static class DxfUnits
{
    /// <summary>The number that stands for millimetres.</summary>
    public const int Millimetres = 4;

    /// <summary>How long one drawing unit is.</summary>
    /// <param name="insertionUnits">Value of <c>$INSUNITS</c>.</param>
    /// <returns>Millimetres for one unit, or null for 0 (no unit) and for units that no workshop uses.</returns>
    public static double? MillimetresPerUnit(int insertionUnits) => insertionUnits switch
    {
        1 => 25.4,
        2 => 304.8,
        4 => 1,
        5 => 10,
        6 => 1000,
        8 => 25.4e-6,
        9 => 25.4e-3,
        10 => 914.4,
        13 => 1e-3,
        14 => 100,
        _ => null,
    };

    /// <summary>The unit's name in words.</summary>
    /// <param name="insertionUnits">Value of <c>$INSUNITS</c>.</param>
    /// <returns>A plural such as <c>millimetres</c>; <c>no unit</c> for 0; <c>unit 17</c> for numbers not named here.</returns>
    public static string Name(int insertionUnits) => insertionUnits switch
    {
        0 => "no unit",
        1 => "inches",
        2 => "feet",
        4 => "millimetres",
        5 => "centimetres",
        6 => "metres",
        8 => "microinches",
        9 => "mils",
        10 => "yards",
        13 => "micrometres",
        14 => "decimetres",
        _ => $"unit {insertionUnits}",
    };
}
