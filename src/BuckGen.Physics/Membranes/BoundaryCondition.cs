namespace BuckGen.Physics.Membranes;

/// <summary>Which displacements of a node are prescribed.</summary>
[Flags]
public enum BoundaryCondition
{
    /// <summary>The node is free.</summary>
    None = 0,

    /// <summary>Its x is fixed: it lies in a plane of symmetry x = const.</summary>
    FixedX = 1,

    /// <summary>Its y is fixed: it lies in a plane of symmetry y = const.</summary>
    FixedY = 2,

    /// <summary>It is clamped in the frame and moves with it.</summary>
    Clamped = 7,
}
