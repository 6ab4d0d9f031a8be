using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading.Groups;

namespace BuckGen.Dxf.Reading.Entities;

/// <summary>POINT: 10 the position.</summary>
internal static class PointReading
{
    public static DxfEntity Read(TagGroup group, ReadContext context) => new DxfPointEntity(group.Point(10, context));
}
