using BuckGen.Design.Trimming;
using BuckGen.Findings;

namespace BuckGen.Design.Parts;

/// <summary>What a maker should know about the finished part.</summary>
internal static class FinishedPartFindings
{
    /// <summary>The findings.</summary>
    /// <param name="part">The part.</param>
    /// <param name="depthTolerance">How far the depth may miss the order, mm.</param>
    public static IEnumerable<Finding> Find(FinishedPart part, double depthTolerance)
    {
        if (part.Order is { } order)
        {
            if (order.DepthMiss < -depthTolerance)
                yield return Smaller("deep", order.Depth, order.DepthMiss, depthTolerance, "Add a thinner stock, or cut lower.");
            if (order.WidthMiss < -part.SizeTolerance)
                yield return Smaller("wide", order.Width, order.WidthMiss, part.SizeTolerance, LargerRemedy);
            if (order.HeightMiss < -part.SizeTolerance)
                yield return Smaller("high", order.Height, order.HeightMiss, part.SizeTolerance, LargerRemedy);
        }
        else if (part.Cut.Tool != TrimTool.None)
            yield return new("part-cut-short", Severity.Warning,
                FormattableString.Invariant($"The cut leaves a part {part.InsideDepth:0.#} mm deep inside, ")
                    + FormattableString.Invariant($"{part.Mouth.Inside.Bounds.Width:0.#} x ")
                    + FormattableString.Invariant($"{part.Mouth.Inside.Bounds.Height:0.#} mm at its mouth; depth and drawing ")
                    + "are those of the buck.",
                "If depth and drawing are meant for the finished part, order it in [part].")
            {
                Value = part.InsideDepth,
            };
    }

    private const string LargerRemedy = "Draw the part larger, or use a thinner sheet.";

    private static Finding Smaller(string how, double ordered, double miss, double tolerance, string remedy) =>
        new("part-too-small", Severity.Error,
            FormattableString.Invariant($"The finished part is {ordered + miss:0.##} mm {how}, {-miss:0.##} mm less than the ")
                + FormattableString.Invariant($"{ordered:0.##} mm ordered."),
            remedy)
        {
            Value = miss,
            Limit = -tolerance,
        };
}
