using BuckGen.Geometry;

namespace BuckGen.Findings;

/// <summary>How much a finding matters.</summary>
public enum Severity
{
    /// <summary>Good to know; nothing needs to change.</summary>
    Note,

    /// <summary>The buck can be cut, but look before you do.</summary>
    Warning,

    /// <summary>The buck would not work; no cut files are written unless forced.</summary>
    Error,
}

/// <summary>Something about a design that its maker should know before cutting wood.</summary>
/// <param name="Id">A short stable word for programs, such as "counter-closes".</param>
/// <param name="Severity">How much it matters.</param>
/// <param name="Message">What is wrong, in plain words.</param>
/// <param name="Remedy">What can be done about it.</param>
public sealed record Finding(string Id, Severity Severity, string Message, string Remedy)
{
    /// <summary>
    /// Its number in the list that people read, from 1, shared by all findings of its kind; 0 before it is listed.
    /// </summary>
    public int Number { get; init; }

    /// <summary>Where in the plan, mm in the design's coordinates; null when it is about the whole.</summary>
    public Vec2? Place { get; init; }

    /// <summary>Height above the bottom of the stack, mm; null when it has none.</summary>
    public double? Height { get; init; }

    /// <summary>The measured value, in the unit the message names; null when there is none.</summary>
    public double? Value { get; init; }

    /// <summary>The limit the value was compared with; null when there is none.</summary>
    public double? Limit { get; init; }

    /// <summary>Why the maker accepts it; null when it is not silenced.</summary>
    public string? Silenced { get; init; }

    /// <summary>Where the rule comes from: geometry, a published source, or "common practice, no source".</summary>
    public string Source { get; init; } = "geometry of the design";
}
