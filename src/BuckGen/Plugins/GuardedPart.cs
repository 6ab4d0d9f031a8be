using System.Collections.Immutable;
using BuckGen.Cutting.Boards;
using BuckGen.Cutting.CutFiles;
using BuckGen.Cutting.CutPaths;
using BuckGen.Design.Checks;
using BuckGen.Design.Trimming;
using BuckGen.Design.Venting;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Intake.Catalogs;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;
using BuckGen.Output.Reports;

namespace BuckGen.Plugins;

/// <summary>Wraps a part of a plug-in: reads once what must not change, and calls the part under guard.</summary>
/// <remarks>They are made while the plug-in starts, under the guard of its start.</remarks>
internal abstract class GuardedPart : IForeignPart, IWithSettings
{
    private readonly object inner;
    private readonly Func<string, PluginGuard> guardOf;

    private GuardedPart(object inner, string name, Func<string, PluginGuard> guardOf) =>
        (this.inner, Name, this.guardOf, Guard) = (inner, Words(name), guardOf, guardOf(name));

    /// <summary>Its own name, as a job file says it.</summary>
    public string Name { get; }

    /// <summary>True when it takes settings.</summary>
    public bool TakesSettings => inner is IWithSettings;

    private PluginGuard Guard { get; }

    /// <summary>One for each interface that an object has.</summary>
    /// <param name="inner">An object of the plug-in.</param>
    /// <param name="guardOf">The guard of a part of that name.</param>
    public static ImmutableArray<GuardedPart> AllOf(object inner, Func<string, PluginGuard> guardOf)
    {
        var parts = ImmutableArray.CreateBuilder<GuardedPart>();
        if (inner is IOutlineFormat reader) parts.Add(new Reader(reader, guardOf));
        if (inner is IVentPattern pattern) parts.Add(new Pattern(pattern, guardOf));
        if (inner is IJig jig) parts.Add(new Jig(jig, guardOf));
        if (inner is IDesignCheck check) parts.Add(new Check(check, guardOf));
        if (inner is ICatalogSource catalog) parts.Add(new Source(catalog, guardOf));
        if (inner is ICutFileFormat writer) parts.Add(new Writer(writer, guardOf));
        if (inner is IReportSection section) parts.Add(new Section(section, guardOf));
        return parts.ToImmutable();
    }

    /// <inheritdoc/>
    public object With(IReadOnlyDictionary<string, string> settings) => Guard.Call(() =>
        new GuardedSet(
            AllOf(((IWithSettings)inner).With(settings) ?? throw new ForeignResultException("it gave nothing"), guardOf)));

    /// <summary>True for the same object of the plug-in.</summary>
    public bool IsOf(GuardedPart other) => ReferenceEquals(inner, other.inner);

    private abstract class Wrapper<T>(T inner, string name, Func<string, PluginGuard> guardOf) : GuardedPart(inner, name, guardOf)
        where T : class
    {
        protected T Part { get; } = inner;
    }

    /// <summary>The name, when it can stand in job files, messages and files.</summary>
    private static string Words(string? name) =>
        name is { Length: > 0 and <= 60 }
            && name.All(c => char.IsLetterOrDigit(c) || c is ' ' or '-' or '_' or '.' or '(' or ')' or '+' or '/' or '&' or ',')
            ? name
            : throw new ForeignResultException("its name must be made of 1 to 60 letters, digits, spaces and - _ . , ( ) + / &");

    private sealed class Reader(IOutlineFormat inner, Func<string, PluginGuard> guardOf)
        : Wrapper<IOutlineFormat>(inner, inner.Name, guardOf), IOutlineFormat
    {
        public bool Recognises(ReadOnlySpan<byte> content)
        {
            var copy = content.ToArray();
            return Guard.Call(() => Part.Recognises(copy));
        }

        public Drawing Read(byte[] content, string name, OutlineOptions options) =>
            Read(content, name, options, CancellationToken.None);

        public Drawing Read(byte[] content, string name, OutlineOptions options, CancellationToken cancellation) =>
            Guard.Call(() => ReaderResult.Read(Part, content, name, options, cancellation));
    }

    private sealed class Pattern(IVentPattern inner, Func<string, PluginGuard> guardOf)
        : Wrapper<IVentPattern>(inner, inner.Name, guardOf), IVentPattern
    {
        public bool AlongWalls { get; } = inner.AlongWalls;

        public IEnumerable<Vec2> Places(VentFloor floor, VentSpec spec) =>
            Guard.Call(() => PatternResult.FindPlaces(Part, floor, spec));
    }

    private sealed class Jig(IJig inner, Func<string, PluginGuard> guardOf) : Wrapper<IJig>(inner, inner.Name, guardOf), IJig
    {
        public JigParts? Make(PartShell part, TrimmingSpec spec) =>
            Guard.Call(() => JigResult.Make(Part, part, spec)).FirstOrDefault();
    }

    private sealed class Check(IDesignCheck inner, Func<string, PluginGuard> guardOf)
        : Wrapper<IDesignCheck>(inner, inner.Name, guardOf), IDesignCheck
    {
        public IEnumerable<Finding> Run(DesignView design) => Guard.Call(() => CheckResult.Run(Part, design));
    }

    /// <summary>A catalog is read only at its start: one that can't be read is left out.</summary>
    private sealed class Source(ICatalogSource inner, Func<string, PluginGuard> guardOf)
        : Wrapper<ICatalogSource>(inner, inner.Name, guardOf), ICatalogSource
    {
        private readonly Catalog entries = CatalogResult.Read(inner, Catalog.BuiltIn);

        public Catalog AddTo(Catalog onto) => onto.With(entries);
    }

    private sealed class Writer(ICutFileFormat inner, Func<string, PluginGuard> guardOf)
        : Wrapper<ICutFileFormat>(inner, inner.Name, guardOf), ICutFileFormat
    {
        public string Extension { get; } = inner.Extension;

        public bool BoardsOnly { get; } = inner.BoardsOnly;

        public ImmutableArray<byte> Write(CutDrawing drawing) => Guard.Call(() => WriterResult.Write(Part, drawing));
    }

    private sealed class Section(IReportSection inner, Func<string, PluginGuard> guardOf)
        : Wrapper<IReportSection>(inner, inner.Title, guardOf), IReportSection
    {
        public string Title => Name;

        public IEnumerable<string> Lines(CutPlan plan) => Guard.Call(() => SectionResult.GetLines(Part, plan));
    }
}

/// <summary>The parts that come of one object.</summary>
internal sealed record GuardedSet(ImmutableArray<GuardedPart> Parts);
