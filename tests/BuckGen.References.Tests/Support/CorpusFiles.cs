using System.Text.Json;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;

namespace BuckGen.References.Tests.Support;

/// <summary>An outline of the corpus and what its manifest says of it.</summary>
/// <param name="File">Its name below the corpus folder.</param>
/// <param name="IsCore">True for the files that matter most.</param>
/// <param name="MillimetresPerUnit">The size of its drawing unit.</param>
/// <param name="Units">The unit to read a DXF with where the file itself does not say; null where it does.</param>
/// <param name="Area">What its loops enclose, even-odd, mm².</param>
/// <param name="AreaTolerance">How far good readers may differ in it, as a share.</param>
/// <param name="MayBeRefused">True when a clear error is as good as reading it.</param>
internal sealed record CorpusFile(
    string File, bool IsCore, double MillimetresPerUnit, string? Units, double Area, double AreaTolerance, bool MayBeRefused)
{
    /// <summary>How closely readers agree on an outline that leaves them no choice.</summary>
    public const double UsualAreaTolerance = 0.001;

    public string FullPath => Path.Combine(CorpusFiles.Root, File);

    /// <summary>The outline as BuckGen reads it, with the background that other readers keep as well.</summary>
    public Outline Read() => OutlineReader.Read(System.IO.File.ReadAllBytes(FullPath), File,
        OutlineOptions.Default with { Units = Units, Background = Background.Keep });
}

/// <summary>The outline files that all test projects share.</summary>
internal static class CorpusFiles
{
    public static string Root { get; } = Path.Combine(RepositoryFolder.Path, "tests", "corpus");

    /// <summary>The files that a reader must take: accepted with or without a warning, or repaired.</summary>
    public static IReadOnlyList<CorpusFile> Valid()
    {
        using var manifest = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(Root, "manifest.json")));
        return [.. manifest.RootElement.GetProperty("files").EnumerateArray()
            .Where(f => f.GetProperty("expect").GetString() is { } e
                && (e.StartsWith("accept", StringComparison.Ordinal) || e == "repair"))
            .Select(Parse)];
    }

    private static CorpusFile Parse(JsonElement file)
    {
        var (name, units, truth) = (file.GetProperty("file").GetString()!, file.GetProperty("units"), file.GetProperty("truth"));
        var unit = units.GetProperty("mm_per_unit").GetDouble();
        var isSilent = name.EndsWith(".dxf", StringComparison.Ordinal) && !units.GetProperty("certain").GetBoolean();
        var hasTolerance = file.TryGetProperty("tolerance", out var tolerance) && tolerance.ValueKind == JsonValueKind.Object;
        return new(
            name,
            file.TryGetProperty("core", out var core) && core.GetBoolean(),
            unit,
            isSilent ? (unit == 25.4 ? "in" : "mm") : null,
            truth.GetProperty("area_evenodd_mm2").GetDouble(),
            hasTolerance ? tolerance.GetProperty("area_rel").GetDouble() : CorpusFile.UsualAreaTolerance,
            file.GetProperty("expect").GetString() is { } expect
                && (expect.EndsWith("error", StringComparison.Ordinal) || expect.EndsWith("reject", StringComparison.Ordinal)));
    }
}
