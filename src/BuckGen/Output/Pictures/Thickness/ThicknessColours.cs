namespace BuckGen.Output.Pictures.Thickness;

/// <summary>Colours of a thickness: dark where the wall is thin, bright where it is thick.</summary>
/// <remarks>
/// The colour map cividis (Nuñez, Anderton, Renslow, PLoS ONE 13(7), 2018; its colours from memory). It is even to the eye, the
/// same to colour-blind eyes, and ever brighter, so that it prints in grey.
/// </remarks>
internal static class ThicknessColours
{
    private static readonly string[] Colours =
        ["#00224e", "#123570", "#3b496c", "#575d6d", "#707173", "#8a8678", "#a59c74", "#c3b369", "#e1cc55", "#fee838"];

    /// <summary>How many there are.</summary>
    public static int Count => Colours.Length;

    /// <summary>A band's colour, from 0 for the thinnest.</summary>
    public static string ForBand(int band) => Colours[band];

    /// <summary>
    /// The colour between bands at a share of the way from the thinnest to the thickest, as red, green and blue from 0 to 1.
    /// </summary>
    public static (double Red, double Green, double Blue) At(double share)
    {
        var at = Math.Clamp(share, 0, 1) * (Colours.Length - 1);
        var low = Math.Min((int)at, Colours.Length - 2);
        var (from, to, part) = (Parts(Colours[low]), Parts(Colours[low + 1]), at - low);
        return (Mixed(from.Red, to.Red), Mixed(from.Green, to.Green), Mixed(from.Blue, to.Blue));

        double Mixed(double a, double b) => a + (b - a) * part;
    }

    private static (double Red, double Green, double Blue) Parts(string colour)
    {
        var parts = Convert.FromHexString(colour.AsSpan(1));
        return (parts[0] / 255.0, parts[1] / 255.0, parts[2] / 255.0);
    }
}
