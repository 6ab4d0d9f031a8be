using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading.Groups;

namespace BuckGen.Dxf.Reading.Entities;

/// <summary>ELLIPSE: 10 the centre, 11 the major axis from there, 40 the ratio, 41 and 42 the parameters in radians.</summary>
internal static class EllipseReading
{
    public static DxfEntity Read(TagGroup group, ReadContext context)
    {
        // Some programs leave out the zero y of a level axis.
        if (group.Find(11) is { } x && group.Find(21) is null)
            context.Note(DxfNoteKind.DefaultTaken,
                "the ELLIPSE has no y for its major axis (group code 21); 0 was taken", x.Line);
        else
            group.Required(11, "x of the major axis");
        return new DxfEllipse(
            group.Point(10, context),
            group.OptionalPoint(11, context),
            group.Required(40, "ratio of the axes"),
            group.Number(41, 0),
            group.Number(42, Math.Tau));
    }
}
