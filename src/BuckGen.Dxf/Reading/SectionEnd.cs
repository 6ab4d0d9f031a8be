using BuckGen.Dxf.Reading.Groups;

namespace BuckGen.Dxf.Reading;

/// <summary>Where a section stops: at its ENDSEC, or at what shows that the ENDSEC was forgotten.</summary>
internal static class SectionEnd
{
    public static bool IsAt(GroupCursor cursor) =>
        (cursor.Current ?? throw cursor.Truncated()).Type is "ENDSEC" or "SECTION" or "EOF";
}
