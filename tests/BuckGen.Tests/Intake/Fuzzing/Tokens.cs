namespace BuckGen.Tests.Intake.Fuzzing;

/// <summary>Words that readers trip over, put in where they do not belong.</summary>
internal static class Tokens
{
    public static readonly double[] Doubles =
        [0, -0.0, 1, -1, 1e-300, 1e9, -1e9, 1e15, 1e300, double.MaxValue, double.Epsilon, double.NaN, double.PositiveInfinity];

    public static readonly string[] Numbers =
    [
        "0", "-0", "1", "-1", "2", "0.5", "1e-300", "1e-9", "0.0000001", "0.00001", "0.01", "0.1", "100", "10000", "999999",
        "1e9", "-1e9",
        "999999999.9", "1e12", "1e15", "1e38", "1e39", "1e300", "1e308", "1e400", "-1e400", "nan", "inf", "0,5",
        "1.250,00", "1O", "",
        "127", "128", "129", "255", "256", "1000", "30000", "32767", "32768", "65535", "2147483647", "-2147483648", "4294967295",
        "99999999999999999999",
        "90", "180", "360", "3.141592653589793", "6.283185307179586", "1e5", "360000000",
    ];

    public static readonly string[] Dxf =
    [
        "0\nSECTION\n2\nENTITIES\n", "0\nSECTION\n2\nBLOCKS\n", "0\nENDSEC\n", "0\nEOF\n", "0\nSEQEND\n", "0\nENDBLK\n",
        "0\nBLOCK\n2\nA\n",
        "0\nINSERT\n2\nA\n10\n0\n20\n0\n41\n1000000000\n42\n1000000000\n",
        "0\nINSERT\n2\nA\n10\n0\n20\n0\n70\n700\n71\n700\n44\n1\n45\n1\n",
        "0\nINSERT\n2\nA\n10\n5\n20\n5\n41\n1e-9\n42\n1e9\n50\n33\n", "0\nLWPOLYLINE\n90\n2000000000\n70\n129\n",
        "0\nPOLYLINE\n66\n1\n70\n1\n",
        "0\nVERTEX\n10\n1\n20\n2\n", "0\nLINE\n10\n0\n20\n0\n11\n1000000000\n21\n1000000000\n",
        "0\nCIRCLE\n10\n0\n20\n0\n40\n1000000000\n",
        "0\nELLIPSE\n10\n0\n20\n0\n11\n1000000000\n21\n0\n40\n1e-9\n",
        "0\nELLIPSE\n10\n0\n20\n0\n11\n10\n21\n0\n40\n1e308\n41\n0\n42\n1e300\n",
        "0\nSPLINE\n71\n25\n", "0\nSPLINE\n71\n3\n11\n0\n21\n0\n11\n1e-9\n21\n0\n11\n9\n21\n9\n11\n9\n21\n9\n",
        "0\nARC\n10\n0\n20\n0\n40\n5\n50\n1e300\n51\n-1e300\n",
        "0\nHATCH\n91\n1\n92\n2\n72\n1\n73\n1\n", "0\nHATCH\n91\n1\n92\n1\n72\n4\n94\n3\n",
        "0\nTEXT\n10\n0\n20\n0\n1\n\\U+12\\U+D800\n", "0\nACME\n",
        "42\n1000000000\n", "42\n-1\n", "42\n1e-9\n", "70\n129\n", "60\n1\n", "67\n1\n", "62\n-7\n", "210\n0\n220\n0\n230\n-1\n",
        "210\n1\n220\n0\n230\n0\n",
        "230\n-1\n", "43\n0\n", "999\n", "999\nnote\n", "1001\nACME\n", "101\nEmbedded Object\n", "\r", "\r\r\n", "\0", "  10\n",
        "\t10\n", "9\n$INSUNITS\n70\n6\n",
        "9\n$ACADVER\n1\nAC1027\n", "9\n$DWGCODEPAGE\n3\nANSI_932\n", "8\nDefpoints\n", "8\n0\n",
    ];

    public static readonly string[] Svg =
    [
        "<use href='#a'/>", "<g id='a'>", "</g>", "<g id='a'><use href='#a'/></g>", "<svg width='1e-9mm' viewBox='0 0 1e9 1'>",
        "<svg>", "</svg>",
        "<symbol id='a' viewBox='0 0 1e9 1e-9'>", "</symbol>", "<style>*{fill:none}</style>",
        "<style>path>path+path~path{stroke:red}</style>",
        "<style>@import url(x);a{", "<![CDATA[", "]]>", "<!--", "-->", "<?xml version='1.0' encoding='utf-16'?>",
        "<!DOCTYPE svg [<!ENTITY a '&b;&b;'>]>", "&a;", "&#0;",
        "&amp;", "<path d='M0 0A1e9 1e-9 33 0 1 9 9z'/>", "<path d='M0 0A1 1 0 1110 0'/>",
        "<path d='M0 0C1e9 1e9 -1e9 1e9 0 0z'/>", "<path d='M0 0q1e-9 0 1e-9 1e9'/>",
        "<path d='M0 0z'/>", "<path/>", "<rect width='1e9' height='1e9' rx='1e9'/>", "<circle r='1e9'/>",
        "<ellipse rx='1e9' ry='1e-9'/>", "<polygon points='0,0 1,1'/>",
        "<polygon points='0,0 9,0 9,9 0,9'/>", "<text>x</text>", "<image href='a.png'/>", "<a href='x'>", "<switch>",
        "<marker id='m'/>", "<clipPath id='c'>",
        " transform='scale(0)'", " transform='scale(1e9)'", " transform='scale(1e-9)'",
        " transform='matrix(1e9 1e9 1e9 1e9 1e9 1e9)'", " transform='skewX(90)'",
        " transform='rotate(1e9)'", " transform='translate(1e9 1e9)'", " viewBox='0 0 1e-9 1e9'", " preserveAspectRatio='none'",
        " width='1e9in'", " width='1e-9Q'", " height='0'",
        " style='fill:url(#a);stroke:none'", " style='display:none'", " class='a b c'", " id='a'", " fill='none'",
        " stroke='red'", " fill-rule='evenodd'", " opacity='1e9'",
        " clip-path='url(#a)'", " mask='url(#a)'", " filter='url(#a)'", " marker-end='url(#m)'", " font-size='1e300'",
        " stroke-dasharray='1e-9'", " stroke-width='1e9'",
        " xmlns=''", " xmlns='urn:x'", " xml:space='preserve'", " x='50%'", " width='1e9%'", " d=''", " points='1'", "z", "M",
        "A1 1 0 0 0 1 1", "h1e9", "e", "-.5.5",
    ];
}
