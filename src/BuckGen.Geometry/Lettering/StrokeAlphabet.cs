using System.Collections.Frozen;

namespace BuckGen.Geometry.Lettering;

/// <summary>
/// The single-stroke alphabet for marks on layers: centre lines only, so that an engraving pass draws each line once. Capitals,
/// figures and a few signs. A layer may lie turned on the bench, so no character can be mistaken for another one upside down: 6
/// and 9 stand on a foot, 0 is slashed and O is not, 1 has a flag and I has bars. 7 is crossed, M stands upright and W leans.
/// </summary>
internal static class StrokeAlphabet
{
    // Each row: the character, the room before it, the width of its strokes, the room after it, and the strokes. All are in cap
    // heights, with the baseline at y = 0 and y upward. In a path, Mx,y starts a stroke, Lx,y draws a line, and Ax,y,d draws an
    // arc that turns through d degrees, counter-clockwise where d is positive. Upright sides get 0.16 of room, round ones 0.13,
    // open ones 0.08 to 0.11; figures share one advance, so that numbers stand in columns.
    private static readonly FrozenDictionary<char, StrokeGlyph> glyphs =
        new (char Character, double Before, double Width, double After, string Path)[]
    {
        ('0', .14, .56, .14, "M.28,1 A0,.72,90 L0,.28 A.56,.28,180 L.56,.72 A.28,1,90 M.17,.33 L.39,.67"),
        ('1', .19, .44, .21, "M0,.78 L.22,1 L.22,0 M0,0 L.44,0"),
        ('2', .14, .56, .14, "M.026,.822 A.483,.552,-201.2 L0,0 L.56,0"),
        ('3', .14, .55, .15, "M.02,1 L.51,1 L.25,.6 A0,.15,-240"),
        ('4', .12, .60, .12, "M.44,0 L.44,1 L0,.3 L.6,.3"),
        ('5', .14, .56, .14, "M.5,1 L.115,1 L.08,.54 A0,.15,-277"),
        ('6', .14, .56, .14, "M.43,1 L.092,.615 A.468,.285,180 A.092,.615,180 M0,0 L.56,0"),
        ('7', .14, .56, .14, "M0,1 L.56,1 L.2,0 M.2,.5 L.56,.5"),
        ('8', .14, .56, .14, "M.28,.53 A.28,1,180 A.28,.53,180 A.28,0,-180 A.28,.53,-180"),
        ('9', .14, .56, .14, "M.13,.2 L.468,.585 A.092,.915,180 A.468,.585,180 M0,0 L.56,0"),

        ('A', .09, .70, .09, "M0,0 L.35,1 L.7,0 M.112,.32 L.588,.32"),
        ('B', .16, .56, .13, "M0,.52 L.3,.52 A.3,0,-180 L0,0 L0,1 L.28,1 A.28,.52,-180"),
        ('C', .13, .67, .11, "M.672,.82 A0,.64,150 L0,.36 A.672,.18,150"),
        ('D', .16, .66, .13, "M0,0 L0,1 L.3,1 A.66,.64,-90 L.66,.36 A.3,0,-90 L0,0"),
        ('E', .16, .54, .11, "M.54,1 L0,1 L0,0 L.54,0 M0,.52 L.46,.52"),
        ('F', .16, .52, .09, "M.52,1 L0,1 L0,0 M0,.5 L.44,.5"),
        ('G', .13, .72, .15, "M.672,.82 A0,.64,150 L0,.36 A.72,.36,180 L.72,.48 L.42,.48"),
        ('H', .16, .62, .16, "M0,0 L0,1 M0,.52 L.62,.52 M.62,1 L.62,0"),
        ('I', .13, .32, .13, "M0,1 L.32,1 M.16,1 L.16,0 M0,0 L.32,0"),
        ('J', .11, .48, .16, "M.48,1 L.48,.24 A0,.24,-180"),
        ('K', .16, .60, .09, "M0,0 L0,1 M.58,1 L0,.4 M.2,.607 L.6,0"),
        ('L', .16, .50, .09, "M0,1 L0,0 L.5,0"),
        ('M', .16, .76, .16, "M0,0 L0,1 L.38,.4 L.76,1 L.76,0"),
        ('N', .16, .64, .16, "M0,0 L0,1 L.64,0 L.64,1"),
        ('O', .13, .72, .13, "M.36,1 A0,.64,90 L0,.36 A.72,.36,180 L.72,.64 A.36,1,90"),
        ('P', .16, .56, .11, "M0,0 L0,1 L.29,1 A.29,.46,-180 L0,.46"),
        ('Q', .13, .74, .11, "M.36,1 A0,.64,90 L0,.36 A.72,.36,180 L.72,.64 A.36,1,90 M.46,.28 L.74,0"),
        ('R', .16, .58, .10, "M0,0 L0,1 L.29,1 A.29,.46,-180 L0,.46 M.27,.46 L.58,0"),
        ('S', .13, .56, .13, "M.512,.878 A.3,1,60 L.245,1 A.245,.51,180 L.305,.51 A.305,0,-180 L.25,0 A.029,.128,-60"),
        ('T', .09, .64, .09, "M0,1 L.64,1 M.32,1 L.32,0"),
        ('U', .16, .64, .16, "M0,1 L0,.32 A.64,.32,180 L.64,1"),
        ('V', .08, .68, .08, "M0,1 L.34,0 L.68,1"),
        ('W', .08, .96, .08, "M0,1 L.23,0 L.48,.72 L.73,0 L.96,1"),
        ('X', .10, .62, .10, "M0,0 L.62,1 M0,1 L.62,0"),
        ('Y', .08, .64, .08, "M0,1 L.32,.48 L.64,1 M.32,.48 L.32,0"),
        ('Z', .11, .60, .11, "M0,1 L.6,1 L0,0 L.6,0"),

        ('-', .15, .36, .15, "M0,.46 L.36,.46"),
        ('.', .13, .08, .13, "M0,.04 A.08,.04,180 A0,.04,180"),
        ('/', .09, .46, .09, "M0,0 L.46,1"),
        ('+', .15, .46, .15, "M.23,.69 L.23,.23 M0,.46 L.46,.46"),
        (' ', .00, .44, .00, ""),
    }.ToFrozenDictionary(row => row.Character, row => StrokeGlyph.Parse(row.Before, row.Width, row.After, row.Path));

    /// <summary>Every character that can be written, in ascending order.</summary>
    public static string Characters { get; } = string.Concat(glyphs.Keys.Order());

    /// <summary>True when the character can be written. Small letters cannot.</summary>
    public static bool Contains(char character) => glyphs.ContainsKey(character);

    /// <summary>The drawing of a character that the alphabet has.</summary>
    internal static bool TryGet(char character, out StrokeGlyph glyph) => glyphs.TryGetValue(character, out glyph!);
}
