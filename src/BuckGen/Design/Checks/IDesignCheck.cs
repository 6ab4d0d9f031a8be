using BuckGen.Findings;

namespace BuckGen.Design.Checks;

/// <summary>A check of every design before wood is cut.</summary>
public interface IDesignCheck
{
    /// <summary>Its name, in one word.</summary>
    string Name { get; }

    /// <summary>The findings; none when all is well.</summary>
    /// <param name="design">The design, as far as it is made.</param>
    IEnumerable<Finding> Run(DesignView design);
}
