using BuckGen.Design.Bucks;
using BuckGen.Intake.Catalogs;

namespace BuckGen.Design.Checks;

/// <summary>A limit and where it comes from.</summary>
internal readonly record struct Limit(double Value, string Source);

/// <summary>
/// The limits that follow the plastic: the maker's own comes first, then the plastic's in the catalog, then one for plastics in
/// general.
/// </summary>
internal static class PlasticLimits
{
    /// <summary>Least draft, degrees.</summary>
    public static Limit MinDraft(BuckSpec spec) => spec.Kind == BuckKind.Male
        ? Choose(spec.Checks.MinDraftMale, spec, "min-draft-male", new(3, "design guidelines of a former"))
        : Choose(spec.Checks.MinDraftFemale, spec, "min-draft-female", new(2, "design guidelines of a former"));

    /// <summary>From the least to the most draft that sources advise, degrees.</summary>
    public static FigureRange PublishedDraft(BuckSpec spec) => spec.Kind == BuckKind.Male
        ? spec.Sheet?.Plastic?.DraftMalePublished ?? new(1.5, 6)
        : spec.Sheet?.Plastic?.DraftFemalePublished ?? new(0, 2);

    /// <summary>Greatest depth over width.</summary>
    public static Limit MaxDepthToWidth(BuckSpec spec) => (spec.Kind, spec.Former.PlugGap) switch
    {
        (BuckKind.Male, _) => Choose(spec.Checks.MaxDepthMale, spec, "depth-male", new(1, "Throne, Technology of Thermoforming, 1996 (from memory)")),
        (_, null) => MaxCavityDepthToWidth(spec),
        _ => new(spec.Checks.MaxDepthPlugged, "a sheet former's guide to wall thickness: a plug serves from 1 to 1.5"),
    };

    /// <summary>Greatest depth over width of a cavity, or of a counter in a male buck, without a plug.</summary>
    public static Limit MaxCavityDepthToWidth(BuckSpec spec) =>
        Choose(spec.Checks.MaxDepthFemale, spec, "depth-female", new(0.75, "a former's advice: 75 per cent of the smaller dimension"));

    private static Limit Choose(double? own, BuckSpec spec, string figure, Limit general) => own is { } value
        ? new(value, "the maker's own limit")
        : spec.Sheet?.Plastic is { } plastic && plastic.Find(figure) is { Range: { } range } found
            ? new(range.Low, $"{plastic.Name}: {string.Join("; ", found.Sources)}")
            : general;
}
