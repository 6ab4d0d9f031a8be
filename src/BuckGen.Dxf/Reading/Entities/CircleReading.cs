using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading.Groups;

namespace BuckGen.Dxf.Reading.Entities;

/// <summary>CIRCLE: 10 the centre, 40 the radius.</summary>
internal static class CircleReading
{
    public static DxfEntity Read(TagGroup group, ReadContext context) =>
        new DxfCircle(group.Point(10, context), group.RequiredLength(40, "radius", context));
}
