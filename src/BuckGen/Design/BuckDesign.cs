using System.Collections.Immutable;
using BuckGen.Cancellation;
using BuckGen.Design.Bucks;
using BuckGen.Design.Forming;
using BuckGen.Design.Parts;
using BuckGen.Design.Prediction;
using BuckGen.Design.Specs;
using BuckGen.Design.Trimming;
using BuckGen.Design.Venting;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;
using BuckGen.Settings;

namespace BuckGen.Design;

/// <summary>Everything decided about a buck. Every output is made from this and decides no geometry of its own.</summary>
/// <param name="Outline">The outline as read.</param>
/// <param name="Spec">What is wanted.</param>
/// <param name="Plan">The stocks chosen and the depth that results.</param>
/// <param name="Layers">The layers, lowest first.</param>
/// <param name="Vents">The vents; null when there are none.</param>
/// <param name="Footprint">The designed outline at the foot of the wall: where the formed part meets its flange.</param>
/// <param name="Findings">What its maker should know: the gravest first, then from the bottom up, numbered from 1.</param>
public sealed record BuckDesign(
    Outline Outline, BuckSpec Spec, StackPlan Plan, ImmutableArray<Layer> Layers, VentDesign? Vents, Region Footprint,
    ImmutableArray<Finding> Findings)
{
    /// <summary>How the buck was sized so that the part comes out right.</summary>
    public PartSizing Sizing { get; init; } = PartSizing.None;

    /// <summary>The finished part; null when the sheet is not known, or when nothing of it is left.</summary>
    public FinishedPart? Part { get; init; }

    /// <summary>How this part, a lid, mates with the one that it closes; null for a part that is no lid.</summary>
    public MatingPlay? Mating { get; init; }

    /// <summary>The blank; null when the sheet is not known.</summary>
    public Blank? Blank { get; init; }

    /// <summary>What follows the forming: jigs and panel, those of plug-ins last.</summary>
    public ImmutableArray<JigParts> Jigs { get; init; } = [];

    /// <summary>The trim jig; null when there is none.</summary>
    public TrimJig? Jig => Jigs.OfType<TrimJig>().FirstOrDefault();

    /// <summary>The flange template and its nest; null when there are none.</summary>
    public FlangeTemplate? Flange => Jigs.OfType<FlangeTemplate>().FirstOrDefault();

    /// <summary>The face panel; null when there is none.</summary>
    public FacePanel? Panel => Jigs.OfType<FacePanel>().FirstOrDefault();

    /// <summary>
    /// The bucks of a sign that is made in several; then the whole has no layers of its own. None for one buck.
    /// </summary>
    public ImmutableArray<BuckGroup> Groups { get; init; } = [];

    /// <summary>The layers of jigs and panels, in the order in which they are laid out.</summary>
    public IEnumerable<Layer> Accessories => Jigs.SelectMany(j => j.Layers);

    /// <summary>The predicted part; null when none was asked for, or when a finding says why there is none.</summary>
    public FormedPart? Formed { get; init; }

    /// <summary>The drafted wood, for models; null in a design assembled in code.</summary>
    internal StackedSolid? Solid { get; init; }

    /// <summary>Height of the whole stack, base plate included, mm.</summary>
    public double Height => Layers.IsEmpty ? 0 : Layers[^1].Top;

    /// <summary>True for a layer that the round of the upper edge reaches.</summary>
    internal bool IsRounded(Layer layer) =>
        Spec.EdgeRadius > 0 && layer.Role == LayerRole.Wall && Solid is { Shape: var shape } && layer.Top > shape.RoundFrom;

    /// <summary>Designs a buck from an outline.</summary>
    /// <param name="outline">A healed outline.</param>
    /// <param name="spec">What is wanted.</param>
    /// <param name="extensions">Checks and jigs; null for those that come with the library.</param>
    /// <param name="progress">Receives every step.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="OperationCanceledException">The work was stopped; the results of extensions that are still running are
    /// discarded.</exception>
    /// <exception cref="SpecException">A number of the spec is out of range, or a limit of the work is exceeded.</exception>
    /// <exception cref="OutlineException">The outline is too large or can't be offset.</exception>
    public static BuckDesign Create(
        Outline outline, BuckSpec spec, DesignExtensions? extensions = null, IProgress<DesignProgress>? progress = null,
        CancellationToken cancellation = default) =>
        CancellableWork.Run(() =>
            BuckDesigner.Design(outline, spec, extensions ?? DesignExtensions.BuiltIn, progress, cancellation), cancellation);

    /// <summary>Designs the buck of a lid for the part of this design.</summary>
    /// <param name="lid">What is wanted of the lid.</param>
    /// <param name="extensions">Checks and jigs; null for those that come with the library.</param>
    /// <param name="progress">Receives every step.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    /// <exception cref="SpecException">A number is out of range, or nothing is formed that the lid could be sized
    /// from.</exception>
    public BuckDesign CreateLid(LidSpec lid, DesignExtensions? extensions = null, IProgress<DesignProgress>? progress = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(lid);
        return CancellableWork.Run(
            () => LidDesigner.Design(this, lid, extensions ?? DesignExtensions.BuiltIn, progress, cancellation), cancellation);
    }
}
