namespace BuckGen.Geometry.Offsetting;

/// <summary>The piece of an outline that is nearest to a point.</summary>
/// <param name="Number">Its number; -1 when none lies within the reach.</param>
/// <param name="Distance">How far it is, mm; infinite for none.</param>
internal readonly record struct NearestPiece(int Number, double Distance)
{
    /// <summary>No piece.</summary>
    public static NearestPiece None { get; } = new(-1, double.PositiveInfinity);

    /// <summary>The piece, when it lies within a reach; else none.</summary>
    public NearestPiece Within(double reach) => Distance <= reach ? this : None;
}
