using System.CommandLine;
using BuckGen.Cli.Help;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;
using BuckGen.Plugins;

namespace BuckGen.Cli.Commands;

/// <summary>How an outline file is read: shared by every command that takes one.</summary>
internal sealed class ReadingOptions
{
    private readonly Option<string?> units = new Option<string?>("--units")
    {
        Description = "Unit of the drawing when the file is wrong or silent: mm, cm, m, in or ft.", HelpName = "UNIT",
    }.WithCompletions(() => ["mm", "cm", "m", "in", "ft"]);

    private readonly Option<string[]> layers = new("--layers")
    {
        Description = "Only these layers of a DXF.", HelpName = "NAME", AllowMultipleArgumentsPerToken = true,
    };

    private readonly Option<double?> join = QuantityOption.Length("--join", "Ends of drawn lines nearer than this are joined.", Tolerance.Default.Join);

    private readonly Option<double?> tolerance = QuantityOption.Length(
        "--tolerance", "How near lines and arcs follow drawn curves.", Tolerance.Default.Chord);

    private readonly Option<double?> minLoopWidth = QuantityOption.Length(
        "--min-loop-width", "Closed loops narrower than this are left out, such as specks below the kerf.", OutlineOptions.Default.MinLoopWidth);

    public void AddTo(HelpedCommand command) => command.Add(OptionGroup.Drawing, units, layers, join, tolerance, minLoopWidth);

    /// <summary>How a file is read.</summary>
    /// <param name="parsed">The arguments.</param>
    /// <param name="extensions">The kinds of files that are understood.</param>
    public OutlineOptions Read(ParseResult parsed, Extensions extensions)
    {
        var tolerances = new Tolerance(
            parsed.GetValue(tolerance) ?? Tolerance.Default.Chord, parsed.GetValue(join) ?? Tolerance.Default.Join, Tolerance.Default.Coincident);
        return new(tolerances, parsed.GetValue(units), [.. parsed.GetValue(layers) ?? []], parsed.GetValue(minLoopWidth) ?? OutlineOptions.Default.MinLoopWidth)
        {
            Formats = extensions.OutlineFormats,
        };
    }
}
