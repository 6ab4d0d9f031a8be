namespace BuckGen.Quantities;

/// <summary>The words by which choices are written: the members' names in lower case.</summary>
public static class Words
{
    /// <summary>Reads a choice; upper and lower case are alike.</summary>
    public static bool TryParse<T>(string? text, out T value) where T : struct, Enum
    {
        value = default;
        // Enum parsing alone would also take numbers and lists.
        return text is not null && Enum.GetNames<T>().Contains(text, StringComparer.OrdinalIgnoreCase)
            && Enum.TryParse(text, true, out value);
    }

    /// <summary>The word for a choice.</summary>
    public static string Format<T>(T value) where T : struct, Enum => value.ToString().ToLowerInvariant();

    /// <summary>All words, for messages: "outside, inside or middle".</summary>
    public static string List<T>() where T : struct, Enum
    {
        var words = Enum.GetNames<T>().Select(n => n.ToLowerInvariant()).ToArray();
        return $"{string.Join(", ", words[..^1])} or {words[^1]}";
    }
}
