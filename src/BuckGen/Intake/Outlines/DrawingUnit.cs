namespace BuckGen.Intake.Outlines;

/// <summary>The units a drawing can be in.</summary>
internal static class DrawingUnit
{
    /// <summary>How many millimetres a unit has.</summary>
    /// <param name="unit">mm, cm, m, in or ft.</param>
    /// <exception cref="OutlineException">The unit is not one of these.</exception>
    public static double MillimetresIn(string unit) => unit switch
    {
        "mm" => 1,
        "cm" => 10,
        "m" => 1000,
        "in" => 25.4,
        "ft" => 304.8,
        _ => throw new OutlineException($"the unit \"{unit}\" is not known; use mm, cm, m, in or ft"),
    };
}
