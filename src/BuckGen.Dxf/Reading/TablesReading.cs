using System.Collections.Immutable;
using BuckGen.Dxf.Reading.Groups;

namespace BuckGen.Dxf.Reading;

/// <summary>TABLES: of all tables only the layers matter here.</summary>
internal static class TablesReading
{
    private const int Frozen = 1;

    public static ImmutableArray<DxfLayer> Read(GroupCursor cursor)
    {
        var layers = ImmutableArray.CreateBuilder<DxfLayer>();
        while (!SectionEnd.IsAt(cursor))
        {
            var group = cursor.Take();
            if (group.Type == "LAYER")
                layers.Add(Layer(group));
        }

        return layers.ToImmutable();
    }

    private static DxfLayer Layer(TagGroup group)
    {
        var colour = group.Integer(62, 7);
        return new DxfLayer(
            UnicodeEscapes.Resolve(group.Text(2) ?? throw group.Fault("group code 2 (name of the layer) is missing")),
            Math.Abs(Math.Max(colour, -255)),
            Frozen: group.Flag(70, Frozen),
            Off: colour < 0,
            Plotted: group.Integer(290, 1) != 0);
    }
}
