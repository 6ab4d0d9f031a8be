using BuckGen.Cutting.CutFiles;
using BuckGen.Cutting.CutPaths;
using BuckGen.Design.Bucks;
using BuckGen.Dxf;
using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading;
using BuckGen.Geometry;

namespace BuckGen.Tests.Design.Venting;

/// <summary>A bore or vent as a layer file shows it.</summary>
internal sealed record Bore(int Layer, Vec2 Centre, double Radius);

/// <summary>What a written layer file shows, read back: nothing here comes from the design but its bytes.</summary>
internal sealed record LayerFile(int Number, IReadOnlyList<Loop> Cuts, IReadOnlyList<Bore> Bores)
{
    public static LayerFile Create(Layer layer)
    {
        var entities = DxfReader.Read([.. DxfCutFile.Write(LayerDrawing.Create(layer), DxfVersion.R12)]).Entities;
        return new(
            layer.Number,
            [.. entities.Where(e => e.Layer is "CUT_OUTER" or "CUT_INNER").Select(LoopOf)],
            [.. entities.OfType<DxfCircle>().Where(c => c.Layer == "VENT")
                .Select(c => new Bore(layer.Number, new(c.Centre.X, c.Centre.Y), c.Radius))]);
    }

    /// <summary>True where an odd number of cuts goes round a place.</summary>
    public bool HasWoodAt(Vec2 p) => Cuts.Count(c => c.Contains(p)) % 2 == 1;

    private static Loop LoopOf(DxfEntity entity) => entity switch
    {
        DxfCircle c => Loop.Circle(new(c.Centre.X, c.Centre.Y), c.Radius),
        DxfPolyline p => Loop.FromCorners([.. p.Vertices.Select(v => (new Vec2(v.X, v.Y), v.Bulge))]),
        _ => throw new InvalidOperationException($"A cut that is a {entity.GetType().Name}."),
    };
}
