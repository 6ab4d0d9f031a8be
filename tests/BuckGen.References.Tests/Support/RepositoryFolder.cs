namespace BuckGen.References.Tests.Support;

/// <summary>The folder that holds the solution.</summary>
internal static class RepositoryFolder
{
    public static string Path { get; } = Find();

    /// <summary>A script of this project.</summary>
    public static string Script(string name) =>
        System.IO.Path.Combine(Path, "tests", "BuckGen.References.Tests", "Scripts", name);

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(System.IO.Path.Combine(folder.FullName, "BuckGen.sln"))) return folder.FullName;
        }

        throw new DirectoryNotFoundException("no BuckGen.sln above the tests");
    }
}
