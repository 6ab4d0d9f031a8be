using System.Collections.Immutable;
using BuckGen.Cutting.CutPaths;
using BuckGen.Dxf;
using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Writing;

namespace BuckGen.Cutting.Drilling;

/// <summary>The holes as a DXF drill map: at each centre a point and a circle of the hole's size, on layer VENT.</summary>
internal static class DrillDxf
{
    /// <summary>The bytes of the file, checked by reading them back. Holes stand as in <see cref="DrillCsv"/>.</summary>
    /// <param name="holes">At least one hole.</param>
    /// <param name="version">R12 or R2000.</param>
    /// <exception cref="DrillException">
    /// There is no hole, a hole has a number out of range, or what was read back is not what was drawn.
    /// </exception>
    public static ImmutableArray<byte> Write(IReadOnlyList<DrillHole> holes, DxfVersion version)
    {
        ImmutableArray<DrillHole> ordered = [.. DrillRun.Split(holes).SelectMany(run => run.Holes)];
        if (ordered.IsEmpty) throw new DrillException("A drill map needs at least one hole.");
        var drawing = new DxfDrawing
        {
            Layers = [new(CutLayer.Vent.Name(), CutLayer.Vent.ColourNumber())],
            Entities = [.. ordered.SelectMany(Entities)],
        };
        using var stream = new MemoryStream();
        DxfWriter.Write(drawing, version, stream);
        var bytes = stream.ToArray();
        DrillDxfCheck.Verify(bytes, ordered);
        return [.. bytes];
    }

    private static IEnumerable<DxfEntity> Entities(DrillHole hole)
    {
        var (centre, layer) = (new DxfPoint(hole.Centre.X, hole.Centre.Y), CutLayer.Vent.Name());
        yield return new DxfPointEntity(centre) { Layer = layer };
        yield return new DxfCircle(centre, hole.Diameter / 2) { Layer = layer };
    }
}
