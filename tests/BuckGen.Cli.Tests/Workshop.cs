using System.Text;

namespace BuckGen.Cli.Tests;

/// <summary>A folder of its own with drawings and jobs in it, gone after the test.</summary>
public abstract class Workshop : IDisposable
{
    /// <summary>A 100 x 60 mm rectangle with rounded corners and a round hole.</summary>
    protected const string Plate = """
        <svg xmlns="http://www.w3.org/2000/svg" width="120mm" height="80mm" viewBox="0 0 120 80">
          <rect x="10" y="10" width="100" height="60" rx="6"/>
          <circle cx="60" cy="40" r="12" fill="white"/>
        </svg>
        """;

    /// <summary>A strip of 4 mm: to size at the base, 5° of draft leave nothing of it 23 mm up.</summary>
    protected const string Strip = """
        <svg xmlns="http://www.w3.org/2000/svg" width="120mm" height="20mm" viewBox="0 0 120 20"><rect x="10" y="8" width="100" height="4"/></svg>
        """;

    protected const string PlateJob = """
        title = "A plate"
        [outline]
        file = "plate.svg"
        [buck]
        depth = "24mm"
        [[stock]]
        name = "MDF 12"
        thickness = "12mm"
        board = ["600mm", "400mm"]
        """;

    protected string Folder { get; } = Directory.CreateTempSubdirectory("buckgen-cli-").FullName;

    public void Dispose()
    {
        Directory.Delete(Folder, true);
        GC.SuppressFinalize(this);
    }

    protected string At(string name) => Path.Combine(Folder, name);

    protected string Write(string name, string text) => Write(name, Encoding.UTF8.GetBytes(text));

    protected string Write(string name, byte[] content)
    {
        File.WriteAllBytes(At(name), content);
        return At(name);
    }

    /// <summary>Every file in the folder but the record of a result, with forward slashes.</summary>
    protected string[] Present(string below = "") => !Directory.Exists(At(below)) ? [] :
        [.. Directory.GetFiles(At(below), "*", SearchOption.AllDirectories).Where(p => Path.GetFileName(p) != ".buckgen-files")
            .Select(p => Path.GetRelativePath(At(below), p).Replace('\\', '/')).Order(StringComparer.Ordinal)];
}
