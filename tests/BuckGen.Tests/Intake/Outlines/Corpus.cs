using System.Text.Json;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;

namespace BuckGen.Tests.Intake.Outlines;

/// <summary>The outline files under tests/corpus and what is true of each.</summary>
internal static class Corpus
{
    public static string Folder { get; } = Find();

    private static JsonElement Manifest { get; } =
        JsonDocument.Parse(System.IO.File.ReadAllText(Path.Combine(Folder, "manifest.json"))).RootElement;

    public static IEnumerable<CorpusFile> Files => Manifest.GetProperty("files").EnumerateArray().Select(e => new CorpusFile(e));

    public static CorpusFile File(string name) => Files.First(f => f.Name == name);

    public static JsonElement DefaultTolerance => Manifest.GetProperty("default_tolerance");

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            var corpus = Path.Combine(folder.FullName, "tests", "corpus");
            if (System.IO.File.Exists(Path.Combine(corpus, "manifest.json"))) return corpus;
        }

        throw new DirectoryNotFoundException($"No tests/corpus above {AppContext.BaseDirectory}.");
    }
}

/// <summary>One row of the manifest.</summary>
internal sealed class CorpusFile(JsonElement row)
{
    public string Name => row.GetProperty("file").GetString()!;

    public bool IsDxf => Name.StartsWith("dxf/", StringComparison.Ordinal);

    public string Expect => row.GetProperty("expect").GetString()!;

    public byte[] Content => File.ReadAllBytes(Path.Combine(Corpus.Folder, Name));

    public bool HasTruth => row.GetProperty("truth").ValueKind == JsonValueKind.Object && Count("closed_loops") > 0;

    public double Area => Truth("area_evenodd_mm2");

    public double Perimeter => Truth("perimeter_mm");

    public Vec2 Centroid => new(Numbers("centroid_from_lower_left_mm")[0], Numbers("centroid_from_lower_left_mm")[1]);

    /// <summary>The unit to name when the file can't be trusted about it; null when it can.</summary>
    public string? Unit
    {
        get
        {
            var units = row.GetProperty("units");
            if (!IsDxf || units.GetProperty("certain").GetBoolean()) return null;
            return units.GetProperty("mm_per_unit").GetDouble() == 25.4 ? "in" : "mm";
        }
    }

    /// <summary>Keeps a background that the truth counts as outline.</summary>
    public Background Background =>
        row.GetProperty("defect").GetString()?.StartsWith("page-sized background", StringComparison.Ordinal) is true
            ? Background.Keep : Background.Auto;

    public int Count(string name) => row.GetProperty("truth").GetProperty(name).GetInt32();

    public double[] Numbers(string name) =>
        [.. row.GetProperty("truth").GetProperty(name).EnumerateArray().Select(e => e.GetDouble())];

    public double Tolerance(string name)
    {
        var own = row.GetProperty("tolerance");
        return own.ValueKind == JsonValueKind.Object && own.TryGetProperty(name, out var value)
            ? value.GetDouble()
            : Corpus.DefaultTolerance.GetProperty(name).GetDouble();
    }

    private double Truth(string name) => row.GetProperty("truth").GetProperty(name).GetDouble();
}
