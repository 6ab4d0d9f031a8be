namespace BuckGen.Output.Folders;

/// <summary>A file and what it holds.</summary>
/// <param name="Path">Below the output folder, with forward slashes.</param>
/// <param name="Sum">Of its bytes, SHA-256 in small hexadecimal digits.</param>
internal readonly record struct FileSum(string Path, string Sum)
{
    private const int SumLength = 64;

    /// <summary>The line that names it, as common programs that check sums write it.</summary>
    public string Line => $"{Sum}  {Path}";

    /// <summary>A file from its line; null for any other line.</summary>
    public static FileSum? Parse(string line) =>
        line.Length > SumLength + 2 && line[..SumLength].All(char.IsAsciiHexDigitLower)
            && line[SumLength..(SumLength + 2)] == "  "
            ? new(line[(SumLength + 2)..], line[..SumLength])
            : null;
}
