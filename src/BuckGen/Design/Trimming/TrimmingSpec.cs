using BuckGen.Design.Bucks;
using BuckGen.Design.Checks;
using BuckGen.Design.Forming;

namespace BuckGen.Design.Trimming;

/// <summary>What a maker decides about all that follows the forming.</summary>
/// <param name="Stack">The stack of wood, with the stock and the dowels.</param>
/// <param name="Sheet">The plastic sheet.</param>
/// <param name="Checks">The limits that jigs and panels are checked against.</param>
public sealed record TrimmingSpec(StackSpec Stack, SheetSpec Sheet, CheckSpec Checks)
{
    /// <summary>The trim jig; null for none.</summary>
    public JigSpec? Jig { get; init; }

    /// <summary>The flange template and its nest; null for none.</summary>
    public FlangeSpec? Flange { get; init; }

    /// <summary>The face panel; null for none.</summary>
    public PanelSpec? Panel { get; init; }
}
