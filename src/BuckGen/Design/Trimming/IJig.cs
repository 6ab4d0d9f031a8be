using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Findings;

namespace BuckGen.Design.Trimming;

/// <summary>
/// Something cut from boards that follows the forming: a jig that holds or trims the part, a panel it goes into.
/// </summary>
public interface IJig
{
    /// <summary>Its word, such as "ring".</summary>
    string Name { get; }

    /// <summary>Makes it; null when the job has none.</summary>
    /// <param name="part">The formed part.</param>
    /// <param name="spec">What the maker wants.</param>
    JigParts? Make(PartShell part, TrimmingSpec spec);
}

/// <summary>The layers of a jig, cut from boards beside those of the buck.</summary>
/// <param name="Layers">
/// The layers, made by <see cref="PlainLayers"/>; their names are capital letters, since files are called after them.
/// </param>
/// <param name="Findings">What its maker should know.</param>
public record JigParts(ImmutableArray<Layer> Layers, ImmutableArray<Finding> Findings);
