using BuckGen.Geometry;
using BuckGen.Geometry.Curves;

namespace BuckGen.Intake.Svg;

/// <summary>Finds the ellipse of an arc that is given by its ends.</summary>
internal static class SvgArc
{
    /// <summary>The arc, by the rules of SVG 1.1, appendix F.6.5 and F.6.6.</summary>
    /// <param name="from">Where it starts.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="radii">The two radii; too small ones grow until the arc reaches its ends.</param>
    /// <param name="turn">Angle from x to the first radius, radians.</param>
    /// <param name="large">True for the arc of more than half the ellipse.</param>
    /// <param name="positive">True for growing angles.</param>
    public static Curve Between(Vec2 from, Vec2 to, Vec2 radii, double turn, bool large, bool positive)
    {
        var (rx, ry) = (Math.Abs(radii.X), Math.Abs(radii.Y));
        if (from == to || rx == 0 || ry == 0) return new LineCurve(from, to);

        // Turned back and squeezed, the ellipse is a circle of radius 1 and the chord runs from +half to -half.
        var half = ((from - to) * 0.5).Turned(-turn);
        var chord = new Vec2(half.X / rx, half.Y / ry);
        var reach = chord.Length;
        var grow = Math.Max(1, reach);
        chord *= 1 / grow;
        var height = Math.Sqrt(Math.Max(0, 1 - chord.LengthSquared));
        var centre = chord.LengthSquared == 0 ? chord : chord.Left * (height / chord.Length * (large == positive ? 1 : -1));

        var phi0 = Angle(chord - centre);
        var sweep = Angle(-chord - centre) - phi0;
        if (positive && sweep <= 0) sweep += 2 * Math.PI;
        if (!positive && sweep >= 0) sweep -= 2 * Math.PI;
        var (u, v) = (new Vec2(rx * grow, 0).Turned(turn), new Vec2(0, ry * grow).Turned(turn));
        return new EllipseCurve(from.MidpointTo(to) + u * centre.X + v * centre.Y, u, v, phi0, phi0 + sweep);
    }

    private static double Angle(Vec2 v) => Math.Atan2(v.Y, v.X);
}
