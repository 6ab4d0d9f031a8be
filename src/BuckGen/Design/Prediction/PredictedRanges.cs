using System.Collections.Immutable;
using BuckGen.Intake.Catalogs;

namespace BuckGen.Design.Prediction;

/// <summary>
/// Ranges of the predicted figures: a coarser mesh tells how far off the mesh may be, the softest and the stiffest sheet how much
/// the material changes them.
/// </summary>
/// <param name="detail">The better mesh.</param>
/// <param name="best">The part on the better mesh.</param>
/// <param name="coarser">On the coarser one.</param>
internal sealed class PredictedRanges(FormingDetail detail, PartPostprocessor best, PartPostprocessor coarser)
{
    /// <summary>
    /// Relative error of a mean that is left where two meshes agree: it counts whole areas, which hardly depend on them.
    /// </summary>
    private const double MinMeanError = 0.02;

    /// <summary>
    /// The sheet of the middle modulus, the softest and the stiffest, all on one mesh; null when the modulus is given.
    /// </summary>
    public ImmutableArray<PartPostprocessor>? Materials { get; init; }

    /// <summary>The part with its ranges.</summary>
    public FormedPart AddTo(FormedPart part)
    {
        var (one, five) = (RangeOfShare(0.01), RangeOfShare(0.05));
        return WithPlaces(part) with
        {
            // The thickness of the thinnest 5 per cent of the area is never below that of the thinnest 1 per cent.
            ThicknessOf1Percent = (one, five) is ({ } o, { } f) ? new(o.Low, Math.Min(o.High, f.High)) : one,
            ThicknessOf5Percent = (one, five) is ({ } p, { } q) ? new(Math.Max(p.Low, q.Low), q.High) : five,
            MeanRange = RangeOfMean(),
        };
    }

    private FormedPart WithPlaces(FormedPart part) => part with
    {
        MeshSensitivity = Change(p => p.Thinnest(coarser.Ball)?.Thickness),
        MaterialSensitivity = Ratios(p => p.Thinnest(p.Ball)?.Thickness),
        Bridged = [.. part.Bridged.Concat(OnlyOfStiff(p => p.Bridged, b => best.GapNear(b.Place) > 0)).Select(WithRange)],
        Webs = [.. part.Webs.Concat(OnlyOfStiff(p => p.Webs, w => best.HasWebNear(w.Place))).Select(WithStay)],
    };

    /// <summary>What only the stiffest sheet has.</summary>
    private IEnumerable<T> OnlyOfStiff<T>(Func<PartPostprocessor, IEnumerable<T>> found, Func<T, bool> isOfBest) =>
        Materials is [_, _, { IsConverged: true } stiff] && best.IsConverged ? found(stiff).Where(p => !isOfBest(p)) : [];

    /// <summary>Relative change of a figure from the coarser mesh to the better one; null when one of them lacks it.</summary>
    private double? Change(Func<PartPostprocessor, double?> figure) =>
        (Figure(best, figure), Figure(coarser, figure)) is ({ } fine, { } coarse) ? fine / coarse - 1 : null;

    /// <summary>
    /// Ratios of a figure of the softest and the stiffest sheet to that between; null when one of them lacks it.
    /// </summary>
    private FigureRange? Ratios(Func<PartPostprocessor, double?> figure) => Materials is not [var middle, var soft, var stiff]
        ? new(1, 1)
        : (Figure(soft, figure), Figure(middle, figure), Figure(stiff, figure)) is ({ } low, { } between, { } high)
            ? MaterialError.Ratios(low, between, high) : null;

    private static double? Figure(PartPostprocessor part, Func<PartPostprocessor, double?> figure) =>
        part.IsConverged && figure(part) is > 0 and var value ? value : null;

    private FigureRange? RangeOfShare(double share) =>
        (Change(p => p.Quantile(share)), Ratios(p => p.Quantile(share))) is ({ } change, { } material)
            ? MaterialError.Widen(MeshError.Range(best.Quantile(share), change, detail), material) : null;

    private FigureRange? RangeOfMean()
    {
        if ((Change(p => p.MeanThickness()), Ratios(p => p.MeanThickness())) is not ({ } change, { } material)) return null;
        var (mean, error) = (best.MeanThickness(), MinMeanError + Math.Abs(change));
        return MaterialError.Widen(new(mean * (1 - error), mean * (1 + error)), material);
    }

    private WebPlace WithStay(WebPlace web) =>
        web with { StaysWhenSoft = Materials is not [_, var soft, _] || soft.HasWebNear(web.Place) };

    private BridgedPlace WithRange(BridgedPlace place)
    {
        double[] found =
        [
            place.Gap,
            .. ((PartPostprocessor[])[best, coarser, .. Materials ?? []]).Where(p => p.IsConverged)
                .Select(p => p.GapNear(place.Place)),
        ];
        return place with { Range = new(found.Min(), found.Max()) };
    }
}
