using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading.Groups;

namespace BuckGen.Dxf.Reading.Entities;

/// <summary>INSERT: 2 the block, 10 the place, 41 to 43 the scales, 50 the rotation, 70, 71, 44 and 45 the grid.</summary>
internal static class InsertReading
{
    public static DxfEntity Read(TagGroup group, ReadContext context)
    {
        var block = group.Text(2) ?? throw group.Fault("group code 2 (name of the block) is missing; the entity is incomplete");
        return new DxfInsert(UnicodeEscapes.Resolve(block), group.Point(10, context))
        {
            Scale = new(group.Length(41, 1, context), group.Length(42, 1, context), group.Length(43, 1, context)),
            Rotation = group.Number(50, 0),
            Columns = Math.Max(1, group.Integer(70, 1)),
            Rows = Math.Max(1, group.Integer(71, 1)),
            ColumnSpacing = group.Length(44, 0, context),
            RowSpacing = group.Length(45, 0, context),
        };
    }
}
