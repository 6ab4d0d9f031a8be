using BuckGen.Output.Folders;

namespace BuckGen.Tests.Output.Folders;

/// <summary>A disk that notes every step, with paths below a folder.</summary>
internal sealed class NotedDisk(IDisk disk, string root) : IDisk
{
    private readonly List<string> steps = [];

    public IReadOnlyList<string> Steps => steps;

    public void MakeFolder(string path, string? like = null)
    {
        Note(like is null ? $"make {path}" : $"make {path} like {like}");
        disk.MakeFolder(path, like);
    }

    public void Write(string path, ReadOnlySpan<byte> content)
    {
        Note($"write {path}");
        disk.Write(path, content);
    }

    public void Link(string path, string second)
    {
        Note($"link {path} as {second}");
        disk.Link(path, second);
    }

    public void Move(string from, string to)
    {
        Note($"move {from} to {to}");
        disk.Move(from, to);
    }

    public bool Exchange(string one, string other)
    {
        Note($"exchange {one} and {other}");
        return disk.Exchange(one, other);
    }

    public void Delete(string path)
    {
        Note($"delete {path}");
        disk.Delete(path);
    }

    public void DeleteFolder(string path)
    {
        Note($"delete folder {path}");
        disk.DeleteFolder(path);
    }

    public void Flush(string folder)
    {
        Note($"flush {folder}");
        disk.Flush(folder);
    }

    private void Note(string step) => steps.Add(
        step.Replace(root + Path.DirectorySeparatorChar, "", StringComparison.Ordinal)
            .Replace(root, "above", StringComparison.Ordinal)
            .Replace(Path.DirectorySeparatorChar, '/').Replace(".out.buckgen-work", "beside", StringComparison.Ordinal)
            .Replace("out/.buckgen-work", "inside", StringComparison.Ordinal));
}
