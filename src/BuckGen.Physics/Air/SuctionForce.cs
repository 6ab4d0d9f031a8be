namespace BuckGen.Physics.Air;

/// <summary>Force of the atmosphere on a board with a vacuum behind it.</summary>
internal static class SuctionForce
{
    /// <summary>The force, N.</summary>
    /// <param name="area">Area of the board, mm².</param>
    /// <param name="vacuum">Pressure difference between the room and the space behind the board, Pa.</param>
    public static double OnArea(double area, double vacuum) => area * 1e-6 * vacuum;
}
