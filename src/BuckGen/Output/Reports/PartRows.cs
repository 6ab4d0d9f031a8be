using BuckGen.Design.Trimming;
using System.Globalization;

namespace BuckGen.Output.Reports;

/// <summary>What people read about the finished part: one set of lines for console, card and page.</summary>
internal static class PartRows
{
    /// <summary>Differences below this are no difference, mm.</summary>
    private const double Rounding = 0.05;

    /// <summary>What each line is about, and the line.</summary>
    /// <param name="part">The part.</param>
    public static IEnumerable<(string What, string Text)> Create(PartReport part)
    {
        ArgumentNullException.ThrowIfNull(part);
        var (mouth, face) = (part.Mouth, part.Face);
        yield return ("Inside",
            Text($"{mouth.InsideWidth:0.#} x {mouth.InsideHeight:0.#} mm at the mouth, ")
            + Text($"{face.InsideWidth:0.#} x {face.InsideHeight:0.#} at the face, {part.InsideDepth:0.#} deep"));
        yield return ("Outside",
            Text($"{mouth.OutsideWidth:0.#} x {mouth.OutsideHeight:0.#} mm at the mouth, ")
            + Text($"{face.OutsideWidth:0.#} x {face.OutsideHeight:0.#} at the face, {part.OutsideDepth:0.#} high"));
        yield return ("Give or take",
            Text($"{part.SizeTolerance:0.#} mm across, {part.DepthTolerance:0.#} mm in depth"));
        if (part.Order is { } order)
            yield return ("Ordered",
                Text($"{order.Side} {order.Width:0.##} x {order.Height:0.##} mm at the {order.At}, {order.Depth:0.##} deep: ")
                + Difference(order));
        var flange = FlangeFaceText.FormatWord(part.CutHeightFrom);
        yield return ("Ends", part.CutBy switch
        {
            "ring" => Text($"at the cut by the ring, {part.CutHeight:0.##} mm over the ") + flange,
            "saw" => Text($"at the cut, {part.CutHeight:0.##} mm over the ") + flange,
            _ => "at its flange, which is not counted in its size",
        });
        if (part.Mating is { } mating)
            yield return ("Fits", (mating.Fit == "over" ? "over the part" : "into the part")
                + (mating.MinPlay == mating.MaxPlay
                    ? Text($", with {mating.MinPlay:0.##} mm of play on every side along {mating.Skirt:0.##} mm of skirt")
                    : Text($", with {mating.MinPlay:0.##} to {mating.MaxPlay:0.##} mm of play along {mating.Skirt:0.##} mm ")
                        + "of skirt"));
        yield return ("Holds", Text($"{part.Litres.Min:0.##} to {part.Litres.Max:0.##} L to the edge"));
        if (part.Grams is { } grams) yield return ("Weighs", Text($"{grams.Min:0} to {grams.Max:0} g without a flange"));
        yield return ("Wall", part.WallFrom == "predicted"
            ? Text($"predicted {mouth.Wall:0.##} mm at the mouth ({mouth.MinWall:0.##} to {mouth.MaxWall:0.##}), ")
                + Text($"{part.FaceWall:0.##} mm on the face")
            : Text($"{mouth.Wall:0.##} mm, the mean of the whole sheet"));
    }

    private static string Difference(OrderReport order)
    {
        var size = Math.Abs(order.WidthMiss) < Rounding && Math.Abs(order.HeightMiss) < Rounding
            ? "size as ordered"
            : Text($"{order.WidthMiss:+0.##;-0.##;0} x {order.HeightMiss:+0.##;-0.##;0} mm in size, ")
                + "from the wall or the proportions drawn";
        if (Math.Abs(order.DepthMiss) < Rounding) return size + ", depth as ordered";
        var fromWall = Math.Abs(order.DepthMiss - order.FromBoards) > Rounding;
        var reason = (Math.Abs(order.FromBoards) > Rounding, fromWall) switch
        {
            (true, false) => "the boards",
            (true, true) => "boards and wall",
            _ => "the wall",
        };
        return Text($"{size}, {order.DepthMiss:+0.##;-0.##;0} mm in depth, from {reason}");
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
