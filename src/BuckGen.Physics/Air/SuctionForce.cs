namespace BuckGen.Physics.Air;

/// <summary>How hard the air outside presses on a board with a vacuum behind it.</summary>
internal static class SuctionForce
{
    /// <summary>The force, N.</summary>
    /// <param name="area">Area of the board, mm².</param>
    /// <param name="vacuum">How far the pressure behind it lies below that outside, Pa.</param>
    public static double OnArea(double area, double vacuum) => area * 1e-6 * vacuum;
}
