using System.Collections.Immutable;

namespace BuckGen.Jobs;

/// <summary>A job file that can't be used.</summary>
/// <param name="message">One clear line.</param>
public sealed class JobFileException(string message) : Exception(message)
{
    /// <summary>A job file with mistakes; the message has a line for each.</summary>
    /// <param name="faults">The mistakes, in the order of their lines.</param>
    internal JobFileException(ImmutableArray<JobFault> faults) : this(string.Join('\n', faults.Select(f => f.Message))) =>
        Faults = faults;

    /// <summary>All mistakes in the file, in the order of their lines; none when it is not about lines.</summary>
    public ImmutableArray<JobFault> Faults { get; } = [];
}

/// <summary>A mistake in a job file.</summary>
/// <param name="Line">The line, from 1.</param>
/// <param name="Message">One clear line that names file, line, value and remedy.</param>
public sealed record JobFault(int Line, string Message);
