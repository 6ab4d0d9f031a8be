using BuckGen.Design.Bucks;
using BuckGen.Design.Forming;
using BuckGen.Design.Trimming;
using BuckGen.Geometry;
using BuckGen.Intake.Catalogs;

namespace BuckGen.Design.Parts;

/// <summary>Measures the finished part.</summary>
/// <param name="Shell">The cooled part before it is cut.</param>
/// <param name="Sharp">The same part with a sharp edge, to which sizes at the ends of its wall count.</param>
/// <param name="Plan">The boards of the buck.</param>
/// <param name="Cut">Where the part ends.</param>
internal sealed record PartMeasuring(PartShell Shell, PartShell Sharp, StackPlan Plan, TrimCut Cut)
{
    /// <summary>
    /// How far the plastic in the part may be off, as a share: by the prediction, and by the mean of the whole sheet (our
    /// estimate, no source).
    /// </summary>
    private const double PredictedShare = 0.1, MeanShare = 0.25;

    /// <summary>mm³ in a m³, and grams in a kilogram.</summary>
    private const double CubicMillimetres = 1e9, Grams = 1e3;

    /// <summary>Where the wall begins: the cut, or the plane of the flange.</summary>
    private double MouthHeight => Math.Max(0, Cut.Height);

    /// <summary>The part, measured.</summary>
    /// <param name="heights">
    /// Heights from the flange, rising, between which areas and perimeters are integrated; mm. Every second one is a middle.
    /// </param>
    /// <param name="density">Density of the plastic, kg/m³; null when not known.</param>
    public FinishedPart Measure(IReadOnlyList<double> heights, FigureRange? density)
    {
        var mouth = OutlineAt(MouthHeight);
        // The inside of a cavity's part ends on its floor.
        var face = OutlineAt(Shell.Depth) with { Inside = Sharp.Inside(Math.Max(MouthHeight, Shell.InsideFace)) };
        var touched = Shell.Depth - Cut.Height;
        var sizeTolerance = PartTolerance.Formed.At(Largest(mouth.Outside));
        // A cut by hand, or two formed faces; and the boards where they were not measured.
        var edge = Cut.Tool == TrimTool.None ? PartTolerance.Formed : PartTolerance.Trimmed;
        var (byHand, boards) = (edge.At(touched), Plan.LikelySpread);
        var depthTolerance = Math.Sqrt(byHand * byHand + boards * boards);
        var (held, plastic) = Integrals(heights);
        // Half of the tolerance of a width lies on each side.
        var spread = mouth.Inside.Perimeter * touched * sizeTolerance / 2 + mouth.Inside.Area * depthTolerance;
        var share = Shell.Wall.Basis == Prediction.WallBasis.Predicted ? PredictedShare : MeanShare;
        return new()
        {
            Cut = Cut,
            InsideDepth = Shell.IsMale ? touched : touched - Shell.Wall.Face,
            OutsideDepth = Shell.IsMale ? touched + Shell.Wall.Face : touched,
            DepthTolerance = depthTolerance,
            Mouth = mouth,
            Face = face,
            SizeTolerance = sizeTolerance,
            Volume = new(Math.Max(0, held - spread), held + spread),
            Mass = density is { } d
                ? new(plastic * d.Low / CubicMillimetres * Grams * (1 - share), plastic * d.High / CubicMillimetres * Grams
                    * (1 + share))
                : null,
            Wall = Shell.Wall,
            Shell = Shell,
        };
    }

    private PartOutline OutlineAt(double height)
    {
        var shell = height > 0 && height < Shell.Depth ? Shell : Sharp;
        return new(shell.Inside(height), shell.Outside(height), shell.Wall.BandAt(height));
    }

    /// <summary>The volume inside the part and that of its plastic, mm³, from the mouth to the face.</summary>
    /// <remarks>
    /// By Simpson's rule, exact while no part comes or goes. Inside a cavity's part the clear area is the touched area less
    /// perimeter times wall: the corners differ by less than 4 times the square of the wall.
    /// </remarks>
    private (double Held, double Plastic) Integrals(IReadOnlyList<double> heights)
    {
        var floor = Shell.InsideFace;
        double[] faces =
        [
            MouthHeight, .. Shell.WithBends(heights.Where((h, i) => i % 2 == 0)).Where(h => h > MouthHeight + 1e-6), Shell.Depth,
        ];
        var (held, plastic) = (Math.Max(0, -Cut.Height) * Held(MouthHeight), 0.0);
        for (var i = 1; i < faces.Length; i++)
        {
            var (low, high) = (faces[i - 1], faces[i]);
            if (high <= low) continue;
            var cosine = Shell.PieceAt((low + high) / 2).CosineOfDraft;
            plastic += Simpson(h => Shell.Touching(h).Perimeter * (Shell.Wall.At(h) / cosine), low, high);
            if (low < floor) held += Simpson(Held, low, Math.Min(high, floor));
        }

        return (held, plastic + Shell.Touching(Shell.Depth).Area * Shell.Wall.Face);
    }

    private double Held(double height)
    {
        var touched = Shell.Touching(height);
        return Shell.IsMale ? touched.Area
            : Math.Max(0, touched.Area - touched.Perimeter * Shell.LevelWall(height));
    }

    private static double Simpson(Func<double, double> value, double low, double high) =>
        (value(low) + 4 * value((low + high) / 2) + value(high)) / 6 * (high - low);

    private static double Largest(Region region) =>
        region.IsEmpty ? 0 : Math.Max(region.Bounds.Width, region.Bounds.Height);
}
