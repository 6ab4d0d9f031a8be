namespace BuckGen.Physics.Membranes;

/// <summary>What a node of the sheet may not do.</summary>
[Flags]
internal enum BoundaryCondition
{
    /// <summary>It may go where it likes.</summary>
    None = 0,

    /// <summary>It keeps its x: it lies in a plane of symmetry x = const.</summary>
    FixedX = 1,

    /// <summary>It keeps its y: it lies in a plane of symmetry y = const.</summary>
    FixedY = 2,

    /// <summary>It is held by the clamp frame.</summary>
    Clamped = 7,
}
