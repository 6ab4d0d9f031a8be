namespace BuckGen.Geometry.Facing;

/// <summary>The small angles of an edge that are ignored; radians; all are our definitions, no source.</summary>
internal static class AngleTolerances
{
    /// <summary>
    /// Edges that are this nearly parallel face each other: 0.1°. A line 1 mm long turns by up to 0.06° when a drawing program
    /// rounds its ends to three decimals.
    /// </summary>
    public const double Parallel = 0.1 * Math.PI / 180;

    /// <summary>A way across is square to an edge when it is this nearly so: half of it at either end.</summary>
    public const double Square = Parallel / 2;

    /// <summary>A joint that turns less is smooth and no corner: 1°, as at the joints of fitted curves.</summary>
    public const double NoCorner = Math.PI / 180;

    /// <summary>
    /// A joint that turns less is taken as part of the curve that its lines follow, when widths are looked for: 15°, a circle
    /// of 24 lines. Without it a round shape of many lines would have no width where two of its corners lie opposite.
    /// </summary>
    public const double Facet = 15 * Math.PI / 180;
}
