using System.Collections.Immutable;
using System.CommandLine;
using BuckGen.Cli.Help;
using BuckGen.Cli.Terminals;
using BuckGen.Design.Specs;
using BuckGen.Design.Venting;
using BuckGen.Intake.Catalogs;
using BuckGen.Plugins;

namespace BuckGen.Cli.Commands;

/// <summary>The options for vents and vacuum; a job file has more settings.</summary>
internal sealed class VentOptions
{
    private static readonly VentSpec Defaults = new();

    private readonly Option<string?> pattern = QuantityOption.Create(
        VentSettings.Pattern, "PATTERN", "Place vents (needs --base): walls, grid, given, or the name of a plug-in's pattern.")
            .WithCompletions(() => Extensions.BuiltIn.VentPatterns.Select(p => p.Name));

    private readonly Option<double?> spacing = QuantityOption.Create(VentSettings.Spacing);
    private readonly Option<double?> diameter = QuantityOption.Create(VentSettings.Diameter);
    private readonly Option<Drills?> drills = QuantityOption.Create(VentSettings.Drills);
    private readonly Option<double?> bore = QuantityOption.Create(VentSettings.Bore);
    private readonly Option<PlenumKind?> plenum = QuantityOption.Create(
        PlenumSettings.Kind,
        "A layer under the base that leads the air away, cut from the base's board (needs --base): "
        + "channels to the port, or feet");

    public void AddTo(HelpedCommand command) => command.Add(OptionGroup.Vents, pattern, spacing, diameter, drills, bore, plenum);

    /// <summary>The spec with vents when they are asked for, or when the command is about nothing else.</summary>
    /// <param name="parsed">The arguments.</param>
    /// <param name="buck">The spec so far.</param>
    /// <param name="patterns">The patterns that can be named.</param>
    /// <param name="always">True for vents even without an option for them.</param>
    public BuckSpec Apply(ParseResult parsed, BuckSpec buck, ImmutableArray<IVentPattern> patterns, bool always)
    {
        if (always && buck.Base is null) buck = buck with { Base = new(buck.Stock.MaxBy(s => s.Thickness)!) };
        return buck with
        {
            Vents = always || parsed.GetValue(pattern) is not null
                ? Defaults with
                {
                    Pattern = parsed.GetValue(pattern) is { } word ? PatternOf(word, patterns) : Defaults.Pattern,
                    Spacing = parsed.GetValue(spacing) ?? Defaults.Spacing,
                    Diameter = parsed.GetValue(diameter),
                    Drills = parsed.GetValue(drills) ?? Defaults.Drills,
                    BoreDiameter = parsed.GetValue(bore) ?? Defaults.BoreDiameter,
                }
                : null,
            Plenum = parsed.GetValue(plenum) is { } kind ? new(buck.Base?.Stock ?? buck.Stock[0], kind) : null,
        };
    }

    private static IVentPattern PatternOf(string word, ImmutableArray<IVentPattern> patterns) =>
        patterns.FirstOrDefault(p => p.Name.Equals(word, StringComparison.OrdinalIgnoreCase))
        ?? throw new UsageException($"--vents is '{word}'; it must be {string.Join(" or ", patterns.Select(p => p.Name))}.");
}
