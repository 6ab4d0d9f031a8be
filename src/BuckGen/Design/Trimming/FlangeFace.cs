using BuckGen.Quantities;

namespace BuckGen.Design.Trimming;

/// <summary>The face of the flange from which a height is measured. The part stands on its flange, the face upward.</summary>
public enum FlangeFace
{
    /// <summary>The face that the part stands on: level with the table or bed.</summary>
    Underside,

    /// <summary>The other face, a gauge higher.</summary>
    Upper,
}

/// <summary>How a face of the flange is written.</summary>
internal static class FlangeFaceText
{
    /// <summary>"underside of the flange" or "upper side of the flange".</summary>
    public static string Format(FlangeFace face) =>
        face == FlangeFace.Underside ? "underside of the flange" : "upper side of the flange";

    /// <summary>The same from the word of a summary; the underside for a word that is not known.</summary>
    public static string FormatWord(string word) =>
        Format(Words.TryParse(word, out FlangeFace face) ? face : FlangeFace.Underside);
}
