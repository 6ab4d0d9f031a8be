namespace BuckGen.Physics.Heat;

/// <summary>A place in the thickness of the sheet.</summary>
public enum SheetPlace
{
    /// <summary>The coldest place, wherever it lies.</summary>
    Coldest,

    /// <summary>The hottest place, wherever it lies.</summary>
    Hottest,

    /// <summary>The mean over the thickness.</summary>
    Mean,

    /// <summary>Half-way between the faces.</summary>
    Core,

    /// <summary>The first face.</summary>
    First,

    /// <summary>The second face.</summary>
    Second,
}

/// <summary>Temperatures through the thickness of the sheet, degrees C.</summary>
/// <param name="First">At the first face.</param>
/// <param name="Core">Half-way between the faces.</param>
/// <param name="Second">At the second face.</param>
/// <param name="Mean">Average over the thickness.</param>
/// <param name="Coldest">Of the coldest place.</param>
/// <param name="Hottest">Of the hottest place.</param>
public readonly record struct SheetTemperatures(
    double First, double Core, double Second, double Mean, double Coldest, double Hottest)
{
    /// <summary>The temperature of a place, degrees C.</summary>
    /// <param name="place">The place.</param>
    public double At(SheetPlace place) => place switch
    {
        SheetPlace.Coldest => Coldest,
        SheetPlace.Hottest => Hottest,
        SheetPlace.Mean => Mean,
        SheetPlace.Core => Core,
        SheetPlace.First => First,
        _ => Second,
    };

    internal static SheetTemperatures Lerp(SheetTemperatures a, SheetTemperatures b, double share) => new(
        double.Lerp(a.First, b.First, share), double.Lerp(a.Core, b.Core, share), double.Lerp(a.Second, b.Second, share),
        double.Lerp(a.Mean, b.Mean, share), double.Lerp(a.Coldest, b.Coldest, share), double.Lerp(a.Hottest, b.Hottest, share));
}

/// <summary>The temperatures of the sheet at one instant.</summary>
/// <param name="Seconds">Time since the start, s.</param>
/// <param name="Temperatures">The temperatures, degrees C.</param>
public readonly record struct TemperatureSample(double Seconds, SheetTemperatures Temperatures);
