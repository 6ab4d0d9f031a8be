namespace BuckGen.Jobs;

/// <summary>
/// The files that a job names, found by the names written in it: the drawing, a panel's drawing, a catalog, plug-ins.
/// </summary>
public interface IJobFiles
{
    /// <summary>Opens a file to read it from its beginning.</summary>
    /// <param name="name">The name, as written in the job.</param>
    /// <param name="what">What the file is to the job, for messages, such as "drawing".</param>
    /// <exception cref="JobFileException">There is no such file; the message names it.</exception>
    /// <exception cref="IOException">The file can't be read.</exception>
    Stream Open(string name, string what);

    /// <summary>Where a plug-in lies.</summary>
    /// <param name="name">The name, as written in the job.</param>
    /// <returns>A full path; assemblies are loaded from a disk.</returns>
    string PathOf(string name);
}
