namespace BuckGen.Physics.Heat;

/// <summary>How long a sheet takes to become warm enough to form.</summary>
/// <remarks>
/// One-dimensional heat conduction between the two faces, with constant properties and from a uniform start. It is exact to about
/// 0.02 % of the largest temperature difference. It uses finite volumes and an implicit Runge-Kutta method; the tests compare it
/// with the series for a plane wall. Sag, the cold clamped edge and a heater that is hotter in its middle are not modelled.
/// </remarks>
public static class SheetHeating
{
    /// <summary>Longest time that is simulated, s: a day.</summary>
    public const double MaxTime = 86_400;

    /// <summary>Simulates the heating until a place in the sheet has reached a temperature.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="first">Heat exchange at its first face.</param>
    /// <param name="second">Heat exchange at its second face; <see cref="SheetFace.Insulated"/> or <see cref="SheetFace.InAir"/>
    /// for heating from one side.</param>
    /// <param name="wanted">Temperature to reach, degrees C, -100 to 1500.</param>
    /// <param name="place">Where it must be reached; the coldest place for the whole sheet.</param>
    /// <param name="start">Uniform temperature of the sheet at the start, degrees C, -100 to 1500.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range; the message names it and its limits.</exception>
    public static SheetHeatResult Until(
        FlatSheet sheet, SheetFace first, SheetFace second, double wanted, SheetPlace place = SheetPlace.Coldest,
        double start = 20)
    {
        CheckTemperatures(wanted, start);
        return new SheetConduction(sheet, first, second).RunUntil(start, t => wanted - t.At(place), MaxTime);
    }

    /// <summary>The temperatures of the sheet after a given time.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="first">Heat exchange at its first face.</param>
    /// <param name="second">Heat exchange at its second face; <see cref="SheetFace.Insulated"/> or <see cref="SheetFace.InAir"/>
    /// for heating from one side.</param>
    /// <param name="seconds">The time, s, 0 to 86 400.</param>
    /// <param name="start">Uniform temperature of the sheet at the start, degrees C, -100 to 1500.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range; the message names it and its limits.</exception>
    public static SheetTemperatures After(FlatSheet sheet, SheetFace first, SheetFace second, double seconds, double start = 20)
    {
        Bound.Check(seconds, 0, MaxTime, "time", " s");
        CheckTemperatures(start, start);
        return new SheetConduction(sheet, first, second).Integrate(start, _ => 1, seconds)[^1].Temperatures;
    }

    internal static void CheckTemperatures(double wanted, double start)
    {
        Bound.Check(wanted, -100, 1500, "wanted temperature", " degrees C");
        Bound.Check(start, -100, 1500, "temperature at the start", " degrees C");
    }
}
