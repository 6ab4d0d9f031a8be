namespace BuckGen.Physics.Heat;

/// <summary>How long a formed sheet takes to cool until it can be taken off the buck.</summary>
/// <remarks>
/// The model is that of <see cref="SheetHeating"/>. The sheet starts at a uniform temperature and lies on the buck from the
/// start.
/// </remarks>
public static class SheetCooling
{
    /// <summary>
    /// Simulates the cooling on a buck that keeps its temperature, such as a cooled one of metal, until a place in the sheet has
    /// reached a temperature.
    /// </summary>
    /// <param name="sheet">The sheet, with the thickness of its thickest place after forming.</param>
    /// <param name="buck">The face on the buck: <see cref="SheetFace.OnBuck"/>.</param>
    /// <param name="air">The other face: <see cref="SheetFace.InAir"/>.</param>
    /// <param name="start">Temperature of the sheet when it touches the buck, degrees C, -100 to 1500.</param>
    /// <param name="wanted">Temperature to reach, degrees C, -100 to 1500: the set temperature of the plastic.</param>
    /// <param name="place">Where it must be reached: the hottest place to be safe; the mean for thin sheet.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range; the message names it and its limits.</exception>
    public static SheetHeatResult Until(
        FlatSheet sheet, SheetFace buck, SheetFace air, double start, double wanted, SheetPlace place = SheetPlace.Hottest)
    {
        SheetHeating.CheckTemperatures(wanted, start);
        return new SheetConduction(sheet, buck, air).RunUntil(start, t => t.At(place) - wanted, SheetHeating.MaxTime);
    }

    /// <summary>
    /// Simulates the cooling on a buck that takes up the heat and warms, until a place in the sheet has reached a temperature.
    /// </summary>
    /// <param name="sheet">The sheet, with the thickness of its thickest place after forming.</param>
    /// <param name="buck">The buck under the sheet.</param>
    /// <param name="air">The other face: <see cref="SheetFace.InAir"/>.</param>
    /// <param name="start">Temperature of the sheet when it touches the buck, degrees C, -100 to 1500.</param>
    /// <param name="wanted">Temperature to reach, degrees C, -100 to 1500: the set temperature of the plastic.</param>
    /// <param name="buckStart">Temperature of the whole buck when the sheet touches it, degrees C, -100 to 1500.</param>
    /// <param name="place">Where it must be reached: the hottest place to be safe; the mean for thin sheet.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range; the message names it and its limits.</exception>
    public static SheetHeatResult Until(
        FlatSheet sheet, SheetBacking buck, SheetFace air, double start, double wanted, double buckStart,
        SheetPlace place = SheetPlace.Hottest)
    {
        SheetHeating.CheckTemperatures(wanted, start);
        Bound.Check(buckStart, -100, 1500, "temperature of the buck", " degrees C");
        return new SheetConduction(sheet, buck, air)
            .RunUntil(start, t => t.At(place) - wanted, SheetHeating.MaxTime, buckStart);
    }
}
