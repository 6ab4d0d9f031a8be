namespace BuckGen.Geometry.Offsetting;

/// <summary>To which side an offset moves the pieces of an outline.</summary>
internal enum MovedSides
{
    /// <summary>
    /// Away from the material, which a drawn loop has to its left. Quick, and right for every outline that does not cross itself.
    /// </summary>
    Drawn,

    /// <summary>
    /// To both sides. Where an outline crosses itself by less than the healer can see, a short stretch has its material on the
    /// right; only the winding round the moved piece decides.
    /// </summary>
    Both,
}
