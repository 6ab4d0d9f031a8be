using System.CommandLine;
using BuckGen.Cli.Help;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;
using BuckGen.Plugins;

namespace BuckGen.Cli.Commands;

/// <summary>How an outline file is read: shared by every command that takes one.</summary>
internal sealed class ReadingOptions
{
    private readonly Option<string?> units = QuantityOption.Create(
        OutlineSettings.Units, "UNIT",
        "Unit of the drawing, only when the file is wrong or silent about it: mm, cm, m, in or ft.").WithCompletions(() =>
            ["mm", "cm", "m", "in", "ft"]);

    private readonly Option<string[]> layers = QuantityOption.Names(OutlineSettings.Layers);

    private readonly Option<double?> width = QuantityOption.Create(OutlineSettings.Width),
        height = QuantityOption.Create(OutlineSettings.Height), scale = QuantityOption.Create(OutlineSettings.Scale);

    private readonly Option<Background?> background = QuantityOption.Create(OutlineSettings.Background);

    private readonly Option<bool> unite = QuantityOption.Create(OutlineSettings.Unite);

    private readonly Option<double?> join = QuantityOption.Create(OutlineSettings.Join);

    private readonly Option<double?> tolerance = QuantityOption.Create(OutlineSettings.Chord);

    private readonly Option<double?> minLoopWidth = QuantityOption.Create(OutlineSettings.MinLoopWidth);

    public void AddTo(HelpedCommand command) => command.Add(OptionGroup.Drawing, units, layers, width, height,
        scale, background, unite, join, tolerance, minLoopWidth);

    /// <summary>How a file is read.</summary>
    /// <param name="parsed">The arguments.</param>
    /// <param name="extensions">The kinds of files that are understood.</param>
    public OutlineOptions Read(ParseResult parsed, Extensions extensions)
    {
        var tolerances = new Tolerance(
            parsed.GetValue(tolerance) ?? Tolerance.Default.Chord, parsed.GetValue(join)
                ?? Tolerance.Default.Join, Tolerance.Default.Coincident);
        return new(tolerances, parsed.GetValue(units), [.. parsed.GetValue(layers) ?? []], parsed.GetValue(minLoopWidth)
            ?? OutlineOptions.Default.MinLoopWidth)
        {
            Formats = extensions.OutlineFormats,
            Background = parsed.GetValue(background) ?? OutlineOptions.Default.Background,
            Unite = parsed.GetValue(unite),
            Width = parsed.GetValue(width),
            Height = parsed.GetValue(height),
            Scale = parsed.GetValue(scale),
        };
    }
}
