using System.Collections.Immutable;
using BuckGen.Settings;

namespace BuckGen.Design.Bucks;

/// <summary>A place where the slope of the side changes.</summary>
/// <param name="FromFlange">Distance from the plane of the flange, mm.</param>
/// <param name="Inset">How far the wall stands inside the outline at the flange there, mm.</param>
internal readonly record struct SideBend(double FromFlange, double Inset);

/// <summary>
/// The side as it rises from the plane of the flange to the face: how far it leads in, straight from bend to bend.
/// </summary>
/// <remarks>
/// The flange lies at the foot of a male buck and at the rim of a cavity. A ledge is a stretch so low that no board and no
/// tolerance sees it: every height then has one outline.
/// </remarks>
internal sealed class SideProfile
{
    /// <summary>Half of the height that a ledge is given, mm.</summary>
    public const double HalfLedge = 0.0005;

    private SideProfile(ImmutableArray<SideBend> bends, double? draft) => (Bends, StraightDraft) = (bends, draft);

    /// <summary>The bends, from the flange to the face, both ends included.</summary>
    public ImmutableArray<SideBend> Bends { get; }

    /// <summary>The draft of a side that is straight from end to end, degrees; null for another.</summary>
    public double? StraightDraft { get; }

    /// <summary>From the flange to the face, mm.</summary>
    public double Depth => Bends[^1].FromFlange;

    /// <summary>The stretches of wall between its bends, from the flange to the face; ledges are among them.</summary>
    public IEnumerable<SidePiece> Pieces => Bends.Zip(Bends.Skip(1), (a, b) => new SidePiece(a, b, StraightDraft));

    /// <summary>Draft of the wall next to the face, degrees.</summary>
    public double DraftAtFace => Pieces.Last().Draft;

    /// <summary>The smallest draft, degrees.</summary>
    public double MinDraft => Pieces.Min(p => p.Draft);

    /// <summary>How far the wall moves from the flange to the face, either way, mm.</summary>
    public double Shift => Math.Abs(Bends[^1].Inset - Bends[0].Inset);

    /// <summary>A side of one draft.</summary>
    /// <param name="draft">Degrees.</param>
    /// <param name="depth">mm.</param>
    public static SideProfile Straight(double draft, double depth) =>
        new([new(0, 0), new(depth, depth * Math.Tan(draft * Math.PI / 180))], draft);

    /// <summary>The side of a buck whose depth is known.</summary>
    /// <param name="spec">Its draft, or the stretches of its side.</param>
    /// <param name="depth">Depth of the buck, mm.</param>
    /// <param name="scale">What lengths of the cooled part are multiplied by.</param>
    /// <exception cref="SpecException">The stretches leave nothing of the depth for the one without a height.</exception>
    public static SideProfile Create(StackSpec spec, double depth, double scale = 1)
    {
        if (spec.Side.IsEmpty) return Straight(spec.Draft, depth);
        var given = spec.Side.Sum(s => s.Height ?? 0) * scale;
        if (depth - given < SideStretch.MinHeight)
            throw new SpecException(FormattableString.Invariant(
                $"The stretches of the side that have a height take {given:0.##} mm, but the buck is {depth:0.##} mm deep: ")
                + "nothing is left for the one without. Make them lower, or the part deeper.");
        if (spec.Side.Select(s => s.Draft).Distinct().ToArray() is [{ } draft]) return Straight(draft, depth);
        var bends = ImmutableArray.CreateBuilder<SideBend>();
        var at = new SideBend(0, 0);
        bends.Add(at);
        foreach (var stretch in spec.Side)
        {
            if (stretch.IsLedge)
            {
                at = at with { Inset = at.Inset + stretch.Inset!.Value * scale };
                continue;
            }

            var height = stretch.Height * scale ?? depth - given;
            var inset = stretch.Inset * scale ?? height * Math.Tan(stretch.Draft!.Value * Math.PI / 180);
            // Ledges at one height are one ledge. The walls beside it keep their slopes.
            if (at.Inset > bends[^1].Inset)
            {
                var under = HalfLedge * (bends[^1].Inset - bends[^2].Inset) / (bends[^1].FromFlange - bends[^2].FromFlange);
                bends[^1] = new(at.FromFlange - HalfLedge, bends[^1].Inset - under);
                bends.Add(new(at.FromFlange + HalfLedge, at.Inset + HalfLedge * inset / height));
            }

            at = new(at.FromFlange + height, at.Inset + inset);
            bends.Add(at);
        }

        // The sum of the heights is the depth but for rounding.
        bends[^1] = at with { FromFlange = depth };
        return new(bends.ToImmutable(), null);
    }

    /// <summary>The same side with other bends.</summary>
    public static SideProfile FromBends(IEnumerable<SideBend> bends) => new([.. bends], null);

    /// <summary>How far the wall stands inside the outline at the flange, mm; beyond its ends as at the end.</summary>
    public double InsetAt(double fromFlange)
    {
        if (fromFlange <= Bends[0].FromFlange) return Bends[0].Inset;
        for (var i = 1; i < Bends.Length; i++)
        {
            var (low, high) = (Bends[i - 1], Bends[i]);
            if (fromFlange <= high.FromFlange)
                return low.Inset + (high.Inset - low.Inset) * (fromFlange - low.FromFlange) / (high.FromFlange - low.FromFlange);
        }

        return Bends[^1].Inset;
    }

    /// <summary>The piece in whose middle part a distance from the flange lies.</summary>
    public SidePiece PieceAt(double fromFlange) =>
        Pieces.FirstOrDefault(p => fromFlange <= p.End.FromFlange) is { End.FromFlange: > 0 } piece ? piece : Pieces.Last();

    /// <summary>Length of a line up the side, mm.</summary>
    /// <param name="depth">Depth of a straight side, mm.</param>
    public double Length(double depth) => StraightDraft is { } draft ? depth / SidePiece.Cosine(draft)
        : Pieces.Sum(p => p.Height / p.CosineOfDraft);

    /// <summary>
    /// How far the other side of the formed wall lies from the wood, measured level, mm. Over a male buck that is outward, in a
    /// cavity inward.
    /// </summary>
    /// <param name="fromFlange">Height, mm.</param>
    /// <param name="thickness">Thickness square to the wall, mm.</param>
    /// <param name="isMale">True over a male buck.</param>
    public double LevelWall(double fromFlange, double thickness, bool isMale)
    {
        if (StraightDraft is { } draft) return thickness / SidePiece.Cosine(draft);
        // The other side of the sheet is the outermost that circles round the points of the wood reach.
        var sign = isMale ? -1 : 1;
        var here = sign * InsetAt(fromFlange);
        var farthest = 0.0;
        foreach (var bend in Bends)
            if (Math.Abs(bend.FromFlange - fromFlange) is var away && away <= thickness)
                farthest = Math.Max(farthest, sign * bend.Inset + Math.Sqrt(thickness * thickness - away * away) - here);
        var pieces = Pieces.ToArray();
        for (var i = 0; i < pieces.Length; i++)
        {
            var (piece, slope) = (pieces[i], sign * pieces[i].Slope);
            var lengthened = Math.Sqrt(1 + slope * slope);
            var touch = fromFlange + thickness * slope / lengthened;
            // Beyond its ends the wall is taken to go on.
            if ((i == 0 || touch >= piece.Start.FromFlange) && (i + 1 == pieces.Length || touch <= piece.End.FromFlange))
                farthest = Math.Max(farthest, sign * piece.Start.Inset + slope * (fromFlange - piece.Start.FromFlange)
                    + thickness * lengthened - here);
        }

        return farthest;
    }
}

/// <summary>A straight piece of the side.</summary>
/// <param name="Start">Its end next to the flange.</param>
/// <param name="End">Its end next to the face.</param>
/// <param name="Given">Its draft as it was given, degrees; null where it follows from the ends.</param>
internal readonly record struct SidePiece(SideBend Start, SideBend End, double? Given)
{
    /// <summary>mm.</summary>
    public double Height => End.FromFlange - Start.FromFlange;

    /// <summary>Inset over height.</summary>
    public double Slope => (End.Inset - Start.Inset) / Height;

    /// <summary>Degrees away from upright.</summary>
    public double Draft => Given ?? Math.Atan(Slope) * 180 / Math.PI;

    /// <summary>Height over length.</summary>
    public double CosineOfDraft => Given is { } draft ? Cosine(draft) : 1 / Math.Sqrt(1 + Slope * Slope);

    /// <summary>True for a level piece.</summary>
    public bool IsLedge => Height <= 2.5 * SideProfile.HalfLedge;

    /// <summary>The cosine of an angle in degrees.</summary>
    public static double Cosine(double draft) => Math.Cos(draft * Math.PI / 180);
}
