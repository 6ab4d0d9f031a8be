using System.Globalization;
using BuckGen.Dxf.Writing.Planning;

namespace BuckGen.Dxf.Writing.R2000;

/// <summary>
/// The handles of an R2000 file. All parts that every file has carry a fixed one. Layers and then entities follow in order. So
/// the same drawing always has the same handles, and the first free one is known before anything is written.
/// </summary>
internal static class Handle
{
    public const string None = "0";
    public const string ViewportTable = "1";
    public const string Viewport = "2";
    public const string LineTypeTable = "3";
    public const string ByBlock = "4";
    public const string ByLayer = "5";
    public const string Continuous = "6";
    public const string LayerTable = "7";
    public const string StyleTable = "8";
    public const string Style = "9";
    public const string ViewTable = "A";
    public const string CoordinateSystemTable = "B";
    public const string ApplicationTable = "C";
    public const string Application = "D";
    public const string DimensionStyleTable = "E";
    public const string DimensionStyle = "F";
    public const string BlockRecordTable = "10";
    public const string ModelRecord = "11";
    public const string PaperRecord = "12";
    public const string ModelBlock = "13";
    public const string ModelBlockEnd = "14";
    public const string PaperBlock = "15";
    public const string PaperBlockEnd = "16";
    public const string RootDictionary = "17";
    public const string Groups = "18";
    public const string Layouts = "19";
    public const string ModelLayout = "1A";
    public const string PaperLayout = "1B";
    public const string PlotStyles = "1C";
    public const string NormalPlotStyle = "1D";
    public const string MultilineStyles = "1E";
    public const string MultilineStyle = "1F";
    public const string PlotSettings = "20";
    private const int FirstLayer = 0x30;

    public static string OfLayer(int index) => Text(FirstLayer + index);

    public static string OfEntity(WritePlan plan, int index) => Text(FirstLayer + plan.Layers.Length + index);

    public static string FirstFree(WritePlan plan) => OfEntity(plan, plan.Entities.Length);

    private static string Text(int number) => number.ToString("X", CultureInfo.InvariantCulture);
}
