using System.Globalization;

namespace BuckGen.Output.Reports.Card;

/// <summary>Text of the card, the same in every culture.</summary>
internal static class CardText
{
    public static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    public static string Between(double low, double high) =>
        low == high ? Line($"{low:0.##}") : Line($"{low:0.##} to {high:0.##}");
}
