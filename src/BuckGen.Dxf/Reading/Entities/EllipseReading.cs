using System.Globalization;
using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading.Groups;

namespace BuckGen.Dxf.Reading.Entities;

/// <summary>ELLIPSE: 10 the centre, 11 the major axis from there, 40 the ratio, 41 and 42 the parameters in radians.</summary>
internal static class EllipseReading
{
    private const double MaxRatio = 1e6;

    public static DxfEntity Read(TagGroup group, ReadContext context)
    {
        // Some programs leave out the zero y of a level axis.
        if (group.Find(11) is { } x && group.Find(21) is null)
            context.Note(DxfNoteKind.DefaultTaken,
                "the ELLIPSE has no y for its major axis (group code 21); 0 was taken", x.Line);
        else
            group.Required(11, "x of the major axis");
        var ratio = group.Required(40, "ratio of the axes");
        // The format says at most 1; some programs take the shorter axis for the major one.
        if (!(ratio >= 0 && ratio <= MaxRatio))
            throw group.Fault(string.Create(CultureInfo.InvariantCulture,
                $"the ratio of its axes (group code 40) is {ratio}; it must be above 0 and at most 1. Draw it anew"));
        return new DxfEllipse(
            group.Point(10, context),
            group.OptionalPoint(11, context),
            ratio,
            group.Number(41, 0),
            group.Number(42, Math.Tau));
    }
}
