using System.Globalization;
using System.Text.RegularExpressions;
using BuckGen.Geometry;

namespace BuckGen.References.Tests.Drilling;

/// <summary>One straight move that the interpreter ordered, ending at a place and a height.</summary>
internal sealed record OrderedMove(bool IsFeed, Vec2 Place, double Height);

/// <summary>The canonical machining functions that LinuxCNC's rs274 prints, one a line.</summary>
internal static partial class Rs274Output
{
    /// <summary>The straight moves among them, in order.</summary>
    public static IReadOnlyList<OrderedMove> Moves(string output) =>
        [.. Straight().Matches(output).Select(m =>
            new OrderedMove(m.Groups[1].Value == "FEED", new(Number(m, 2), Number(m, 3)), Number(m, 4)))];

    private static double Number(Match match, int group) => double.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"STRAIGHT_(TRAVERSE|FEED)\(([-\d.]+), ([-\d.]+), ([-\d.]+),")]
    private static partial Regex Straight();
}
