using System.Collections.Immutable;
using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading.Groups;

namespace BuckGen.Dxf.Reading.Entities;

/// <summary>A list of points in one group, each begun by its x.</summary>
internal static class PointList
{
    public static ImmutableArray<DxfPoint> Read(TagGroup group, int code, ReadContext context)
    {
        var points = ImmutableArray.CreateBuilder<DxfPoint>();
        double? x = null, y = null;
        double z = 0;
        foreach (var tag in group.Tags)
        {
            if (tag.Code == code)
            {
                Finish();
                (x, y, z) = (group.Length(tag, context), null, 0);
            }
            else if (tag.Code == code + 10)
            {
                y = group.Length(tag, context);
            }
            else if (tag.Code == code + 20)
            {
                z = group.Length(tag, context);
            }
        }

        Finish();
        return points.ToImmutable();

        void Finish()
        {
            if (x is null)
                return;
            if (y is null)
                throw group.Fault($"point {points.Count + 1} of group code {code} has no y (group code {code + 10})");
            points.Add(new(x.Value, y.Value, z));
        }
    }
}
