using System.Collections.Frozen;
using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading.Groups;

namespace BuckGen.Dxf.Reading.Entities;

/// <summary>Which function reads which entity, and what all entities have in common.</summary>
internal static class EntityReading
{
    private const int ByLayer = 256;

    private static readonly FrozenDictionary<string, Func<TagGroup, ReadContext, DxfEntity>> Readers =
        new Dictionary<string, Func<TagGroup, ReadContext, DxfEntity>>
        {
            ["LINE"] = LineReading.Read,
            ["CIRCLE"] = CircleReading.Read,
            ["ARC"] = ArcReading.Read,
            ["POINT"] = PointReading.Read,
            ["ELLIPSE"] = EllipseReading.Read,
            ["LWPOLYLINE"] = LightPolylineReading.Read,
            ["SPLINE"] = SplineReading.Read,
            ["INSERT"] = InsertReading.Read,
            ["HATCH"] = HatchReading.Read,
            ["TEXT"] = TextReading.Read,
            ["MTEXT"] = TextReading.Read,
            ["ATTRIB"] = TextReading.Read,
            ["ATTDEF"] = TextReading.Read,
            ["VERTEX"] = (group, _) => throw group.Fault("a VERTEX stands outside a POLYLINE; a part of the file is missing"),
        }.ToFrozenDictionary();

    /// <summary>Reads the entity whose group is the cursor's current one, with the groups that belong to it.</summary>
    public static DxfEntity Read(TagGroup group, GroupCursor cursor, ReadContext context)
    {
        context.CountEntity(group);
        var entity = group.Type == "POLYLINE" ? PolylineReading.Read(group, cursor, context)
            : Readers.TryGetValue(group.Type, out var read) ? read(group, context)
            : new DxfOther(group.Type);
        return WithCommon(entity, group);
    }

    private static DxfEntity WithCommon(DxfEntity entity, TagGroup group) => entity with
    {
        Layer = UnicodeEscapes.Resolve(group.Text(8) ?? "0"),
        Line = group.Line,
        Invisible = IsOne(60, entity, group),
        PaperSpace = IsOne(67, entity, group),
        Extrusion = entity is DxfOther ? DxfPoint.UnitZ : Extrusion(group),
        Colour = entity is DxfOther ? null : Colour(group),
    };

    // The meaning of codes in an unknown entity is not known, so their values need not be numbers.
    private static bool IsOne(int code, DxfEntity entity, TagGroup group) =>
        entity is DxfOther ? group.Find(code) is { Value: "1" } : group.Integer(code, 0) == 1;

    private static int? Colour(TagGroup group) => group.Integer(62, ByLayer) is not ByLayer and var colour ? colour : null;

    private static DxfPoint Extrusion(TagGroup group) =>
        new(group.Number(210, 0), group.Number(220, 0), group.Number(230, 1));
}
