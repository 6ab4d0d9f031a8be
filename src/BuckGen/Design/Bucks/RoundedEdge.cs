using BuckGen.Settings;

namespace BuckGen.Design.Bucks;

/// <summary>
/// The round that a router bit or sanding gives the upper edge of the glued buck: an arc tangent to the wall and to the plane at
/// its top. On a male buck that is the edge of the face, on a cavity the lip of the rim.
/// </summary>
internal static class RoundedEdge
{
    /// <summary>The side with its upper edge rounded; the same one for a radius of 0.</summary>
    /// <param name="side">The side with its sharp edge.</param>
    /// <param name="kind">Where its upper edge lies.</param>
    /// <param name="radius">Radius of the round, mm.</param>
    /// <param name="chord">How far chords may stand inside the arc, mm.</param>
    /// <exception cref="SpecException">The round is higher than the piece of wall that it is tangent to.</exception>
    public static SideProfile Apply(SideProfile side, BuckKind kind, double radius, double chord)
    {
        if (radius == 0) return side;
        var isMale = kind == BuckKind.Male;
        var wall = isMale ? side.Pieces.Last() : side.Pieces.First();
        var draft = wall.Draft * Math.PI / 180;
        var height = radius * (1 - Math.Sin(draft));
        if (height >= wall.Height)
            throw new SpecException(FormattableString.Invariant(
                $"An edge radius of {radius:0.##} mm reaches {height:0.##} mm down the wall, but the straight wall below the ")
                + FormattableString.Invariant($"edge is only {wall.Height:0.##} mm high; use a smaller radius."));
        // From the tangent point on the wall to that on the plane, the edge counted from its sharp corner.
        var inward = radius * (1 - Math.Sin(draft)) / Math.Cos(draft);
        var step = 2 * Math.Acos(Math.Max(0, 1 - chord / radius));
        var count = Math.Max(2, (int)Math.Ceiling((Math.PI / 2 - draft) / step));
        var corner = isMale ? side.Bends[^1] : side.Bends[0];
        var toward = isMale ? 1 : -1;
        var turns = Enumerable.Range(0, count + 1).Select(i => draft + (Math.PI / 2 - draft) * i / count);
        var arc = turns.Select(turn => new SideBend(
            corner.FromFlange - toward * radius * (1 - Math.Sin(turn)),
            corner.Inset + toward * (inward - radius * Math.Cos(turn)))).ToArray();
        arc[^1] = new(corner.FromFlange, corner.Inset + toward * inward);
        return SideProfile.FromBends(isMale ? [.. side.Bends[..^1], .. arc] : [.. arc.Reverse(), .. side.Bends[1..]]);
    }
}
