using System.CommandLine;
using BuckGen.Cli.Terminals;
using BuckGen.Cutting.Boards;
using BuckGen.Jobs;

namespace BuckGen.Cli.Commands;

/// <summary>A file to design from: a complete job, or a drawing that needs the options of the command line.</summary>
/// <param name="command">The command whose options they are.</param>
/// <param name="reading">How a drawing is read.</param>
/// <param name="buck">The buck of a drawing.</param>
/// <param name="besideJob">Options that also apply to a job file.</param>
internal sealed class JobOrDrawing(Command command, ReadingOptions reading, BuckOptions buck, params Option[] besideJob)
{
    /// <summary>The argument.</summary>
    /// <param name="needed">The options that a drawing needs, as a list in words.</param>
    public static Argument<string> Argument(string needed) =>
        new("FILE") { Description = $"A job file (TOML), or a drawing (then {needed} are needed)." };

    /// <summary>The job, without a title for a drawing, and the design laid out.</summary>
    /// <param name="path">The file.</param>
    /// <param name="parsed">The command line.</param>
    /// <param name="terminal">Where it talks.</param>
    /// <param name="change">Changes the job to what the command asks for.</param>
    /// <param name="cancellation">Stops it.</param>
    public (Job Job, CutPlan Plan) Plan(string path, ParseResult parsed, Terminal terminal, Func<Job, Job> change,
        CancellationToken cancellation)
    {
        if (Path.GetExtension(path).Equals(".toml", StringComparison.OrdinalIgnoreCase))
        {
            if (command.Options.FirstOrDefault(o => !besideJob.Contains(o) && !buck.Plugins.All.Contains(o)
                && parsed.GetResult(o) is { Implicit: false }) is { } idle)
                throw new UsageException($"{idle.Name} has no effect with a job file; set it in {path}.");
            var job = change(MakeCommand.ReadJob(path, buck.Plugins, parsed, terminal, cancellation));
            return (job, BuckRun.Plan(terminal, job, MakeCommand.Beside(path), cancellation));
        }

        var drawn = change(buck.Job(parsed, path, reading, buck.Extensions(parsed, terminal)));
        return (drawn, BuckRun.Plan(terminal, drawn, BuckRun.Here, cancellation));
    }
}
