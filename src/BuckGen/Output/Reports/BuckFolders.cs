using System.Globalization;

namespace BuckGen.Output.Reports;

/// <summary>Folders that hold a further buck with all its files, below the output folder.</summary>
internal static class BuckFolders
{
    /// <summary>That of the lid.</summary>
    public const string Lid = "lid";

    private const string Prefix = "buck-";

    /// <summary>That of one buck of several.</summary>
    /// <param name="number">Its number, from 1.</param>
    public static string OfGroup(int number) => Prefix + number.ToString(CultureInfo.InvariantCulture);

    /// <summary>True for the name of such a folder.</summary>
    public static bool IsOne(string name) => name == Lid
        || (name.StartsWith(Prefix, StringComparison.Ordinal) && name.Length > Prefix.Length
            && name[Prefix.Length..].All(char.IsAsciiDigit));
}
