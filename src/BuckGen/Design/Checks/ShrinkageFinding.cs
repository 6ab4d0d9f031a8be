using BuckGen.Findings;
using BuckGen.Intake.Catalogs;

namespace BuckGen.Design.Checks;

/// <summary>Tells when the drawing shows the part and nothing says how much that shrinks.</summary>
internal static class ShrinkageFinding
{
    /// <summary>The finding; none when the shrinkage is known or the drawing shows the buck.</summary>
    /// <param name="showsPart">True when the drawing shows the part.</param>
    /// <param name="shrinkage">The shrinkage that the maker gives.</param>
    /// <param name="ofPlastic">That of the plastic.</param>
    public static IEnumerable<Finding> Find(bool showsPart, double? shrinkage, FigureRange? ofPlastic)
    {
        if (showsPart && shrinkage is null && ofPlastic is null)
            yield return new("shrinkage-unknown", Severity.Warning,
                "The drawing shows the part, but neither its plastic nor its shrinkage is given: no shrinkage is allowed for.",
                "Name the plastic, or its shrinkage.")
            {
                Value = 0,
            };
    }
}
