using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Svg;

/// <summary>A kind of thing that is left out or doubtful, counted over the file.</summary>
/// <param name="Kind">Short stable word for programs.</param>
/// <param name="What">What was found, in front of the count.</param>
/// <param name="Remedy">What to do about it.</param>
internal sealed record SvgFinding(string Kind, string What, string Remedy)
{
    private const string Show = "Show them in the drawing program if they belong to the outline.";
    private const string CutShapes = "Cut the shapes themselves in the drawing program if the effect changes the outline.";
    private const string NeverOpened = "Other files are never opened; copy their content into the drawing.";

    public static SvgFinding Hidden { get; } = new("hidden-ignored", "Hidden parts left out", Show);

    public static SvgFinding Unpainted { get; } = new("unpainted-ignored", "Shapes painted by neither fill nor stroke left out",
        "Give them a line or a fill if they belong to the outline.");

    public static SvgFinding Collapsed { get; } = new("collapsed", "Shapes flattened to nothing by their transform left out",
        "Repair the transform (a scale of 0?).");

    public static SvgFinding FarAway { get; } = new("precision", "Shapes far from the origin, read no better than 0.002 mm",
        "Move the drawing to the origin.");

    public static SvgFinding Clip { get; } = new("clip-ignored", "Clip paths not applied", CutShapes);

    public static SvgFinding Mask { get; } = new("mask-ignored", "Masks not applied", CutShapes);

    public static SvgFinding Filter { get; } = new("filter-ignored", "Filters not applied", CutShapes);

    public static SvgFinding Marker { get; } = new("marker-ignored", "Markers (arrow heads) left out of lines", CutShapes);

    public static SvgFinding External { get; } = new("external-ignored", "References to other files left out", NeverOpened);

    public static SvgFinding ExternalStyle { get; } = new("external-ignored", "Imported style sheets left out", NeverOpened);

    public static SvgFinding Language { get; } = new("language-ignored", "Parts for one language left out",
        "Remove systemLanguage to keep them.");

    public static SvgFinding DeadEnd { get; } = new("reference-missing", "Uses of something that is not in the file left out",
        "Copy the missing part into the drawing.");

    public static SvgFinding Loop { get; } = new("reference-loop", "Uses that refer to themselves left out",
        "Unlink the copy.");

    /// <summary>An element that is no outline.</summary>
    /// <param name="name">Its name.</param>
    public static SvgFinding Element(string name) => name switch
    {
        "text" or "flowRoot" => LeftOut("text-ignored", name, "Convert text to outlines (paths) first."),
        "image" => LeftOut("image-ignored", name, "A picture has no outline; trace it first."),
        "foreignObject" => LeftOut("foreign-object-ignored", name, "Draw its content as paths."),
        "script" => LeftOut("script-ignored", name, "Scripts are never run."),
        "animate" or "animateTransform" or "animateMotion" or "set" =>
            LeftOut("animation-ignored", name, "The drawing is read as it stands at the start."),
        _ => LeftOut("unknown-ignored", name, "It is not a shape that can be cut."),
    };

    private static SvgFinding LeftOut(string kind, string name, string remedy) =>
        new(kind, $"<{Excerpt.Shorten(name)}> left out", remedy);
}
