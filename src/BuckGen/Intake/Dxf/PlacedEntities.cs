using BuckGen.Dxf;
using BuckGen.Dxf.Entities;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Dxf;

/// <summary>An entity with the map that takes its drawing coordinates to millimetres.</summary>
internal readonly record struct PlacedEntity(DxfEntity Entity, string Layer, Affine Map);

/// <summary>Lists the entities of a drawing that are to be seen, with every block put in place.</summary>
internal sealed class PlacedEntities(BlockSizes blocks, Visibility visibility, LeftOut leftOut, CancellationToken cancellation)
{
    public IEnumerable<PlacedEntity> Enumerate(IEnumerable<DxfEntity> entities, Affine map, string? insertLayer = null)
    {
        foreach (var entity in entities)
        {
            cancellation.ThrowIfCancellationRequested();
            // Layer 0 in a block stands for the layer that the block is placed on.
            var layer = insertLayer is not null && entity.Layer == "0" ? insertLayer : entity.Layer;
            if (visibility.ReasonHidden(entity, layer) is { } reason)
            {
                leftOut.Add("hidden-ignored", entity, $"{Excerpt.Shorten(layer)} ({reason})",
                    "Show them if they belong to the outline.");
            }
            else if (entity is not DxfInsert insert)
            {
                yield return new(entity, layer, map);
            }
            else
            {
                foreach (var placed in Inside(insert, layer, map)) yield return placed;
            }
        }
    }

    private IEnumerable<PlacedEntity> Inside(DxfInsert insert, string layer, Affine map)
    {
        if (blocks.Find(insert.Block) is not { } block)
        {
            leftOut.AddWords("block-missing",
                $"INSERT of the block {Excerpt.Shorten(insert.Block)}, which the file does not define", "");
            return [];
        }

        if (insert.Scale.X == 0 || insert.Scale.Y == 0)
        {
            leftOut.AddWords("insert-collapsed",
                $"INSERT of the block {Excerpt.Shorten(insert.Block)} with a scale of 0 (line {insert.Line})", "");
            return [];
        }

        return Grid(insert).SelectMany(shift => Enumerate(block.Entities, InBlock(insert, block, shift).Then(map), layer));
    }

    private static IEnumerable<Vec2> Grid(DxfInsert insert)
    {
        for (var row = 0; row < insert.Rows; row++)
            for (var column = 0; column < insert.Columns; column++)
                yield return new(column * insert.ColumnSpacing, row * insert.RowSpacing);
    }

    private static Affine InBlock(DxfInsert insert, DxfBlock block, Vec2 shift) =>
        Affine.Translation(new(-block.BasePoint.X, -block.BasePoint.Y))
            .Then(new(insert.Scale.X, 0, 0, insert.Scale.Y, shift.X, shift.Y))
            .Then(Affine.Rotation(double.DegreesToRadians(insert.Rotation), default))
            .Then(Affine.Translation(new(insert.InsertionPoint.X, insert.InsertionPoint.Y)))
            .Then(FlatPlane.MapOf(insert));
}
