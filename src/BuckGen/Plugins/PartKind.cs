using System.Collections.Immutable;
using BuckGen.Cutting.CutFiles;
using BuckGen.Design.Checks;
using BuckGen.Design.Trimming;
using BuckGen.Design.Venting;
using BuckGen.Intake.Catalogs;
using BuckGen.Intake.Outlines;
using BuckGen.Output.Reports;

namespace BuckGen.Plugins;

/// <summary>A kind of extension.</summary>
/// <param name="Word">What it is in plain words.</param>
/// <param name="Interface">What it must have.</param>
/// <param name="NameOf">Its own name.</param>
internal sealed record PartKind(string Word, Type Interface, Func<object, string> NameOf)
{
    public static ImmutableArray<PartKind> All { get; } =
    [
        new("outline reader", typeof(IOutlineFormat), o => ((IOutlineFormat)o).Name),
        new("vent pattern", typeof(IVentPattern), o => ((IVentPattern)o).Name),
        new("jig", typeof(IJig), o => ((IJig)o).Name),
        new("design check", typeof(IDesignCheck), o => ((IDesignCheck)o).Name),
        new("catalog", typeof(ICatalogSource), o => ((ICatalogSource)o).Name),
        new("cut-file writer", typeof(ICutFileFormat), o => ((ICutFileFormat)o).Name),
        new("report section", typeof(IReportSection), o => ((IReportSection)o).Title),
    ];

    /// <summary>The kinds that a type is of; none for a type that is no extension.</summary>
    public static ImmutableArray<PartKind> ForType(Type type) => [.. All.Where(k => k.Interface.IsAssignableFrom(type))];
}
