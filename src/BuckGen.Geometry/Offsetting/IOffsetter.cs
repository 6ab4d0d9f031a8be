namespace BuckGen.Geometry.Offsetting;

/// <summary>Moves the edge of a region by one distance everywhere.</summary>
internal interface IOffsetter
{
    /// <summary>The region grown or shrunk.</summary>
    /// <param name="region">Islands whose loops do not cross.</param>
    /// <param name="distance">Distance in mm: positive grows the material (holes shrink), negative shrinks it.</param>
    /// <param name="join">What happens at corners that open.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The new region; empty when nothing is left.</returns>
    /// <exception cref="OffsetFailedException">The result could not be made or did not pass its check.</exception>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    Region Offset(Region region, double distance, CornerJoin join, CancellationToken cancellation = default);
}
