using System.CommandLine;
using BuckGen.Cli.Help;
using BuckGen.Cli.Terminals;
using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Design.Trimming;

namespace BuckGen.Cli.Commands;

/// <summary>The options for ring, flange template and panel; a job file has more settings.</summary>
internal sealed class FinishOptions
{
    private static readonly JigSpec Ring = new();
    private static readonly FlangeSpec Template = new(new Stock("", 1));
    private static readonly PanelSpec Face = new(new Stock("", 1));

    private readonly Option<double?> trimHeight = QuantityOption.Create(JigSettings.TrimHeight);
    private readonly Option<double?> clearance = QuantityOption.Create(JigSettings.Clearance);
    private readonly Option<double?> land = QuantityOption.Create(JigSettings.Land);
    private readonly Option<double?> flange = QuantityOption
        .Create(FlangeSettings.Width with { Default = null }, "A template and a nest to rout a flange of this width.");
    private readonly Option<double?> bushing = QuantityOption.Create(FlangeSettings.Bushing);
    private readonly Option<double?> bit = QuantityOption.Create(FlangeSettings.Bit);
    private readonly Option<bool> panel = new("--panel") { Description = "A panel that the part shows through." };
    private readonly Option<double?> fit = QuantityOption
        .Create(PanelSettings.Fit,
            "Room between part and panel; if omitted: from size and thermal growth; below 0: a press fit.");
    private readonly Option<double?> panelMargin = QuantityOption.Create(PanelSettings.Margin);

    public void AddTo(HelpedCommand command) =>
        command.Add(OptionGroup.FinishedPart, trimHeight, clearance, land, flange, bushing, bit, panel, fit, panelMargin);

    /// <summary>
    /// The spec with a ring, and with template and panel when they are asked for; they are cut from the first sheet named.
    /// </summary>
    public BuckSpec Apply(ParseResult parsed, BuckSpec buck)
    {
        foreach (var (option, needs) in (ReadOnlySpan<(Option, Option)>)[(bushing, flange), (bit, flange), (fit, panel),
            (panelMargin, panel)])
            if (parsed.GetResult(option) is { Implicit: false } && parsed.GetResult(needs) is not { Implicit: false })
                throw new UsageException($"{option.Name} has no effect without {needs.Name}.");
        return buck with
        {
            Jig = Ring with
            {
                TrimHeight = parsed.GetValue(trimHeight),
                Clearance = parsed.GetValue(clearance) ?? Ring.Clearance,
                Land = parsed.GetValue(land) ?? Ring.Land,
            },
            Flange = parsed.GetValue(flange) is not { } width ? null : new(buck.Stock[0])
            {
                Width = width,
                Bushing = parsed.GetValue(bushing) ?? Template.Bushing,
                Bit = parsed.GetValue(bit) ?? Template.Bit,
            },
            Panel = !parsed.GetValue(panel) ? null : new(buck.Stock[0])
            {
                Fit = parsed.GetValue(fit),
                Margin = parsed.GetValue(panelMargin) ?? Face.Margin,
            },
        };
    }
}
