namespace BuckGen.Dxf.Writing;

/// <summary>Angles in degrees, brought into one turn.</summary>
internal static class Angle
{
    /// <summary>The same direction from 0 up to, but not including, 360.</summary>
    public static double Normalised(double degrees)
    {
        var turned = Math.IEEERemainder(degrees, 360);
        return turned < 0 ? (turned + 360) % 360 : turned;
    }

    /// <summary>How far an arc turns, above 0 and at most 360.</summary>
    public static double Sweep(DxfArc arc)
    {
        var sweep = Normalised(arc.EndAngle - arc.StartAngle);
        return sweep == 0 ? 360 : sweep;
    }
}
