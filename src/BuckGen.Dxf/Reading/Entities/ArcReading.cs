using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading.Groups;

namespace BuckGen.Dxf.Reading.Entities;

/// <summary>ARC: as CIRCLE, with 50 and 51 the angles in degrees.</summary>
internal static class ArcReading
{
    public static DxfEntity Read(TagGroup group, ReadContext context) => new DxfArc(
        group.Point(10, context),
        group.RequiredLength(40, "radius", context),
        group.Required(50, "start angle"),
        group.Required(51, "end angle"));
}
