namespace BuckGen.Output.Pictures.Drawing;

/// <summary>The colours of pictures: they differ in grey as well, and to colour-blind eyes.</summary>
internal static class PictureColours
{
    public const string Black = "#161616";
    public const string Grey = "#6f6f6f";
    public const string Wood = "#ece4d4";
    public const string Board = "#d9d3c7";
    public const string Shade = "#b5a688";
    public const string Repaired = "#b4420a";
    public const string Measure = "#1f5fbf";
    public const string White = "#ffffff";
}
