using BuckGen.Dxf.Reading.Groups;

namespace BuckGen.Dxf.Reading;

/// <summary>HEADER: a name under code 9 and its value under the next codes.</summary>
internal static class HeaderReading
{
    public static DxfDrawing Read(TagGroup header, DxfDrawing drawing)
    {
        var variable = "";
        foreach (var tag in header.Tags)
        {
            if (tag.Code == 9)
                variable = tag.Value.ToUpperInvariant();
            drawing = (variable, tag.Code) switch
            {
                ("$ACADVER", 1) => drawing with { Version = tag.Value.Trim() },
                ("$INSUNITS", 70) => drawing with { InsertionUnits = header.Integer(tag) },
                ("$MEASUREMENT", 70) => drawing with { Measurement = header.Integer(tag) },
                _ => drawing,
            };
        }

        return drawing;
    }
}
