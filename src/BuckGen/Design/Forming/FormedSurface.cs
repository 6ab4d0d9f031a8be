using BuckGen.Design.Bucks;

namespace BuckGen.Design.Forming;

/// <summary>The areas of a formed sheet, from the smooth drafted solid. mm².</summary>
/// <param name="Flat">The flat sheet that becomes it: the clear opening over a male buck, the mouth of a cavity.</param>
/// <param name="Formed">
/// The same sheet when it lies on the buck, and on the sides of the plates under a male one that go through the frame with it.
/// </param>
/// <param name="Wall">The part of <paramref name="Formed"/> that stands on the sloping walls of the part.</param>
public sealed record FormedSurface(double Flat, double Formed, double Wall)
{
    /// <summary>Formed area over flat area: at least 1.</summary>
    public double ArealRatio => Formed / Flat;

    /// <summary>The surface of a drafted solid.</summary>
    /// <param name="shape">The solid.</param>
    /// <param name="kind">Male or female.</param>
    /// <param name="opening">Clear opening of the frame, mm²; used over a male buck.</param>
    /// <param name="plateSides">Sides of the plates under a male buck that the sheet covers, mm², 0 or more.</param>
    /// <param name="steps">Heights from foot to face, rising, between which the wall is followed.</param>
    /// <param name="cancellation">Stops the work.</param>
    internal static FormedSurface Compute(DraftedShape shape, BuckKind kind, double opening, double plateSides,
        IReadOnlyList<double> steps, CancellationToken cancellation)
    {
        steps = [.. shape.WithBends(steps)];
        // What lies between two bends is divided by one cosine.
        var (wall, upright, cosine) = (0.0, 0.0, 0.0);
        shape.Prepare(steps.Zip(steps.Skip(1), (low, high) => (low + high) / 2), cancellation);
        for (var i = 1; i < steps.Count; i++)
        {
            // Simpson's rule: exact while no part comes or goes, for then the perimeter changes in proportion to the height.
            var (low, high) = (steps[i - 1], steps[i]);
            var slope = shape.Side.PieceAt(shape.FromFlange((low + high) / 2)).CosineOfDraft;
            if (slope != cosine && i > 1) (wall, upright) = (wall + upright / cosine, 0);
            cosine = slope;
            var around = shape.At(low, cancellation).Perimeter + 4 * shape.At((low + high) / 2, cancellation).Perimeter
                + shape.At(high, cancellation).Perimeter;
            upright += around / 6 * (high - low);
        }

        wall += upright / cosine;
        var (foot, face) = (shape.At(shape.Foot, cancellation).Area, shape.At(shape.Face, cancellation).Area);
        return kind == BuckKind.Male
            ? new(opening, opening - foot + face + wall + plateSides, wall)
            : new(face, foot + wall, wall);
    }
}
