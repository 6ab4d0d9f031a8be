using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Intake.Catalogs;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;
using BuckGen.Output.Files;
using BuckGen.Plugins;
using BuckGen.Settings;

namespace BuckGen.Jobs;

/// <summary>The whole job in one call: what <c>buckgen make</c> does, without a console and without an output folder.</summary>
public static class JobRunner
{
    /// <summary>Reads a job with all that it names beside its drawing: plug-ins, catalog, the drawing of its panel.</summary>
    /// <param name="text">The job file's text.</param>
    /// <param name="name">The job file's name, for messages.</param>
    /// <param name="files">Finds the files that the job names.</param>
    /// <param name="extensions">What the job may name besides; null for what comes with the library.</param>
    /// <param name="onPlugins">Receives the plug-ins of the run, those left out included, before they are used.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="JobFileException">The job is not understood, or a file it names is missing.</exception>
    /// <exception cref="CatalogException">The catalog that the job names is not understood.</exception>
    /// <exception cref="OutlineException">The drawing of the panel can't be used.</exception>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public static Job Load(
        string text, string name, IJobFiles files, JobExtensions? extensions = null, Action<PluginSet>? onPlugins = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(files);
        extensions ??= JobExtensions.BuiltIn;
        var named = UnlessWrong(() => JobFile.Plugins(text, name));
        var plugins = extensions.Load(named is null ? null : named with { Files = [.. named.Files.Select(files.PathOf)] });
        onPlugins?.Invoke(plugins);
        var all = plugins.AddTo(extensions.Onto);
        var job = JobFile.Read(text, name, CatalogOf(text, name, files, all.Catalog), all);
        if (job.PanelDrawing is null && job.FlangeDrawing is null) return job;
        // They are made larger or smaller together with the outline, whose own size tells how much.
        var scale = job.Reading is { IsSized: true, Scale: null }
            ? Read(job.OutlineFile, job.Reading, files, cancellation).Scale : job.Reading.Scale;
        if (job.PanelDrawing is { } panel)
            job = job.WithPanel(Read(panel.File, panel.Reading.ForFurther(scale), files, cancellation));
        if (job.FlangeDrawing is { } rim)
            job = job.WithFlange(Read(rim.File, rim.Reading.ForFurther(scale), files, cancellation));
        return job;
    }

    /// <summary>
    /// Reads the drawing, designs the buck, predicts the wall where the job asks for it, and lays out the boards.
    /// </summary>
    /// <param name="job">The job.</param>
    /// <param name="files">Finds the drawing.</param>
    /// <param name="scope">What is laid out.</param>
    /// <param name="progress">Receives every step.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="JobFileException">The drawing is missing.</exception>
    /// <exception cref="OutlineException">The drawing can't be used.</exception>
    /// <exception cref="SpecException">A number is out of range, or a limit of the work is exceeded.</exception>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public static CutPlan Plan(
        Job job, IJobFiles files, CutScope scope = CutScope.Everything, IProgress<JobProgress>? progress = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(files);
        var steps = StepsOf(job, progress, cancellation);
        // A spec that is out of range is refused before a long reading.
        job.Buck.Validate();
        job.Lid?.Validate();
        if (job.Lid is not null && job.Buck.Sheet is null)
            throw new SpecException("The lid is sized from the formed part: give the thickness of the plastic sheet.");
        if (job is { Lid: not null, Buck.Groups: not null })
            throw new SpecException("A lid is made for a part from one buck; leave out [lid], or [groups].");
        steps.Read(job.OutlineFile);
        var outline = Read(job.OutlineFile, job.Reading, files, cancellation);
        var design = BuckDesign.Create(outline, job.Buck, job.Design, steps, cancellation);
        steps.LayOut();
        return CutPlan.Create(design, job.Cutting, scope, cancellation);
    }

    /// <summary>Designs the lid that a job asks for, and lays it out on boards of its own; null when it asks for none.</summary>
    /// <param name="job">The job.</param>
    /// <param name="part">What <see cref="Plan"/> gave for it.</param>
    /// <param name="progress">Receives every step.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="SpecException">Nothing is formed that the lid could be sized from.</exception>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public static CutPlan? PlanLid(
        Job job, CutPlan part, IProgress<JobProgress>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(part);
        if (job.Lid is not { } lid) return null;
        var steps = StepsOf(job, progress, cancellation).ForLid();
        var design = part.Design.CreateLid(lid, job.Design, steps, cancellation);
        steps.LayOut();
        return CutPlan.Create(design, job.Cutting, CutScope.Everything, cancellation);
    }

    /// <summary>Does everything a job asks for and makes its files in memory.</summary>
    /// <param name="job">The job.</param>
    /// <param name="files">Finds the drawing.</param>
    /// <param name="force">True to make the cut files in spite of errors.</param>
    /// <param name="progress">Receives every step and every file.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <inheritdoc cref="Plan" path="/exception"/>
    public static JobResult Run(
        Job job, IJobFiles files, bool force = false, IProgress<JobProgress>? progress = null,
        CancellationToken cancellation = default)
    {
        var plan = Plan(job, files, CutScope.Everything, progress, cancellation);
        var steps = StepsOf(job, progress, cancellation);
        var made = OutputFiles.Create(plan, job.Output, force, steps, cancellation);
        if (PlanLid(job, plan, progress, cancellation) is not { } ofLid) return new(plan, made);
        var options = job.Output with { Title = job.Title.Length == 0 ? "" : job.Title + ", lid" };
        return new(plan,
        [
            .. made,
            .. OutputFiles.Create(ofLid, options, force, steps.ForLid(), cancellation)
                .Select(f => f with { Path = $"{JobResult.LidFolder}/{f.Path}" }),
        ])
        {
            Lid = ofLid,
        };
    }

    /// <summary>Loads a job and does everything it asks for.</summary>
    /// <param name="text">The job file's text.</param>
    /// <param name="name">The job file's name, for messages.</param>
    /// <param name="files">Finds the files that the job names.</param>
    /// <param name="extensions">What the job may name besides; null for what comes with the library.</param>
    /// <param name="force">True to make the cut files in spite of errors.</param>
    /// <param name="progress">Receives every step and every file.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <inheritdoc cref="Load" path="/exception"/>
    public static JobResult Run(
        string text, string name, IJobFiles files, JobExtensions? extensions = null, bool force = false,
        IProgress<JobProgress>? progress = null, CancellationToken cancellation = default) =>
        Run(Load(text, name, files, extensions, null, cancellation), files, force, progress, cancellation);

    private static JobSteps StepsOf(Job job, IProgress<JobProgress>? progress, CancellationToken cancellation) =>
        new(progress, job.Buck.Prediction is not null, job.Lid is not null, cancellation);

    private static Catalog CatalogOf(string text, string name, IJobFiles files, Catalog onto)
    {
        if (UnlessWrong(() => JobFile.CatalogName(text, name)) is not { } file) return onto;
        using var content = new StreamReader(files.Open(file, "catalog file"));
        return CatalogFile.Read(content.ReadToEnd(), Path.GetFileName(file), onto);
    }

    /// <summary>Null when the job is wrong there: reading it whole names that mistake together with all others.</summary>
    private static T? UnlessWrong<T>(Func<T?> read) where T : class
    {
        try
        {
            return read();
        }
        catch (JobFileException)
        {
            return null;
        }
    }

    private static Outline Read(string file, OutlineOptions reading, IJobFiles files, CancellationToken cancellation)
    {
        using var content = files.Open(file, "drawing");
        return OutlineReader.Read(content, Path.GetFileName(file), reading, cancellation);
    }
}
