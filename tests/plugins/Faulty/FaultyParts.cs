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
using BuckGen.Output.Reports;

namespace Faulty;

/// <summary>A plug-in whose every part fails when it is used; the program must name it and go on.</summary>
public sealed class FaultyPattern : IVentPattern
{
    public string Name => "faulty";

    public IEnumerable<Vec2> Places(VentFloor floor, VentSpec spec)
    {
        yield return floor.Air.Outer.Bounds.Centre;
        throw new InvalidOperationException("the pattern fell apart");
    }
}

public sealed class FaultyCheck : IDesignCheck
{
    public string Name => "faulty-check";

    public IEnumerable<Finding> Run(DesignView design) => throw new InvalidOperationException("the check fell apart");
}

public sealed class FaultyJig : IJig
{
    public string Name => "faulty-jig";

    public JigParts? Make(PartShell part, TrimmingSpec spec) => throw new InvalidOperationException("the jig fell apart");
}

public sealed class FaultyWriter : ICutFileFormat
{
    public string Name => "faulty-writer";

    public string Extension => ".bad";

    public ImmutableArray<byte> Write(CutDrawing drawing) => throw new InvalidOperationException("the writer fell apart");
}

public sealed class FaultySection : IReportSection
{
    public string Title => "Faulty section";

    public IEnumerable<string> Lines(CutPlan plan)
    {
        yield return "half a section";
        throw new InvalidOperationException("the section fell apart");
    }
}

public sealed class FaultyReader : IOutlineFormat
{
    public string Name => "faulty-reader";

    public bool Recognises(ReadOnlySpan<byte> content) => throw new InvalidOperationException("the reader fell apart");

    public Drawing Read(byte[] content, string name, OutlineOptions options) =>
        throw new InvalidOperationException("never asked");
}

/// <summary>Falls apart while it is made.</summary>
public sealed class FaultyCatalog : ICatalogSource
{
    public FaultyCatalog() => throw new InvalidOperationException("the catalog fell apart");

    public string Name => "faulty-catalog";

    public Catalog AddTo(Catalog onto) => onto;
}
