using System.Collections.Immutable;
using System.Runtime.InteropServices;
using BuckGen.Cutting.Boards;
using BuckGen.Cutting.CutFiles;
using BuckGen.Cutting.CutPaths;
using BuckGen.Design.Bucks;
using BuckGen.Design.Checks;
using BuckGen.Design.Trimming;
using BuckGen.Design.Venting;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Curves;
using BuckGen.Intake.Catalogs;
using BuckGen.Intake.Outlines;
using BuckGen.Output.Reports;

namespace Evil;

/// <summary>Finds what no file can hold.</summary>
public sealed class EvilCheck : IDesignCheck
{
    public EvilCheck() => Deed.Do(Deed.Read("start"));

    public string Name => Deed.Read("check") switch
    {
        "name with brackets" => "evil[/]check",
        "no name" => null!,
        "name that throws" => throw new InvalidOperationException("no name"),
        _ => "evil check",
    };

    public IEnumerable<Finding> Run(DesignView design)
    {
        var fine = new Finding("evil", Severity.Note, "all is well", "do nothing");
        Deed.Do(Deed.Read("check"));
        switch (Deed.Read("check"))
        {
            case "null list": return null!;
            case "null finding": return [fine, null!];
            case "null message": return [fine with { Message = null! }];
            case "id with brackets": return [fine with { Id = "evil[/]id]" }];
            case "message with brackets": return [fine with { Message = "it is [red]red[/] ] [" }];
            case "unknown severity": return [fine with { Severity = (Severity)7 }];
            case "place without numbers": return [fine with { Place = new(double.NaN, double.PositiveInfinity) }];
            case "value without number": return [fine with { Value = double.NaN }];
            case "fifty million": return Enumerable.Repeat(fine, 50_000_000);
            case "never end": return Endless(fine);
            case "throw in the middle": return Half(fine);
            case "change the layers": ((IList<LayerBlank>)design.Layers)[0] = null!; return [];
            default: return [];
        }
    }

    private static IEnumerable<Finding> Endless(Finding finding)
    {
        while (true) yield return finding;
    }

    private static IEnumerable<Finding> Half(Finding finding)
    {
        yield return finding;
        throw new InvalidOperationException("half of it fell apart");
    }
}

public sealed class EvilSection : IReportSection
{
    public string Title => "Evil section";

    public IEnumerable<string> Lines(CutPlan plan)
    {
        Deed.Do(Deed.Read("section"));
        return Deed.Read("section") switch
        {
            "null list" => null!,
            "null line" => ["a line", null!],
            "long line" => [new string('x', 1_000_000)],
            "fifty million" => Enumerable.Range(0, 50_000_000).Select(i => "line"),
            _ => [],
        };
    }
}

public sealed class EvilPattern : IVentPattern
{
    public string Name => "evil-pattern";

    public IEnumerable<Vec2> Places(VentFloor floor, VentSpec spec)
    {
        Deed.Do(Deed.Read("pattern"));
        return Deed.Read("pattern") switch
        {
            "null list" => null!,
            "places without numbers" => [new(double.NaN, double.NaN)],
            "fifty million" => Enumerable.Range(0, 50_000_000).Select(i => floor.Air.Outer.Bounds.Centre),
            _ => [],
        };
    }
}

public sealed class EvilJig : IJig
{
    public string Name => "evil-jig";

    public JigParts? Make(PartShell part, TrimmingSpec spec)
    {
        Deed.Do(Deed.Read("jig"));
        var layer = PlainLayers.Create(1, LayerRole.Jig, "EVIL", spec.Stack.Stock[0], 0, part.Outside(0), [], 6);
        Loop bow = Loop.Polygon(new(0, 0), new(50, 50), new(50, 0), new(0, 40)), far = Loop.Circle(new(1e9, 0), 5);
        return Deed.Read("jig") switch
        {
            "no layers" => new(default, []),
            "no findings" => new([layer], default),
            "null layer" => new([null!], []),
            "no parts" => new([layer with { Parts = default }], []),
            "null part" => new([layer with { Parts = [null!] }], []),
            "null shape" => new([layer with { Parts = [layer.Parts[0] with { Shape = null! }] }], []),
            "no dowels" => new([layer with { Parts = [layer.Parts[0] with { Dowels = default }] }], []),
            "dowel without numbers" =>
                new([layer with { Parts = [layer.Parts[0] with { Dowels = [new(new(double.NaN, 0), double.NaN)] }] }], []),
            "no name" => new([layer with { Name = null! }], []),
            "no stock" => new([layer with { Stock = null! }], []),
            "stock without numbers" => new([layer with { Stock = new("evil", double.NaN) }], []),
            "no height" => new([layer with { Top = double.NaN }], []),
            "edges that cross" => new([layer with { Parts = [layer.Parts[0] with { Shape = new(bow, []) }] }], []),
            "a piece far away" => new([layer with { Parts = [layer.Parts[0] with { Shape = new(far, []) }] }], []),
            "a layer of the wall" => new([layer with { Role = LayerRole.Wall }], []),
            "null finding" => new([layer], [null!]),
            "change it later" => Changed(layer),
            "good" => new([layer], []),
            _ => null,
        };
    }

    /// <summary>Hands a list over and changes it half a second later.</summary>
    private static JigParts Changed(Layer layer)
    {
        Layer[] layers = [layer];
        new Thread(() =>
        {
            Thread.Sleep(100);
            layers[0] = null!;
        })
        { IsBackground = true }.Start();
        return new(ImmutableCollectionsMarshal.AsImmutableArray(layers), []);
    }
}

public sealed class EvilReader : IOutlineFormat
{
    public string Name => "evil-reader";

    public bool Recognises(ReadOnlySpan<byte> content)
    {
        Deed.Do(Deed.Read("recognises"));
        return Deed.Read("reader").Length > 0;
    }

    public Drawing Read(byte[] content, string name, OutlineOptions options)
    {
        Deed.Do(Deed.Read("reader"));
        var line = new LineCurve(new(0, 0), new(10, 0));
        switch (Deed.Read("reader"))
        {
            case "null drawing": return null!;
            case "no paths": return new(default, "mm", []);
            case "null path": return new([null!], "mm", []);
            case "no curves": return new([new(default, true, "evil")], "mm", []);
            case "null curve": return new([new([null!], true, "evil")], "mm", []);
            case "curve without numbers":
                return new([new([line, new LineCurve(new(10, 0), new(double.NaN, 5))], true, "evil")],
                "mm", []);
            case "curve of its own": return new([new([new EvilCurve()], true, "evil")], "mm", []);
            case "no unit": return new([new([line], true, "evil")], null!, []);
            case "null note": return new([new([line], true, "evil")], "mm", [null!]);
            case "change the file": Array.Clear(content); throw new InvalidOperationException("the file is gone");
            case "refuse": throw new OutlineException($"{name}: not on a Sunday");
            default: return new([], "mm", []);
        }
    }

    private sealed record EvilCurve : Curve
    {
        public override Vec2 PointAt(double t) => throw new InvalidOperationException("no point");

        public override Vec2 DerivativeAt(double t) => throw new InvalidOperationException("no way");

        public override Curve Transformed(Affine map) => this;
    }
}

public sealed class EvilWriter : ICutFileFormat
{
    private int written;

    public string Name => "evil-writer";

    public string Extension => Deed.Read("writer") == "no ending" ? null! : ".evil";

    public ImmutableArray<byte> Write(CutDrawing drawing)
    {
        Deed.Do(Deed.Read("writer"));
        return Deed.Read("writer") switch
        {
            "no bytes" => default,
            "a gigabyte" => [.. new byte[1_000_000_000]],
            "fail at the second file" when ++written == 2 => throw new InvalidOperationException("enough written"),
            _ => [1, 2, 3],
        };
    }
}

public sealed class EvilCatalog : ICatalogSource
{
    public string Name => "evil-catalog";

    public Catalog AddTo(Catalog onto)
    {
        Deed.Do(Deed.Read("catalog"));
        var mdf = onto.FindStock("mdf-12")!;
        return Deed.Read("catalog") switch
        {
            "null catalog" => null!,
            "no stocks" => onto with { Stock = default },
            "null stock" => onto with { Stock = [null!] },
            "stock without thickness" => onto with { Stock = onto.Stock.Add(mdf with { Id = "evil", Figures = [] }) },
            "thickness without number" =>
                onto with
                {
                    Stock = onto.Stock
                    .Add(mdf with { Id = "evil", Figures = [mdf.Figures[0] with { Range = new(double.NaN, double.NaN) }] })
                },
            "id with brackets" => onto with { Stock = onto.Stock.Add(mdf with { Id = "evil[/]" }) },
            "good" => onto with { Stock = onto.Stock.Add(mdf with { Id = "evil" }) },
            _ => onto,
        };
    }
}
