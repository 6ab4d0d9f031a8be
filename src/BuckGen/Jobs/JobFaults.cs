namespace BuckGen.Jobs;

/// <summary>The mistakes found in a job file so far.</summary>
/// <param name="file">The file's name.</param>
internal sealed class JobFaults(string file)
{
    private readonly List<JobFault> found = [];

    /// <summary>Notes a mistake; reading goes on, so that all are found at once.</summary>
    /// <param name="line">Its line.</param>
    /// <param name="what">What is wrong and what to write instead, without full stop.</param>
    public void Add(int line, string what)
    {
        var fault = new JobFault(line, $"{file}, line {line}: {what}.");
        // What two readers find in one value is one mistake.
        if (!found.Contains(fault)) found.Add(fault);
    }

    /// <summary>Refuses the file if it has mistakes.</summary>
    /// <exception cref="JobFileException">It has; all of them are named.</exception>
    public void Throw()
    {
        if (found.Count > 0) throw new JobFileException([.. found.OrderBy(f => f.Line)]);
    }
}
