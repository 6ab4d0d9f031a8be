using System.Globalization;
using BuckGen.Intake.Catalogs;

namespace BuckGen.Cli.Printing;

/// <summary>Figures of the catalog in plain words.</summary>
internal static class FigureText
{
    /// <summary>The value alone, for narrow columns: "0.3-0.6".</summary>
    public static string Short(CatalogFigure figure) => Value(figure, "-");

    /// <summary>The value with its unit: "0.3 to 0.6 %".</summary>
    public static string WithUnit(CatalogFigure figure) => $"{Value(figure, " to ")} {figure.Unit}".TrimEnd();

    private static string Value(CatalogFigure figure, string to)
    {
        if (figure.Range is not { } range) return figure.Text ?? "";
        return range.Low == range.High ? Number(range.Low) : Number(range.Low) + to + Number(range.High);
    }

    private static string Number(double number) => number.ToString("0.###", CultureInfo.InvariantCulture);
}
