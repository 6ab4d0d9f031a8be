using System.Collections.Immutable;
using BuckGen.Design.Checks;
using BuckGen.Design.Trimming;

namespace BuckGen.Design;

/// <summary>The extensions that a design uses. The default is what comes with the library.</summary>
public sealed record DesignExtensions
{
    /// <summary>What comes with the library.</summary>
    public static DesignExtensions BuiltIn { get; } = new();

    /// <summary>The checks of the design.</summary>
    public ImmutableArray<IDesignCheck> Checks { get; init; } = DesignChecks.BuiltIn;

    /// <summary>What follows the forming.</summary>
    public ImmutableArray<IJig> Jigs { get; init; } = BuiltInJigs.All;
}
