using System.Collections.Immutable;
using BuckGen.Output.Files;

namespace BuckGen.Output.Folders;

/// <summary>Puts finished files into a folder so that it always holds one whole result, and no file of others is lost.</summary>
public static class OutputFolder
{
    /// <summary>
    /// Replaces the result in a folder. Whoever reads the folder at any moment, or after a kill, a power cut, a full disk or an
    /// error, finds the whole old or the whole new result. This holds where the system can exchange folders: on Linux and macOS,
    /// but not for a mount point. Elsewhere the files are moved one by one, and a run that is cut off is taken back by the next
    /// one into the same folder.
    /// <para>
    /// What was written is recorded in the folder, in <c>.buckgen-files</c>, with the sum of its bytes. Only files that are
    /// recorded and unchanged are replaced or removed. Everything else stays. Links in the folder are not followed. Two runs into
    /// one folder wait for each other for five seconds.
    /// </para>
    /// </summary>
    /// <param name="folder">The output folder; made when missing. A link to a folder means that folder.</param>
    /// <param name="files">The files.</param>
    /// <param name="force">True to replace files and links that lie where a file must go and are not known to be ours.</param>
    /// <param name="cancellation">Stops the work for as long as the folder has not been touched.</param>
    /// <returns>What was removed, and what a person should know.</returns>
    /// <exception cref="ArgumentException">The folder's name is empty, or a file's path leads out of it or is there
    /// twice.</exception>
    /// <exception cref="IOException"> The folder can't be written, another run is writing there, or what isn't ours lies where a
    /// file must go; the earlier result is untouched. </exception>
    /// <exception cref="OperationCanceledException">It was stopped; the earlier result is untouched.</exception>
    public static FolderChange Write(string folder, ImmutableArray<OutputFile> files, bool force = false,
        CancellationToken cancellation = default)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(folder);
        return new FolderWriter(new Disk()).Write(folder, files, force, cancellation);
    }
}
