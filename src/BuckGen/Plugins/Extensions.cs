using System.Collections.Immutable;
using BuckGen.Cutting.CutFiles;
using BuckGen.Design;
using BuckGen.Design.Checks;
using BuckGen.Design.Trimming;
using BuckGen.Design.Venting;
using BuckGen.Intake.Catalogs;
using BuckGen.Intake.Outlines;
using BuckGen.Output.Reports;

namespace BuckGen.Plugins;

/// <summary>
/// Everything that can be added to, beginning with what comes with the library. Immutable: adding gives a new one.
/// </summary>
public sealed record Extensions
{
    /// <summary>What comes with the library.</summary>
    public static Extensions BuiltIn { get; } = new();

    /// <summary>Kinds of drawings, in the order in which they are tried.</summary>
    public ImmutableArray<IOutlineFormat> OutlineFormats { get; init; } = Intake.Reading.OutlineFormats.All;

    /// <summary>Patterns that a job can name for its vents.</summary>
    public ImmutableArray<IVentPattern> VentPatterns { get; init; } = BuckGen.Design.Venting.VentPatterns.All;

    /// <summary>Checks and jigs.</summary>
    public DesignExtensions Design { get; init; } = DesignExtensions.BuiltIn;

    /// <summary>Stocks and plastics.</summary>
    public Catalog Catalog { get; init; } = Catalog.BuiltIn;

    /// <summary>Kinds of cut files that a job can choose, besides DXF and SVG.</summary>
    public ImmutableArray<ICutFileFormat> CutFileFormats { get; init; } = [];

    /// <summary>Sections of the process card, beside those of the library.</summary>
    public ImmutableArray<IReportSection> ReportSections { get; init; } = [];

    /// <summary>
    /// These and one more. What it is shows in the interfaces it has; a pattern or format of a known name takes that one's place.
    /// </summary>
    /// <param name="extension">A vent pattern, jig, check, reader, writer, section or catalog; or several of them in one.</param>
    /// <exception cref="ArgumentException">It is none of them.</exception>
    public Extensions With(object extension)
    {
        ArgumentNullException.ThrowIfNull(extension);
        if (extension is GuardedSet several) return several.Parts.Aggregate(this, (all, part) => all.With(part));
        if (PartKind.ForType(extension.GetType()).IsEmpty)
            throw new ArgumentException(
                $"{extension.GetType().Name} is not an extension; it has none of the interfaces "
                + $"{string.Join(", ", PartKind.All.Select(k => k.Interface.Name))}.", nameof(extension));
        var with = this;
        // Readers of plug-ins are tried first: the library's own would refuse what they don't know.
        if (extension is IOutlineFormat reader)
            with = with with { OutlineFormats = [reader, .. with.OutlineFormats.Where(f => f.Name != reader.Name)] };
        if (extension is IVentPattern pattern)
            with = with with { VentPatterns = [.. with.VentPatterns.Where(p => p.Name != pattern.Name), pattern] };
        if (extension is IJig jig)
            with = with with { Design = with.Design with { Jigs = [.. with.Design.Jigs.Where(j => j.Name != jig.Name), jig] } };
        if (extension is IDesignCheck check)
            with = with with
            {
                Design = with.Design with
                {
                    Checks = [.. with.Design.Checks.Where(c => c.Name != check.Name),
                check]
                }
            };
        if (extension is ICatalogSource catalog) with = with with { Catalog = catalog.AddTo(with.Catalog) };
        if (extension is ICutFileFormat writer)
            with = with with { CutFileFormats = [.. with.CutFileFormats.Where(f => f.Name != writer.Name), writer] };
        if (extension is IReportSection section)
            with = with with { ReportSections = [.. with.ReportSections.Where(s => s.Title != section.Title), section] };
        return with;
    }

    /// <summary>The extensions of a name that take settings.</summary>
    internal ImmutableArray<IWithSettings> TakingSettings(string name)
    {
        IEnumerable<object> all =
            [.. OutlineFormats, .. VentPatterns, .. Design.Jigs, .. Design.Checks, .. CutFileFormats, .. ReportSections];
        var takers = all.OfType<IWithSettings>()
            .Where(e => e is not GuardedPart { TakesSettings: false }
                && PartKind.ForType(e.GetType()).Any(k => k.NameOf(e) == name)).Distinct().ToArray();
        // Several parts may be one object, which gets its settings once.
        return [.. takers.Where((t, i) => t is not GuardedPart part || !takers.Take(i).OfType<GuardedPart>().Any(part.IsOf))];
    }
}
