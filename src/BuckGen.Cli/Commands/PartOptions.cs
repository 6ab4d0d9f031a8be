using System.CommandLine;
using BuckGen.Cli.Help;
using BuckGen.Cli.Terminals;
using BuckGen.Design.Forming;
using BuckGen.Design.Parts;
using BuckGen.Design.Specs;
using BuckGen.Intake.Catalogs;

namespace BuckGen.Cli.Commands;

/// <summary>The options for the plastic sheet and the former; a job file has more settings.</summary>
internal sealed class PartOptions
{
    private static readonly SheetSpec Defaults = new();

    private readonly Option<string?> plastic = QuantityOption.Create(SheetSettings.Plastic, "PLASTIC")
        .WithCompletions(CatalogFiles.Plastics);

    private readonly Option<double?> gauge = QuantityOption.Create(SheetSettings.Gauge);
    private readonly Option<double?> minWall = QuantityOption.Create(SheetSettings.MinWall);
    private readonly Option<PartSide?> part = QuantityOption.Create(
        PartSettings.Side, "Drawing and --depth show the finished part, after trimming: its inside or its outside.");
    private readonly Option<PartEnd?> at = QuantityOption.Create(PartSettings.At);
    private readonly Option<string?> partSize = QuantityOption.Create(
        PartSettings.Size, "Width and height of the part, such as 120x80mm; the drawing is scaled to it.");
    private readonly Option<double?> cutHeight = QuantityOption.Create(
        PartSettings.CutHeight, "Height over the underside of the flange at which you cut the part; left out: a ring cuts, or "
            + "the flange stays.");
    private readonly Option<string?> frame =
        QuantityOption.Create(FormerSettings.Frame, "Clear opening of the clamp frame, such as 300x200mm.");
    private readonly Option<string?> platen =
        QuantityOption.Create(FormerSettings.Platen, "What the buck stands on, such as 290x190mm.");
    private readonly Option<double?> travel = QuantityOption.Create(FormerSettings.Travel);
    private readonly Option<bool> groups = new("--groups")
    {
        Description = "Make a sign larger than the frame in several bucks, with a register board from the first board named.",
    };
    private readonly Option<string[]> sizes =
        QuantityOption.Sizes(SheetSettings.Sizes, "Sizes in which you can buy the sheet, such as 1220x610mm.");

    public void AddTo(HelpedCommand command)
    {
        command.Add(OptionGroup.FinishedPart, part, at, partSize, cutHeight);
        command.Add(OptionGroup.Sheet, plastic, gauge, minWall, sizes);
        command.Add(OptionGroup.Former, frame, platen, travel, groups);
    }

    /// <summary>The spec with the sheet when an option concerns it, or when the command is about nothing else.</summary>
    /// <param name="parsed">The arguments.</param>
    /// <param name="buck">The spec so far.</param>
    /// <param name="catalog">Where the plastic is looked up.</param>
    /// <param name="always">True for a sheet even when no option concerns it.</param>
    public BuckSpec Apply(ParseResult parsed, BuckSpec buck, Catalog catalog, bool always)
    {
        // Vents are sized by the sheet.
        var hasSheet = always || buck.Vents is not null || parsed.GetValue(gauge) is not null
            || parsed.GetValue(plastic) is not null || parsed.GetValue(minWall) is not null
            || parsed.GetValue(sizes) is { Length: > 0 };
        return buck with
        {
            Part = Part(parsed),
            Groups = parsed.GetValue(groups) ? new(buck.Stock[0]) : null,
            Sheet = !hasSheet ? null : Defaults with
            {
                Plastic = parsed.GetValue(plastic) is { } word
                    ? catalog.FindPlastic(word)
                    ?? throw new UsageException($"--plastic is '{word}', which is not in the catalog; see 'buckgen catalog'.")
                    : null,
                Gauge = parsed.GetValue(gauge) ?? Defaults.Gauge,
                MinWall = parsed.GetValue(minWall),
                Sizes = [.. (parsed.GetValue(sizes) ?? []).Select(s => SizeText.Parse(SheetSettings.Sizes, s))],
            },
            Former = buck.Former with
            {
                Opening = parsed.GetValue(frame) is { } text ? SizeText.Parse(FormerSettings.Frame, text) : null,
                Platen = parsed.GetValue(platen) is { } size ? SizeText.Parse(FormerSettings.Platen, size) : null,
                Travel = parsed.GetValue(travel),
            },
        };
    }

    /// <summary>True when the drawing shows the finished part.</summary>
    public bool IsOrdered(ParseResult parsed) => parsed.GetValue(part) is not null;

    private PartSpec? Part(ParseResult parsed)
    {
        if (parsed.GetValue(part) is { } side)
            return new()
            {
                Side = side,
                At = parsed.GetValue(at) ?? PartSettings.At.Default,
                Size = parsed.GetValue(partSize) is { } text ? SizeText.Parse(PartSettings.Size, text) : null,
                CutHeight = parsed.GetValue(cutHeight),
            };
        foreach (var option in (Option[])[at, partSize, cutHeight])
            if (parsed.GetResult(option) is { Implicit: false })
                throw new UsageException(
                    $"{option.Name} is about the finished part; say with {part.Name} which side of it the drawing shows.");
        return null;
    }
}
