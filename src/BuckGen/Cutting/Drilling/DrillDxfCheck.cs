using System.Collections.Immutable;
using BuckGen.Cutting.CutPaths;
using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading;
using BuckGen.Geometry;

namespace BuckGen.Cutting.Drilling;

/// <summary>Reads a written drill map back and compares it with the holes, before the file is used.</summary>
internal static class DrillDxfCheck
{
    /// <summary>Throws when a hole's point or circle is missing, elsewhere, on another layer or of another size.</summary>
    public static void Verify(byte[] file, ImmutableArray<DrillHole> holes)
    {
        var entities = DxfReader.Read(file).Entities;
        if (entities.Length != 2 * holes.Length)
            throw new DrillException($"A map of {holes.Length} holes reads back {entities.Length} entities, not two a hole.");
        for (var i = 0; i < holes.Length; i++)
        {
            if (!Shows(entities[2 * i], entities[2 * i + 1], holes[i]))
                throw new DrillException(FormattableString.Invariant(
                    $"The hole of {holes[i].Diameter} mm at {holes[i].Centre} is not what its DXF reads back."));
        }
    }

    private static bool Shows(DxfEntity first, DxfEntity second, DrillHole hole) =>
        first is DxfPointEntity point && second is DxfCircle circle
        && first.Layer == CutLayer.Vent.Name() && second.Layer == CutLayer.Vent.Name()
        && IsAt(point.Position, hole.Centre) && IsAt(circle.Centre, hole.Centre)
        && Math.Abs(2 * circle.Radius - hole.Diameter) <= DrillText.Step;

    private static bool IsAt(DxfPoint point, Vec2 place) => place.DistanceTo(new(point.X, point.Y)) <= DrillText.Step;
}
