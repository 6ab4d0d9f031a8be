namespace BuckGen.Intake.Svg;

/// <summary>Estimates what it costs the libraries to hold a style sheet against the elements of a drawing.</summary>
/// <remarks>
/// They try every way in which a selector can be laid over the ancestors and siblings of an element. So one that asks for an
/// element in an element in an element costs the depth of the tree once for each step. One that asks for earlier siblings costs
/// their number.
/// </remarks>
/// <param name="depth">Maximum depth of nesting of the drawing.</param>
/// <param name="siblings">Maximum number of children that an element has.</param>
internal sealed class SvgSelectors(int depth, int siblings)
{
    /// <summary>How many comparisons each element takes; what stands in braces is no selector.</summary>
    public double CostOf(string sheet)
    {
        var (cost, start, braces) = (0.0, 0, 0);
        for (var i = 0; i < sheet.Length; i++)
        {
            if (sheet[i] == '}')
            {
                braces = Math.Max(0, braces - 1);
                start = i + 1;
            }
            else if (sheet[i] == '{')
            {
                // Braces in braces hold rules of their own, as in a rule for a medium.
                cost += CostOfList(sheet.AsSpan(start, i - start));
                braces++;
                start = i + 1;
            }
            else if (sheet[i] == ';') start = i + 1;
        }

        return cost;
    }

    private double CostOfList(ReadOnlySpan<char> selectors)
    {
        var cost = 0.0;
        foreach (var range in selectors.Split(',')) cost += CostOfOne(selectors[range].Trim());
        return cost;
    }

    private double CostOfOne(ReadOnlySpan<char> selector)
    {
        var (parts, ways, blank) = (1, 1.0, false);
        for (var i = 0; i < selector.Length; i++)
        {
            var c = selector[i];
            if (char.IsWhiteSpace(c))
            {
                blank = true;
                continue;
            }

            var isStep = c is '>' or '+' or '~';
            // A blank between two names means: somewhere inside.
            if (blank && !isStep && i > 0 && LastOf(selector[..i]) is not ('>' or '+' or '~')) ways *= Math.Max(1, depth);
            if (c == '~') ways *= Math.Max(1, siblings);
            if (isStep || c is '[' or ':' or '.' or '#') parts++;
            blank = false;
        }

        return parts * ways;
    }

    private static char LastOf(ReadOnlySpan<char> text) => text.TrimEnd() is [.., var last] ? last : ' ';
}
