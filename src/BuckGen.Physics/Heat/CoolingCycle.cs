namespace BuckGen.Physics.Heat;

/// <summary>
/// What repeats in a series of parts from one buck. A hot sheet comes down and cools on the buck until it can be taken off. Then
/// the buck stands bare until the next sheet is hot.
/// </summary>
public sealed record CoolingCycle
{
    /// <summary>The sheet, with the thickness of its thickest place after forming.</summary>
    public required FlatSheet Sheet { get; init; }

    /// <summary>The buck under the sheet.</summary>
    public required SheetBacking Buck { get; init; }

    /// <summary>The face of the sheet in air.</summary>
    public required SheetFace Air { get; init; }

    /// <summary>The face of the buck while no sheet lies on it.</summary>
    public required SheetFace Bare { get; init; }

    /// <summary>Temperature of each sheet when it touches the buck, degrees C, -100 to 1500.</summary>
    public required double SheetStart { get; init; }

    /// <summary>Temperature of the whole buck before the first part, degrees C, -100 to 1500.</summary>
    public required double BuckStart { get; init; }

    /// <summary>A part is taken off when its hottest place is as cold as this, degrees C, -100 to 1500.</summary>
    public required double TakeOff { get; init; }

    /// <summary>How long the buck stands bare between two parts, s, 0 to 86 400: as long as a sheet is heated.</summary>
    public required double BareSeconds { get; init; }

    internal void Validate()
    {
        SheetHeating.CheckTemperatures(TakeOff, SheetStart);
        Bound.Check(BuckStart, -100, 1500, "temperature of the buck", " degrees C");
        Bound.Check(BareSeconds, 0, SheetHeating.MaxTime, "time between two parts", " s");
    }
}
