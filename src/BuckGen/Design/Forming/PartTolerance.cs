namespace BuckGen.Design.Forming;

/// <summary>How far a dimension of a finished part may be off, either way: one figure to 300 mm, more beyond.</summary>
/// <remarks>
/// Source: the tolerance page of a former of heavy sheet, in inches there: one figure for the first 12 in, 0.001 in more per
/// inch.
/// </remarks>
/// <param name="First">For dimensions up to 300 mm, mm.</param>
internal sealed record PartTolerance(double First)
{
    /// <summary>Where the first figure ends, mm, and what each further step of 25 mm adds, mm.</summary>
    private const double FirstLength = 300, Step = 25, PerStep = 0.025;

    /// <summary>
    /// Between formed faces: the page's row for prototype tools without temperature control. That a wooden buck is one is common
    /// practice (no source).
    /// </summary>
    public static PartTolerance Formed { get; } = new(1.2);

    /// <summary>Between trimmed edges, the coarser of the page's classes: work by hand.</summary>
    public static PartTolerance Trimmed { get; } = new(0.75);

    /// <summary>Between trimmed edges, the finer class: work by machine.</summary>
    public static PartTolerance TrimmedByMachine { get; } = new(0.5);

    /// <summary>Between the middles of holes.</summary>
    public static PartTolerance HoleSpacing { get; } = new(0.55);

    /// <summary>The tolerance of a dimension, mm either way.</summary>
    /// <param name="length">The dimension, mm, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The dimension is below 0.</exception>
    public double At(double length)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(length);
        return First + Math.Max(0, length - FirstLength) / Step * PerStep;
    }
}
