namespace BuckGen.Physics.Heat;

/// <summary>How long a sheet takes to become warm enough to form.</summary>
/// <remarks>
/// Heat conduction between the two faces with constant properties, from an even start, to about 0.02 % of the largest difference
/// of temperatures. Nothing is known of sag, of the cold clamped edge, or of a heater that is hotter in its middle.
/// </remarks>
internal static class SheetHeating
{
    /// <summary>Longest time that is followed, s: a day.</summary>
    public const double MaxTime = 86_400;

    /// <summary>Follows the sheet until a place of it is as warm as wanted.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="first">What happens at its first face.</param>
    /// <param name="second">What happens at its second face; <see cref="SheetFace.Insulated"/> or one in air for heating from one
    /// side.</param>
    /// <param name="wanted">Temperature to reach, degrees C, -100 to 1500.</param>
    /// <param name="place">Where; the coldest place for the whole sheet.</param>
    /// <param name="start">Temperature of the sheet before, degrees C, -100 to 1500.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public static SheetHeatResult Until(
        FlatSheet sheet, SheetFace first, SheetFace second, double wanted, SheetPlace place = SheetPlace.Coldest, double start = 20)
    {
        CheckTemperatures(wanted, start);
        return new SheetConduction(sheet, first, second).RunUntil(start, t => wanted - t.At(place), MaxTime);
    }

    /// <summary>The sheet's temperatures after a time.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="first">What happens at its first face.</param>
    /// <param name="second">What happens at its second face.</param>
    /// <param name="seconds">The time, s, 0 to 86 400.</param>
    /// <param name="start">Temperature of the sheet before, degrees C, -100 to 1500.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
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
