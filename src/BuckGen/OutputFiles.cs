using System.Collections.Immutable;
using System.Globalization;
using BuckGen.CutFiles;
using BuckGen.Reports;
using BuckGen.Sheets;

namespace BuckGen;

/// <summary>Every file of a job, made in memory. The same plan gives the same bytes.</summary>
public static class OutputFiles
{
    /// <summary>
    /// The layers, the sheets to cut and the summary; only the summary when the plan has errors and is not forced.
    /// </summary>
    /// <param name="plan">The design laid out on sheets.</param>
    /// <param name="options">Which files.</param>
    /// <param name="force">True to make the cut files in spite of errors.</param>
    public static ImmutableArray<OutputFile> Of(CutPlan plan, OutputOptions options, bool force = false)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);
        var files = ImmutableArray.CreateBuilder<OutputFile>();
        if (!plan.HasErrors || force)
        {
            foreach (var layer in plan.Design.Layers) Add(files, LayerPath(layer.Number), LayerDrawing.Of(layer), options);
            foreach (var sheet in plan.Sheets) Add(files, SheetPath(sheet), SheetDrawing.Of(sheet), options);
        }

        var withSummary = files.Select(f => f.Path).Append(SummaryPath);
        files.Add(new(SummaryPath, SummaryJson.Write(Summary.Of(plan, options.Title, [.. withSummary]))));
        return files.ToImmutable();
    }

    /// <summary>Path of the summary below the output folder.</summary>
    public const string SummaryPath = "summary.json";

    /// <summary>Path of a layer's DXF below the output folder.</summary>
    internal static string LayerPath(int number) => string.Create(CultureInfo.InvariantCulture, $"layers/layer-{number:00}.dxf");

    /// <summary>Path of a sheet's DXF below the output folder.</summary>
    internal static string SheetPath(SheetLayout sheet) =>
        string.Create(CultureInfo.InvariantCulture, $"cut/sheet-{sheet.Number:00}-{FileName(sheet.Stock.Name)}.dxf");

    private static void Add(ImmutableArray<OutputFile>.Builder files, string path, CutDrawing drawing, OutputOptions options)
    {
        files.Add(new(path, DxfCutFile.Write(drawing, options.DxfVersion)));
        if (options.Svg) files.Add(new(System.IO.Path.ChangeExtension(path, ".svg"), SvgCutFile.Write(drawing)));
    }

    /// <summary>Lower-case letters and digits of a name, joined by dashes: "MDF 12 mm" becomes "mdf-12-mm".</summary>
    private static string FileName(string name)
    {
        var kept = name.Select(c => char.IsAsciiLetterOrDigit(c) || c == '.' ? char.ToLowerInvariant(c) : '-').ToArray();
        var parts = new string(kept).Split('-', StringSplitOptions.RemoveEmptyEntries);
        return parts.Length == 0 ? "stock" : string.Join('-', parts);
    }
}
