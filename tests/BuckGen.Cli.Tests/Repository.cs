namespace BuckGen.Cli.Tests;

/// <summary>Where the repository lies round the tests.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "BuckGen.sln"))) return folder.FullName;
        throw new DirectoryNotFoundException($"No BuckGen.sln above {AppContext.BaseDirectory}.");
    }
}
