using BuckGen.Design.Bucks;
using BuckGen.Intake.Catalogs;
using BuckGen.Settings;

namespace BuckGen.Design.Checks;

/// <summary>A limit and where it comes from.</summary>
internal readonly record struct Limit(double Value, string Source);

/// <summary>
/// The limits that follow the plastic: the maker's own comes first, then the plastic's in the catalog, then one for plastics in
/// general.
/// </summary>
/// <param name="Kind">Male or female.</param>
/// <param name="Plastic">The plastic; null when it is not known.</param>
/// <param name="IsPlugged">True when a plug pushes the sheet into a cavity.</param>
/// <param name="Checks">The maker's own limits.</param>
internal sealed record PlasticLimits(BuckKind Kind, CatalogPlastic? Plastic, bool IsPlugged, CheckSpec Checks)
{
    /// <summary>Least draft, degrees.</summary>
    public Limit MinDraft => Kind == BuckKind.Male
        ? Choose(Checks.MinDraftMale, "min-draft-male", CheckSettings.MinDraftMale)
        : Choose(Checks.MinDraftFemale, "min-draft-female", CheckSettings.MinDraftFemale);

    /// <summary>From the least to the most draft that sources advise, degrees.</summary>
    public FigureRange PublishedDraft => Kind == BuckKind.Male
        ? Plastic?.DraftMalePublished ?? new(1.5, 6)
        : Plastic?.DraftFemalePublished ?? new(0, 2);

    /// <summary>Greatest depth over width.</summary>
    public Limit MaxDepthToWidth => (Kind, IsPlugged) switch
    {
        (BuckKind.Male, _) => Choose(Checks.MaxDepthMale, "depth-male", CheckSettings.MaxDepthMale),
        (_, false) => MaxCavityDepthToWidth,
        _ => new(Checks.MaxDepthPlugged, CheckSettings.MaxDepthPlugged.Source),
    };

    /// <summary>Greatest depth over width of a cavity, or of a counter in a male buck, without a plug.</summary>
    public Limit MaxCavityDepthToWidth => Choose(Checks.MaxDepthFemale, "depth-female", CheckSettings.MaxDepthFemale);

    private Limit Choose(double? own, string figure, NumberSetting general) => own is { } value
        ? new(value, "the maker's own limit")
        : Plastic is { } plastic && plastic.Find(figure) is { Range: { } range } found
            ? new(range.Low, $"{plastic.Name}: {string.Join("; ", found.Sources)}")
            : new(general.Example, general.Source);
}
