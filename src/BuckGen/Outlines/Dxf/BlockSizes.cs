using BuckGen.Dxf;

namespace BuckGen.Outlines.Dxf;

/// <summary>Counts what the blocks of a drawing grow to before any of them is placed.</summary>
internal sealed class BlockSizes(DxfDrawing drawing, string name)
{
    /// <summary>Most lines and curves a drawing may grow to.</summary>
    public const double Most = 500_000;

    private const int Deepest = 100;
    private readonly Dictionary<string, double> sizes = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, DxfBlock> blocks = ByName(drawing);
    private readonly List<string> inside = [];

    /// <summary>The block of a name, or null.</summary>
    public DxfBlock? Find(string block) => blocks.GetValueOrDefault(block);

    /// <summary>Refuses blocks that contain themselves, and drawings that grow beyond every use.</summary>
    public void RefuseRunaway()
    {
        var total = SizeOf(drawing.Entities);
        if (total > Most)
            throw new OutlineException($"{name}: with every block in place the drawing has {(total < 1e15 ? $"{total:0}" : "over 10^15")} lines and curves, the limit is {Most:0}; explode it and keep what is needed");
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
            throw new OutlineException($"{name}: line {insert.Line}, INSERT: the block {block.Name} contains itself ({string.Join(" in ", inside.AsEnumerable().Reverse())}); remove that insert");
        if (inside.Count == Deepest)
            throw new OutlineException($"{name}: line {insert.Line}, INSERT: blocks are nested more than {Deepest} deep; explode the drawing");
        inside.Add(block.Name);
        var size = 1 + SizeOf(block.Entities);
        inside.RemoveAt(inside.Count - 1);
        return sizes[block.Name] = size;
    }
}
