using System.Collections.Immutable;
using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading.Groups;

namespace BuckGen.Dxf.Reading.Entities;

/// <summary>LWPOLYLINE: each 10 begins a vertex, and the 20, 40, 41 and 42 after it belong to it.</summary>
internal static class LightPolylineReading
{
    public static DxfEntity Read(TagGroup group, ReadContext context)
    {
        var vertices = Vertices(group, context);
        CountCheck.Compare(group, 90, vertices.Length, "vertices", context);
        return new DxfPolyline(vertices, group.Flag(70, 1))
        {
            HasWidth = group.Number(43, 0) != 0 || group.Tags.Any(tag => tag.Code is 40 or 41 && group.Number(tag) != 0),
        };
    }

    private static ImmutableArray<DxfVertex> Vertices(TagGroup group, ReadContext context)
    {
        var vertices = ImmutableArray.CreateBuilder<DxfVertex>();
        var elevation = group.Length(38, 0, context);
        double? x = null, y = null;
        double bulge = 0;
        foreach (var tag in group.Tags)
        {
            switch (tag.Code)
            {
                case 10:
                    Finish();
                    (x, y, bulge) = (group.Length(tag, context), null, 0);
                    break;
                case 20:
                    y = group.Length(tag, context);
                    break;
                case 42 when x is null:
                    context.Note(DxfNoteKind.ValueIgnored, "a bulge before the first vertex was left out", tag.Line);
                    break;
                case 42:
                    bulge = group.Length(tag, context);
                    break;
            }
        }

        Finish();
        return vertices.ToImmutable();

        void Finish()
        {
            if (x is null)
                return;
            context.CountVertices(1, group);
            if (y is null)
                throw group.Fault($"vertex {vertices.Count + 1} has no y (group code 20)");
            vertices.Add(new(x.Value, y.Value, bulge, elevation));
        }
    }
}
