namespace BuckGen.References.Tests.Support;

/// <summary>A folder of its own for one test, gone when the test is done.</summary>
internal sealed class ScratchFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("buckgen-references-").FullName;

    /// <summary>Path of a file below it; its folder is made.</summary>
    public string File(string name)
    {
        var path = System.IO.Path.Combine(Path, name);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        return path;
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
