using System.Globalization;
using BuckGen.Dxf;
using BuckGen.Dxf.Entities;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Dxf;

/// <summary>Counts the entities of a drawing with its blocks in place, before any block is placed.</summary>
internal sealed class BlockSizes(DxfDrawing drawing, string name)
{
    /// <summary>Maximum number of lines and curves of a drawing with its blocks in place.</summary>
    private const double MaxCurves = 500_000;

    /// <summary>
    /// What blocks may make of any drawing, and how often they may repeat what the file spells out; our own numbers.
    /// </summary>
    private const double AnyDrawing = 50_000, Repeats = 4;

    private const int MaxDepth = 100;
    private readonly Dictionary<string, double> sizes = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, DxfBlock> blocks = ByName(drawing);
    private readonly List<string> inside = [];

    /// <summary>The block of a name, or null.</summary>
    public DxfBlock? Find(string block) => blocks.GetValueOrDefault(block);

    /// <summary>Refuses blocks that contain themselves, and drawings that grow beyond the limit.</summary>
    public void RefuseRunaway()
    {
        var total = SizeOf(drawing.Entities);
        var spelt = drawing.Entities.Sum(CurvesOf) + drawing.Blocks.Sum(b => b.Entities.Sum(CurvesOf));
        var max = Math.Min(MaxCurves, AnyDrawing + Repeats * spelt);
        if (total > max)
            throw new OutlineException(FormattableString.Invariant($"{name}: with every block in place the drawing has ")
                + FormattableString.Invariant(
                    $"{(total < 1e15 ? total.ToString("0", CultureInfo.InvariantCulture) : "over 10^15")} lines and ")
                    + FormattableString.Invariant(
                        $"curves; the limit for a file that spells out {spelt:0} is {max:0}; explode it and keep what ")
                        + "is needed");
    }

    private static Dictionary<string, DxfBlock> ByName(DxfDrawing drawing)
    {
        var blocks = new Dictionary<string, DxfBlock>(StringComparer.OrdinalIgnoreCase);
        foreach (var block in drawing.Blocks) blocks.TryAdd(block.Name, block);
        return blocks;
    }

    private double SizeOf(IEnumerable<DxfEntity> entities) =>
        entities.Sum(e => e is DxfInsert i ? (double)i.Columns * i.Rows * SizeOf(i) : CurvesOf(e));

    private static double CurvesOf(DxfEntity entity) => entity switch
    {
        DxfPolyline polyline => Math.Max(1, polyline.Vertices.Length),
        DxfSpline spline => Math.Max(1, spline.ControlPoints.Length + spline.FitPoints.Length),
        DxfHatch hatch => 1 + hatch.Paths.Sum(path => path.Edges.Sum(CurvesOf)),
        _ => 1,
    };

    private double SizeOf(DxfInsert insert)
    {
        if (Find(insert.Block) is not { } block) return 1;
        if (sizes.TryGetValue(block.Name, out var known)) return known;
        if (inside.Contains(block.Name, StringComparer.OrdinalIgnoreCase))
            throw new OutlineException(
                $"{name}: line {insert.Line}, INSERT: the block {Excerpt.Shorten(block.Name)} contains itself "
                + $"({Excerpt.ShortenList([.. inside.AsEnumerable().Reverse()], 3)}); remove that insert");
        if (inside.Count == MaxDepth)
            throw new OutlineException(
                $"{name}: line {insert.Line}, INSERT: blocks are nested more than {MaxDepth} deep; explode the drawing");
        inside.Add(block.Name);
        var size = 1 + SizeOf(block.Entities);
        inside.RemoveAt(inside.Count - 1);
        return sizes[block.Name] = size;
    }
}
