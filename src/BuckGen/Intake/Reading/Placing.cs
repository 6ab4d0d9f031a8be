using System.Globalization;
using BuckGen.Geometry;
using BuckGen.Intake.Healing;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Reading;

/// <summary>Moves a drawing that lies far from its origin, as those with a surveyor's coordinates do.</summary>
internal static class Placing
{
    /// <summary>
    /// A drawing is moved by whole kilometres, mm, so that two drawings of one job that lie beside each other still do.
    /// </summary>
    private const double Step = 1_000_000;

    /// <summary>Nearer to the origin than this, mm, it stays where it is.</summary>
    private const double Far = 10 * Step;

    /// <summary>The drawing near its origin, with a note when it was moved.</summary>
    public static Drawing NearOrigin(Drawing drawing)
    {
        // Nearly every drawing is near, and its first point shows that.
        var first = drawing.Paths.FirstOrDefault(p => !p.Curves.IsEmpty);
        if (first is null || IsNear(first.Curves[0].Start)) return drawing;
        var bounds = Drawing.BoundsOf(drawing.Paths);
        // What is too large as well is refused as it lies.
        if (!(bounds.Diagonal < CurveReach.MaxReach)) return drawing;
        var by = new Vec2(Shift(bounds.MinX, bounds.MaxX), Shift(bounds.MinY, bounds.MaxY));
        return by == default ? drawing : drawing.Transformed(Affine.Translation(by)) with
        {
            Notes = drawing.Notes.Add(new("moved", string.Create(CultureInfo.InvariantCulture,
                $"The drawing lies far from its origin. It was moved by {by.X:0} mm in x and {by.Y:0} mm in y."))),
        };
    }

    private static bool IsNear(Vec2 p) => Math.Abs(p.X) < Far && Math.Abs(p.Y) < Far;

    /// <summary>
    /// What brings a stretch of coordinates near the origin, in whole steps; 0 where it reaches near it.
    /// </summary>
    private static double Shift(double from, double to) => from < Far && to > -Far ? 0 : Math.Round(-from / Step) * Step;
}
