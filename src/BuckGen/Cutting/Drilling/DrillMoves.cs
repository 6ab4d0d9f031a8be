namespace BuckGen.Cutting.Drilling;

/// <summary>The lines that drill one hole, from the safe height and back to it.</summary>
internal static class DrillMoves
{
    /// <summary>How far above the ground already drilled the bit slows down when it comes back after a peck, mm.</summary>
    private const double ChipRoom = 0.5;

    /// <summary>One cycle, or the same in plain moves.</summary>
    public static IEnumerable<string> ForHole(DrillHole hole, DrillProgramSpec spec) =>
        spec.Cycles ? [Cycle(hole, spec)] : Plain(hole, spec);

    /// <summary>
    /// Every line gives all of its numbers, so that no line depends on one before it. G98 brings the bit back to where it was
    /// before the cycle: the safe height.
    /// </summary>
    private static string Cycle(DrillHole hole, DrillProgramSpec spec)
    {
        var place = $"{Place(hole)} {Z(-hole.Depth)} R{DrillText.Length(spec.RetractHeight)}";
        return spec.Peck is { } peck ? $"G98 G83 {place} Q{DrillText.Length(peck)}" : $"G98 G81 {place}";
    }

    private static IEnumerable<string> Plain(DrillHole hole, DrillProgramSpec spec)
    {
        yield return $"G0 {Place(hole)}";
        yield return $"G0 {Z(spec.RetractHeight)}";
        var bottom = DrillText.Rounded(hole.Depth);
        for (var ground = 0.0; ground < bottom;)
        {
            if (ground > 0)
            {
                yield return $"G0 {Z(spec.RetractHeight)}";
                yield return $"G0 {Z(Math.Min(ChipRoom - ground, spec.RetractHeight))}";
            }

            ground = Math.Min(bottom, DrillText.Rounded(ground + (spec.Peck ?? bottom)));
            yield return $"G1 {Z(-ground)}";
        }

        yield return $"G0 {Z(spec.SafeHeight)}";
    }

    private static string Place(DrillHole hole) => $"X{DrillText.Length(hole.Centre.X)} Y{DrillText.Length(hole.Centre.Y)}";

    private static string Z(double height) => $"Z{DrillText.Length(height)}";
}
