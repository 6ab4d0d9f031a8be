namespace BuckGen.Physics.Heat;

/// <summary>How long a formed sheet takes to become cold enough to be taken off.</summary>
/// <remarks>
/// As in <see cref="SheetHeating"/>; the sheet starts at one temperature throughout and lies on the buck from the start.
/// </remarks>
internal static class SheetCooling
{
    /// <summary>Follows the sheet until a place of it is as cold as wanted.</summary>
    /// <param name="sheet">The sheet; take its thickness where it ends up thickest.</param>
    /// <param name="buck">The face on the buck: <see cref="SheetFace.OnBuck"/>.</param>
    /// <param name="air">The other face: <see cref="SheetFace.InAir"/>.</param>
    /// <param name="start">Temperature of the sheet when it meets the buck, degrees C, -100 to 1500.</param>
    /// <param name="wanted">Temperature to reach, degrees C, -100 to 1500: the plastic's mould-and-set temperature.</param>
    /// <param name="place">Where: the hottest place to be safe; the mean for thin sheet.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public static SheetHeatResult Until(
        FlatSheet sheet, SheetFace buck, SheetFace air, double start, double wanted, SheetPlace place = SheetPlace.Hottest)
    {
        SheetHeating.CheckTemperatures(wanted, start);
        return new SheetConduction(sheet, buck, air).RunUntil(start, t => t.At(place) - wanted, SheetHeating.MaxTime);
    }
}
