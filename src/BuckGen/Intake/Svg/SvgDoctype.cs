using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Svg;

/// <summary>Looks at a DOCTYPE before the XML reader does, whose time grows with the square of what is declared there.</summary>
internal static class SvgDoctype
{
    private const string Mark = "<!DOCTYPE";

    // Drawing programs write a few lines of entities.
    private const int MaxLength = 20_000;

    // One is allowed; more may stand in comments and texts.
    private const int MaxMarks = 10;

    /// <summary>Refuses declarations that go on and on.</summary>
    public static void Check(string text, string name)
    {
        var marks = 0;
        for (var at = text.IndexOf(Mark, StringComparison.Ordinal); at >= 0; at = text
            .IndexOf(Mark, at + Mark.Length, StringComparison.Ordinal))
        {
            if (++marks > MaxMarks)
                throw new OutlineException(
                    $"{name}: DOCTYPE occurs more than {MaxMarks} times in the file; save the drawing as plain SVG.");
            if (!Ends(text.AsSpan(at, Math.Min(text.Length - at, MaxLength))) && text.Length - at > MaxLength)
                throw new OutlineException(
                    $"{name}: the DOCTYPE is longer than {MaxLength} characters, the limit; save the drawing as plain SVG.");
        }
    }

    /// <summary>
    /// True when the declaration ends within the text; what stands in quotes, comments and instructions ends nothing.
    /// </summary>
    private static bool Ends(ReadOnlySpan<char> text)
    {
        var inside = false;
        for (var i = 0; i < text.Length; i++)
        {
            var end = text[i] switch
            {
                '"' or '\'' => text[i].ToString(),
                '<' when text[i..].StartsWith("<!--") => "-->",
                '<' when text[i..].StartsWith("<?") => "?>",
                _ => null,
            };
            if (end is not null)
            {
                var found = text[(i + 1)..].IndexOf(end);
                if (found < 0) return false;
                i += found + end.Length;
            }
            else if (text[i] == '[') inside = true;
            else if (text[i] == ']' || (text[i] == '>' && !inside)) return true;
        }

        return false;
    }
}
