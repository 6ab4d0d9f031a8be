using System.Globalization;
using System.Text;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Svg;

/// <summary>
/// Checks path data and point lists to the last character and writes them again in plain form. The libraries stop at an
/// error without a word, and half an outline is worse than none.
/// </summary>
internal static class SvgGrammar
{
    /// <summary>Path data with every number set apart; null, and the fault in words, when the text is wrong.</summary>
    public static string? PlainPath(string text, out string fault)
    {
        var scanner = new SvgScanner(text);
        var (result, last) = (new StringBuilder(text.Length + text.Length / 4), ' ');
        for (scanner.SkipBlanks(); !scanner.AtEnd; scanner.SkipBlanks())
        {
            var place = scanner.Position;
            var command = scanner.Take();
            if (Arguments(command) is not { } count || (result.Length == 0 && command is not ('M' or 'm')))
            {
                fault = $"character {place + 1} of the path data is '{command}', where "
                    + (result.Length == 0 ? "a moveto (M or m) must stand first" : "a command or a number is expected");
                return null;
            }

            // A closed path that is closed again stays what it is, and millions of these cost the libraries as many objects.
            if (command is 'Z' or 'z' && last is 'Z' or 'z') continue;
            last = command;
            if (!TryAppendGroups(result, ref scanner, command, count, out fault)) return null;
        }

        fault = "";
        return result.ToString();
    }

    /// <summary>A list of numbers with every number set apart; null, and the fault in words, when the text is wrong.</summary>
    public static double[]? Numbers(string text, out string fault)
    {
        var scanner = new SvgScanner(text);
        var numbers = new List<double>();
        scanner.SkipBlanks();
        for (var comma = false; comma || !scanner.AtEnd; comma = scanner.SkipSeparator())
        {
            if (!scanner.TryNumber(out var number))
            {
                fault = $"character {scanner.Position + 1} of '{Excerpt.Shorten(text)}' is {scanner.Rest}, "
                    + "where a number within ±1e9 is expected";
                return null;
            }

            numbers.Add(number);
        }

        fault = "";
        return [.. numbers];
    }

    /// <summary>A number as text that reads back the same.</summary>
    public static string Text(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    private static bool TryAppendGroups(StringBuilder result, ref SvgScanner scanner, char command, int count, out string fault)
    {
        fault = "";
        scanner.SkipBlanks();
        if (count == 0)
        {
            result.Append(command);
            return true;
        }

        for (var comma = true; comma || scanner.AtNumber; comma = scanner.SkipSeparator())
        {
            result.Append(command);
            for (var i = 0; i < count; i++)
            {
                if (i > 0) scanner.SkipSeparator();
                var isFlag = command is 'A' or 'a' && i is 3 or 4;
                if (!(isFlag ? scanner.TryFlag(out var value) : scanner.TryNumber(out value)))
                {
                    fault = $"character {scanner.Position + 1} of the path data is {scanner.Rest}, where "
                        + (isFlag ? "an arc flag (0 or 1)" : $"a number within ±1e9 for '{command}'") + " must stand";
                    return false;
                }

                result.Append(' ').Append(Text(value));
            }

            // Further pairs after a moveto are lines.
            command = command switch { 'M' => 'L', 'm' => 'l', _ => command };
        }

        return true;
    }

    private static int? Arguments(char command) => char.ToUpperInvariant(command) switch
    {
        'Z' => 0,
        'H' or 'V' => 1,
        'M' or 'L' or 'T' => 2,
        'S' or 'Q' => 4,
        'C' => 6,
        'A' => 7,
        _ => null,
    };
}
