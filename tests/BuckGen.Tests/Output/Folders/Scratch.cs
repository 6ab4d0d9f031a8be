using System.Collections.Immutable;
using System.Text;
using BuckGen.Output.Files;

namespace BuckGen.Tests.Output.Folders;

/// <summary>A folder with an output folder in it, gone after the test.</summary>
/// <param name="inMemory">
/// True for tests that write some thousand folders to try the order of the steps, not the disk: they use a disk in memory
/// where there is one.
/// </param>
public abstract class Scratch(bool inMemory = false) : IDisposable
{
    /// <summary>Where Linux has a disk in memory.</summary>
    private const string Memory = "/dev/shm";

    /// <summary>What the record of a result is called.</summary>
    protected const string Record = ".buckgen-files";

    protected string Place { get; } = inMemory && Directory.Exists(Memory)
        ? Directory.CreateDirectory(Path.Combine(Memory, $"buckgen-output-{Guid.NewGuid():N}")).FullName
        : Directory.CreateTempSubdirectory("buckgen-output-").FullName;

    /// <summary>The output folder.</summary>
    protected string Out => At("out");

    public void Dispose()
    {
        Directory.Delete(Place, true);
        GC.SuppressFinalize(this);
    }

    protected string At(string path) => Path.Combine(Place, path);

    /// <summary>Puts a file there and makes the folders above it.</summary>
    protected string Put(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(At(path))!);
        File.WriteAllText(At(path), text);
        return At(path);
    }

    protected string Read(string path) => File.ReadAllText(At(path));

    /// <summary>
    /// Everything in the folder but the record: files and what they hold, links and where they lead, empty folders.
    /// </summary>
    protected string[] Present(string below = "out") =>
        [.. Everything(below).Where(e => !e.StartsWith(Record, StringComparison.Ordinal))];

    /// <summary>The same with the record.</summary>
    protected string[] Everything(string below = "out")
    {
        return Directory.Exists(At(below)) ? [.. In(new(At(below)), "").Order(StringComparer.Ordinal)] : [];

        static IEnumerable<string> In(DirectoryInfo folder, string before) => folder.GetFileSystemInfos().SelectMany(e => e switch
        {
            { LinkTarget: { } target } => [$"{before}{e.Name} -> {target}"],
            DirectoryInfo inner => inner.GetFileSystemInfos().Length == 0 ? [$"{before}{e.Name}/"]
                : In(inner, $"{before}{e.Name}/"),
            // Reading a pipe would wait for ever.
            FileInfo { Length: 0 } => [$"{before}{e.Name}: "],
            _ => (string[])[$"{before}{e.Name}: {File.ReadAllText(e.FullName)}"],
        });
    }

    /// <summary>Everything beside the output folder: what a run left there.</summary>
    protected string[] Beside() =>
        [.. Directory.GetFileSystemEntries(Place).Select(e => Path.GetFileName(e)!).Where(n => n != "out")
            .Order(StringComparer.Ordinal)];

    /// <summary>Files that hold a word and their own path.</summary>
    protected static ImmutableArray<OutputFile> Result(string word, params string[] paths) =>
        [.. paths.Append("summary.json").Select(p => Made(p, $"{word} {p}"))];

    protected static OutputFile Made(string path, string text) => new(path, [.. Encoding.UTF8.GetBytes(text)]);
}
