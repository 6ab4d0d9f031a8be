using BuckGen.Design.Bucks;
using BuckGen.Design.Checks;
using BuckGen.Design.Forming;
using BuckGen.Design.Grouping;
using BuckGen.Design.Parts;
using BuckGen.Design.Prediction;
using BuckGen.Design.Trimming;
using BuckGen.Design.Venting;
using BuckGen.Intake.Catalogs;
using BuckGen.Settings;

namespace BuckGen.Design.Specs;

/// <summary>Everything a maker decides about a buck. Lengths in mm, angles in degrees.</summary>
public sealed record BuckSpec : StackSpec
{
    /// <summary>
    /// Shrinkage of the plastic on cooling, per cent of length, 0 to 10; the buck is made larger by it. Null to follow the
    /// drawing: nothing when it shows the buck; the middle of the plastic's range in the catalog when it shows the part.
    /// </summary>
    public double? Shrinkage { get; init; }

    /// <summary>The shrinkage allowed for, per cent.</summary>
    public double ShrinkageAllowed => Shrinkage ?? (Part is null ? 0 : ShrinkageOfPlastic?.Middle ?? 0);

    /// <summary>The shrinkage that the part has, allowed for or not, per cent; 0 when it is not known.</summary>
    internal double ShrinkageOfPart => Shrinkage ?? ShrinkageOfPlastic?.Middle ?? 0;

    /// <summary>The plastic's range for a buck of this kind, per cent; null when the plastic is not known.</summary>
    internal FigureRange? ShrinkageOfPlastic => Sheet?.ShrinkageFor(Kind);

    /// <summary>The vents; null for none. They need a base plate.</summary>
    public VentSpec? Vents { get; init; }

    /// <summary>The layer under the base that leads the air away; null for none. It needs a base plate.</summary>
    public PlenumSpec? Plenum { get; init; }

    /// <summary>The plastic sheet; null when not given. The blank, vents, jigs and panels need it.</summary>
    public SheetSpec? Sheet { get; init; }

    /// <summary>The former.</summary>
    public FormerSpec Former { get; init; } = new();

    /// <summary>How the wall of the formed part is predicted; null for no prediction. It needs the plastic sheet.</summary>
    public FormingSpec? Prediction { get; init; }

    /// <summary>
    /// The finished part, when drawing and depth are its own; null when they are those of the buck. It decides
    /// <see cref="StackSpec.OutlineAt"/>, and needs the plastic sheet.
    /// </summary>
    public PartSpec? Part { get; init; }

    /// <summary>The trim jig; null for none.</summary>
    public JigSpec? Jig { get; init; }

    /// <summary>The flange template and its nest; null for none.</summary>
    public FlangeSpec? Flange { get; init; }

    /// <summary>The face panel; null for none.</summary>
    public PanelSpec? Panel { get; init; }

    /// <summary>The sign is made in several bucks that fit the frame; null for one buck. It needs sheet and frame.</summary>
    public GroupSpec? Groups { get; init; }

    /// <summary>The limits that the design is checked against.</summary>
    public CheckSpec Checks { get; init; } = new();

    /// <summary>The limits that depend on kind and plastic.</summary>
    internal PlasticLimits Limits => new(Kind, Sheet?.Plastic, Former.PlugGap is not null, Checks);

    /// <inheritdoc/>
    public override void Validate()
    {
        BuckSettings.Shrinkage.Require(Shrinkage);
        Vents?.Validate(Base);
        Sheet?.Validate();
        Former.Validate();
        Checks.Validate();
        Part?.Validate();
        Jig?.Validate();
        Flange?.Validate();
        Panel?.Validate();
        if (Sheet is null && (Vents is not null || Jig is not null || Flange is not null || Panel is not null))
            throw new SpecException(
                "Vents, jigs and panels are sized from the formed sheet: give the thickness of the plastic sheet.");
        if (Sheet is null && Part is not null)
            throw new SpecException("To size the buck from the part, give the thickness of the plastic sheet.");
        if (Jig is not null && Part?.CutHeight is not null)
            throw new SpecException(
                "The part is cut by the ring of the jig; leave the height of the cut out, or the jig.");
        if (Sheet is null && Prediction is not null)
            throw new SpecException("To predict the wall, give the thickness of the plastic sheet.");
        Groups?.Validate();
        if (Groups is not null && (Sheet is null || Former.Opening is null))
            throw new SpecException(
                "To make the sign in several bucks, give the thickness of the plastic sheet and the frame of the former.");
        if (Groups is not null && Flange?.Outline is not null)
            throw new SpecException(
                "The flange has a drawn rim, which is that of one buck; leave the drawing out to make several bucks.");
        Prediction?.Validate();
        Plenum?.Validate(Base);
        base.Validate();
    }
}
