using System.Collections.Immutable;
using System.Text.Json.Serialization;
using BuckGen.Cutting.Boards;
using BuckGen.Cutting.Costs;
using BuckGen.Findings;
using BuckGen.Intake.Catalogs;

namespace BuckGen.Output.Reports;

/// <summary>Every number of a job, as it stands in summary.json; lengths in mm, areas in mm², angles in degrees.</summary>
/// <remarks>The file's form is described by summary.schema.json beside this source.</remarks>
/// <param name="Schema">Name and version of the form.</param>
/// <param name="Title">What the job is called.</param>
/// <param name="Units">Always "mm".</param>
/// <param name="Outline">What was read.</param>
/// <param name="Buck">What is wanted and what results.</param>
/// <param name="Footprint">Size of the designed outline where the formed part meets its flange.</param>
/// <param name="Layers">The layers, lowest first.</param>
/// <param name="Dowels">The dowel holes, each once.</param>
/// <param name="Vents">The vents; none when there are none.</param>
/// <param name="Air">How the air leaves; null without vents.</param>
/// <param name="Sizing">How the buck was sized from the part.</param>
/// <param name="Part">The finished part; null when the sheet is not known, or when nothing is formed.</param>
/// <param name="Blank">The blank; null when the sheet is not known.</param>
/// <param name="Formed">The predicted wall of the part; null when it was not predicted.</param>
/// <param name="Jig">The trim jig; null for none.</param>
/// <param name="Flange">The flange template; null for none.</param>
/// <param name="Panel">The face panel; null for none.</param>
/// <param name="Accessories">The layers of jigs and panel.</param>
/// <param name="Cutting">How the boards are cut.</param>
/// <param name="Boards">The boards.</param>
/// <param name="CutLength">Length cut through in all boards.</param>
/// <param name="Cost">Time and money; null when the shop has given no rates, prices or feeds.</param>
/// <param name="Checks">What the design was checked against.</param>
/// <param name="Findings">What to know before cutting, the gravest first.</param>
/// <param name="Files">Every file of the output folder.</param>
public sealed record Summary(
    string Schema, string Title, string Units, OutlineReport Outline, BuckReport Buck, FootprintReport Footprint,
    ImmutableArray<LayerReport> Layers, ImmutableArray<DowelReport> Dowels,
    ImmutableArray<VentReport> Vents, AirReport? Air, SizingReport Sizing, PartReport? Part,
    BlankReport? Blank, FormedReport? Formed,
    JigReport? Jig, FlangeReport? Flange,
    PanelReport? Panel, ImmutableArray<AccessoryReport> Accessories, CuttingReport Cutting, ImmutableArray<BoardReport> Boards,
    double CutLength, CostReport? Cost, ChecksReport Checks,
    ImmutableArray<FindingReport> Findings, ImmutableArray<string> Files)
{
    /// <summary>The plates that are cut in pieces; null, and not written, when none is.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ImmutableArray<PlateReport>? Plates { get; init; }

    /// <summary>The bucks of a sign that is made in several; null, and not written, for one buck.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ImmutableArray<GroupReport>? Groups { get; init; }

    /// <summary>Name and version of the form.</summary>
    public const string SchemaId = SchemaFamily + "1";

    /// <summary>What the name of every version starts with.</summary>
    public const string SchemaFamily = "buckgen-summary/";

    /// <summary>Sums up a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="title">What the job is called; empty for the outline's name.</param>
    /// <param name="files">The files made from it.</param>
    /// <param name="rates">The shop's rates; null for none.</param>
    /// <param name="findings">The findings, when more are known than those of the plan.</param>
    public static Summary Create(CutPlan plan, string title, ImmutableArray<string> files, RateSpec? rates = null,
        ImmutableArray<Finding> findings = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var design = plan.Design;
        return new(
            SchemaId, title.Length > 0 ? title : design.Outline.Name, "mm",
            OutlineReport.Create(design.Outline), BuckReport.Create(design), FootprintReport.Create(design.Footprint),
            [.. design.Layers.Select(l => LayerReport.Create(design, l, files))],
            [.. design.Layers.SelectMany(l => l.Parts.SelectMany(p => p.Dowels)
                    .Select(d => (Hole: d, l.Number))).GroupBy(d => d.Hole).Select(DowelReport.Create)],
            [.. design.Vents is { } all
                ? all.Vents.Select(v => VentReport.Create(v, DrillSeries.Of(all.Spec.Drills))) : []],
            design.Vents is { } vents ? AirReport.Create(vents) : null,
            SizingReport.Create(design.Sizing), design.Part is { } part ? PartReport.Create(part, design.Mating) : null,
            design.Blank is { } blank
                ? BlankReport.Create(blank, design.Spec.Sheet!.Plastic?.Id ?? "") : null,
            design.Formed is { } formed ? FormedReport.Create(formed) : null,
            design.Jig is { } jig ? JigReport.Create(jig) : null, design.Flange is { } flange
                ? FlangeReport.Create(flange) : null,
            design.Panel is { } panel ? PanelReport.Create(panel) : null, [.. AccessoryReport.Create(design, files)],
            CuttingReport.Create(plan.Spec), [.. plan.Boards.Select(b => BoardReport.Create(b, files))],
            ReportNumber.Round(plan.CutLength),
            JobCost.Compute(plan, rates ?? RateSpec.None) is { } cost ? CostReport.Create(cost) : null,
            ChecksReport.Create(design.Spec),
            [.. (findings.IsDefault ? plan.AllFindings : findings).Select(FindingReport.Create)], files)
        {
            Groups = plan.Groups.IsEmpty ? null : GroupReport.Create(plan),
            Plates = plan.Plates.IsEmpty ? null : [.. plan.Plates.Select(PlateReport.Create)],
        };
    }

    /// <summary>A listed file's path, or null when it was not made.</summary>
    internal static string? Listed(string path, ImmutableArray<string> files) => files.Contains(path) ? path : null;
}
