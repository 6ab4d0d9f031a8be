namespace BuckGen.Intake.Outlines;

/// <summary>A count with its noun in the right number, for messages.</summary>
internal static class CountText
{
    /// <summary>"1 gap", "2 gaps".</summary>
    public static string Format(int count, string one, string? many = null) =>
        $"{count} {(count == 1 ? one : many ?? one + "s")}";

    /// <summary>"was" for one, "were" for more.</summary>
    public static string WasOrWere(int count) => count == 1 ? "was" : "were";
}
