using System.Collections.Immutable;
using BuckGen.Bucks;
using BuckGen.Checks;
using BuckGen.Geometry;
using BuckGen.Sheets;

namespace BuckGen.Reports;

/// <summary>Every number of a job, as it stands in summary.json; lengths in mm, areas in mm², angles in degrees.</summary>
/// <remarks>The file's form is described by summary.schema.json beside this source.</remarks>
/// <param name="Schema">Name and version of the form.</param>
/// <param name="Title">What the job is called.</param>
/// <param name="Units">Always "mm".</param>
/// <param name="Outline">What was read.</param>
/// <param name="Buck">What was asked for and what results.</param>
/// <param name="Footprint">Size of the designed outline where the formed part meets its flange.</param>
/// <param name="Layers">The layers, lowest first.</param>
/// <param name="Dowels">The dowel holes, each once.</param>
/// <param name="Vents">Vent holes; none are designed yet.</param>
/// <param name="Cutting">How the sheets are cut.</param>
/// <param name="Sheets">The sheets.</param>
/// <param name="CutLength">Length cut through in all sheets.</param>
/// <param name="Findings">What to know before cutting, the gravest first.</param>
/// <param name="Files">Every file of the output folder.</param>
public sealed record Summary(
    string Schema, string Title, string Units, OutlineReport Outline, BuckReport Buck, FootprintReport Footprint,
    ImmutableArray<LayerReport> Layers, ImmutableArray<DowelReport> Dowels, ImmutableArray<VentReport> Vents,
    CuttingReport Cutting, ImmutableArray<SheetReport> Sheets, double CutLength,
    ImmutableArray<FindingReport> Findings, ImmutableArray<string> Files)
{
    /// <summary>Name and version of the form.</summary>
    public const string SchemaId = "buckgen-summary/1";

    /// <summary>Sums up a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="title">What the job is called; empty for the outline's name.</param>
    /// <param name="files">The files made from it.</param>
    public static Summary Of(CutPlan plan, string title, ImmutableArray<string> files)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var design = plan.Design;
        return new(
            SchemaId, title.Length > 0 ? title : design.Outline.Name, "mm", OutlineReport.Of(design.Outline), BuckReport.Of(design), FootprintReport.Of(design.Footprint),
            [.. design.Layers.Select(l => LayerReport.Of(l, plan, files))],
            [.. design.Layers.SelectMany(l => l.Parts.SelectMany(p => p.Dowels)
                    .Select(d => (Hole: d, l.Number))).GroupBy(d => d.Hole).Select(DowelReport.Of)],
            [], CuttingReport.Of(plan.Spec), [.. plan.Sheets.Select(s => SheetReport.Of(s, files))], Rounded.Of(plan.CutLength),
            [.. plan.AllFindings.Select(FindingReport.Of)], files);
    }

    /// <summary>A listed file's path, or null when it was not made.</summary>
    internal static string? Listed(string path, ImmutableArray<string> files) => files.Contains(path) ? path : null;
}

/// <summary>What was asked for and what results.</summary>
/// <param name="Kind">"male" or "female".</param>
/// <param name="DepthWanted">Wanted depth.</param>
/// <param name="Depth">Depth of the stack without its base plate.</param>
/// <param name="DepthMiss">Real less wanted depth.</param>
/// <param name="Height">Height of the whole stack with its base plate.</param>
/// <param name="Draft">Draft, degrees.</param>
/// <param name="OutlineAt">"face" or "base": where the outline is to size.</param>
/// <param name="Corners">"round" or "mitre".</param>
/// <param name="Steps">"outside", "inside" or "middle".</param>
/// <param name="Shrinkage">Shrinkage allowed for, per cent.</param>
/// <param name="Tolerance">Chord error.</param>
public sealed record BuckReport(
    string Kind, double DepthWanted, double Depth, double DepthMiss, double Height, double Draft,
    string OutlineAt, string Corners, string Steps, double Shrinkage, double Tolerance)
{
    internal static BuckReport Of(BuckDesign d) => new(
        Word(d.Spec.Kind), d.Spec.Depth, Rounded.Of(d.Plan.Depth), Rounded.Of(d.Plan.Miss), Rounded.Of(d.Height), d.Spec.Draft,
        Word(d.Spec.OutlineAt), Word(d.Spec.Corners.Corners), Word(d.Spec.Steps), d.Spec.Shrinkage, d.Spec.Tolerance.Chord);

    internal static string Word<T>(T value) where T : struct, Enum => value.ToString().ToLowerInvariant();
}

/// <summary>Size of a region.</summary>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
/// <param name="Area">Area.</param>
public sealed record FootprintReport(double Width, double Height, double Area)
{
    internal static FootprintReport Of(Region region) => region.IsEmpty
        ? new(0, 0, 0)
        : new(Rounded.Of(region.Bounds.Width), Rounded.Of(region.Bounds.Height), Rounded.Of(region.Area));
}

/// <summary>One layer.</summary>
/// <param name="Number">1 for the lowest.</param>
/// <param name="Role">"wall" or "base".</param>
/// <param name="Stock">Name of the sheet.</param>
/// <param name="Thickness">Thickness.</param>
/// <param name="Bottom">Height of the lower face.</param>
/// <param name="Top">Height of the upper face.</param>
/// <param name="File">The layer's DXF, or null when it was not written.</param>
/// <param name="Area">Area of its wood, dowel holes not taken off.</param>
/// <param name="Islands">Number of separate pieces.</param>
/// <param name="Holes">Number of holes, dowels not counted.</param>
/// <param name="CutLength">Length cut through on the machine, dowels counted.</param>
/// <param name="Bounds">Bounds of its wood.</param>
public sealed record LayerReport(
    int Number, string Role, string Stock, double Thickness, double Bottom, double Top, string? File, double Area,
    int Islands, int Holes, double CutLength, BoundsReport Bounds)
{
    internal static LayerReport Of(Layer layer, CutPlan plan, ImmutableArray<string> files)
    {
        var (region, dowels) = (layer.Region, layer.Parts.SelectMany(p => p.Dowels));
        // Nominal edges; what the machine runs differs by the kerf and is summed in the plan.
        var cut = region.Perimeter + dowels.Sum(d => Math.PI * d.Diameter);
        return new(
            layer.Number, BuckReport.Word(layer.Role), layer.Stock.Name, Rounded.Of(layer.Thickness), Rounded.Of(layer.Bottom),
            Rounded.Of(layer.Top), Summary.Listed(OutputFiles.LayerPath(layer.Number), files), Rounded.Of(region.Area),
            region.Islands.Length, region.HoleCount, Rounded.Of(cut), BoundsReport.Of(region.Bounds));
    }
}

/// <summary>A dowel hole.</summary>
/// <param name="X">Centre.</param>
/// <param name="Y">Centre.</param>
/// <param name="Diameter">Diameter of the hole.</param>
/// <param name="FromLayer">Lowest layer it goes through.</param>
/// <param name="ToLayer">Highest layer it goes through.</param>
public sealed record DowelReport(double X, double Y, double Diameter, int FromLayer, int ToLayer)
{
    internal static DowelReport Of(IGrouping<DowelHole, (DowelHole Hole, int Layer)> hole) => new(
        Rounded.Of(hole.Key.Centre.X), Rounded.Of(hole.Key.Centre.Y), Rounded.Of(hole.Key.Diameter),
        hole.Min(h => h.Layer), hole.Max(h => h.Layer));
}

/// <summary>A vent hole.</summary>
/// <param name="X">Centre.</param>
/// <param name="Y">Centre.</param>
/// <param name="Diameter">Diameter.</param>
/// <param name="Layer">Layer it is in.</param>
/// <param name="Reason">Why it is there.</param>
public sealed record VentReport(double X, double Y, double Diameter, int Layer, string Reason);

/// <summary>How the sheets are cut.</summary>
/// <param name="Machine">"laser" or "router".</param>
/// <param name="Kerf">Full width of the cut that was allowed for; 0 for a router.</param>
/// <param name="Spacing">Least distance between parts.</param>
/// <param name="EdgeMargin">Least distance to the edge of the sheet.</param>
public sealed record CuttingReport(string Machine, double Kerf, double Spacing, double EdgeMargin)
{
    internal static CuttingReport Of(CuttingSpec s) => new(BuckReport.Word(s.Machine), 2 * s.Compensation, s.Spacing, s.EdgeMargin);
}

/// <summary>One sheet to cut.</summary>
/// <param name="Stock">Name of the sheet.</param>
/// <param name="Thickness">Thickness.</param>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
/// <param name="File">The sheet's DXF, or null when it was not written.</param>
/// <param name="Utilisation">Area of parts over area of sheet, 0 to 1.</param>
/// <param name="Parts">Lettering of the parts on it.</param>
public sealed record SheetReport(
    string Stock, double Thickness, double Width, double Height, string? File, double Utilisation, ImmutableArray<string> Parts)
{
    internal static SheetReport Of(SheetLayout s, ImmutableArray<string> files) => new(
        s.Stock.Name, s.Stock.Thickness, s.Stock.SheetWidth, s.Stock.SheetHeight,
        Summary.Listed(OutputFiles.SheetPath(s), files), Rounded.Of(s.Utilisation), [.. s.Placements.Select(p => p.Part.Name)]);
}

/// <summary>Something to know before cutting.</summary>
/// <param name="Id">A short stable word.</param>
/// <param name="Severity">"note", "warning" or "error".</param>
/// <param name="Message">What is so.</param>
/// <param name="X">Place in the plan.</param>
/// <param name="Y">Place in the plan.</param>
/// <param name="Z">Height above the bottom of the stack.</param>
/// <param name="Value">The measured value.</param>
/// <param name="Limit">The limit.</param>
/// <param name="Source">Where the rule comes from.</param>
/// <param name="Remedy">What can be done.</param>
public sealed record FindingReport(
    string Id, string Severity, string Message, double? X, double? Y, double? Z, double? Value, double? Limit, string Source, string Remedy)
{
    internal static FindingReport Of(Finding f) => new(
        f.Id, BuckReport.Word(f.Severity), f.Message, Rounded.Of(f.Place?.X), Rounded.Of(f.Place?.Y), Rounded.Of(f.Height),
        Rounded.Of(f.Value), Rounded.Of(f.Limit), f.Source, f.Remedy);
}
