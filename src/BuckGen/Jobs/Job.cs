using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Design.Parts;
using BuckGen.Design.Prediction;
using BuckGen.Design.Specs;
using BuckGen.Design.Trimming;
using BuckGen.Intake.Outlines;
using BuckGen.Output.Files;

namespace BuckGen.Jobs;

/// <summary>A whole job: the outline's file and everything a maker decides.</summary>
/// <param name="Title">What the job is called.</param>
/// <param name="OutlineFile">Path of the outline, as written in the job file.</param>
/// <param name="Reading">How the outline is read.</param>
/// <param name="Buck">The buck.</param>
/// <param name="Cutting">How the boards are cut.</param>
/// <param name="Output">Which files are made.</param>
public sealed record Job(
    string Title, string OutlineFile, OutlineOptions Reading, BuckSpec Buck, CuttingSpec Cutting, OutputOptions Output)
{
    /// <summary>The checks and jigs that take part in the design.</summary>
    public DesignExtensions Design { get; init; } = DesignExtensions.BuiltIn;

    /// <summary>How the wall is predicted when that is asked for; <see cref="BuckSpec.Prediction"/> says whether it is.</summary>
    public FormingSpec Forming { get; init; } = new();

    /// <summary>The lid that is made along; null for none.</summary>
    public LidSpec? Lid { get; init; }

    /// <summary>The panel's own drawing, to be read and put into <see cref="PanelSpec.Outline"/>; null for none.</summary>
    public FurtherDrawing? PanelDrawing { get; init; }

    /// <summary>The drawing of the flange's rim, for <see cref="FlangeSpec.Outline"/>; null for none.</summary>
    public FurtherDrawing? FlangeDrawing { get; init; }

    /// <summary>The same job without the prediction of the wall.</summary>
    public Job WithoutPrediction() => this with { Buck = Buck with { Prediction = null } };

    /// <summary>The same job with the panel's drawing read.</summary>
    /// <param name="outline">What was read from the file of <see cref="PanelDrawing"/>.</param>
    public Job WithPanel(Outline outline)
    {
        ArgumentNullException.ThrowIfNull(outline);
        return this with { Buck = Buck with { Panel = Buck.Panel! with { Outline = outline.Region } } };
    }

    /// <summary>The same job with the drawing of the flange's rim read.</summary>
    /// <param name="outline">What was read from the file of <see cref="FlangeDrawing"/>.</param>
    public Job WithFlange(Outline outline)
    {
        ArgumentNullException.ThrowIfNull(outline);
        return this with { Buck = Buck with { Flange = Buck.Flange! with { Outline = outline.Region } } };
    }
}

/// <summary>A drawing besides that of the part: of a panel's outline, or of a flange's rim.</summary>
/// <param name="File">Its path, as written in the job file.</param>
/// <param name="Reading">How it is read.</param>
public sealed record FurtherDrawing(string File, OutlineOptions Reading);
