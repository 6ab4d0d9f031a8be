using System.Collections.Immutable;
using BuckGen.Cutting.Costs;
using BuckGen.Cutting.CutFiles;
using BuckGen.Cutting.Drilling;
using BuckGen.Dxf;
using BuckGen.Output.Pictures.Drawing;
using BuckGen.Output.Reports;

namespace BuckGen.Output.Files;

/// <summary>Which files are made.</summary>
/// <param name="Title">What the job is called; empty for the outline's name.</param>
/// <param name="DxfVersion">The version of DXF.</param>
/// <param name="Svg">True for an SVG beside every DXF.</param>
/// <param name="Drilling">How a machine drills the vents; null for no drill programs.</param>
public sealed record OutputOptions(string Title = "", DxfVersion DxfVersion = DxfVersion.R12, bool Svg = false,
    DrillProgramSpec? Drilling = null)
{
    /// <summary>The paper that templates are printed on.</summary>
    public Paper Paper { get; init; } = Paper.A4;

    /// <summary>Further kinds of cut files, beside DXF and SVG.</summary>
    public ImmutableArray<ICutFileFormat> Formats { get; init; } = [];

    /// <summary>Further sections of the process card, after the order of work.</summary>
    public ImmutableArray<IReportSection> Sections { get; init; } = [];

    /// <summary>True for solid models of the buck: files of their own, and one to turn in the report.</summary>
    public bool Model { get; init; }

    /// <summary>The shop's rates, for the cost of the job.</summary>
    public RateSpec Rates { get; init; } = RateSpec.None;
}
