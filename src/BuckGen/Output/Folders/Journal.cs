using System.Collections.Immutable;
using System.Text;

namespace BuckGen.Output.Folders;

/// <summary>How a folder is changed.</summary>
internal enum ChangeMethod
{
    /// <summary>The finished folder and the old one are exchanged in one step.</summary>
    Swap,

    /// <summary>Old files are moved away and new ones into their places, one by one.</summary>
    Moves,
}

/// <summary>
/// Written before an output folder is touched and deleted when the change is done: what a later run needs to clear up after one
/// that was cut off.
/// </summary>
/// <param name="Method">How the folder is changed.</param>
/// <param name="Incoming">The new files.</param>
/// <param name="Outgoing">What they replace or what goes.</param>
/// <param name="Folders">Folders that are new, those above first.</param>
internal sealed record Journal(ChangeMethod Method, ImmutableArray<FileSum> Incoming, ImmutableArray<FileSum> Outgoing,
    ImmutableArray<string> Folders)
{
    private const string Come = "+ ", Go = "- ", Folder = "/ ";

    /// <summary>The journal of a change.</summary>
    public static Journal Create(ChangeMethod way, Replacement change, FolderView view) => new(
        way, [.. change.Incoming.Select(f => new FileSum(f.Path, Contents.Sum(f.Content.AsSpan())))], change.Outgoing,
        [.. change.Incoming.SelectMany(f => Replacement.AllAbove(f.Path)).Distinct(StringComparer.Ordinal)
            .Where(f => view.At(f) is null).Order(StringComparer.Ordinal)]);

    /// <summary>True when a file with these bytes came or went.</summary>
    public bool Contains(FileSum file) => Incoming.Contains(file) || Outgoing.Contains(file);

    /// <summary>A journal as text.</summary>
    public byte[] ToBytes()
    {
        string[] lines =
            [Method.ToString(), .. Incoming.Select(f => Come + f.Line), .. Outgoing.Select(f => Go + f.Line),
                .. Folders.Select(f => Folder + f)];
        return Encoding.UTF8.GetBytes(string.Join('\n', lines) + "\n");
    }

    /// <summary>A journal from its text, which is always whole.</summary>
    public static Journal Parse(string text)
    {
        var lines = text.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        return new(Enum.Parse<ChangeMethod>(lines[0]), Sums(Come), Sums(Go), Rest(Folder));

        ImmutableArray<FileSum> Sums(string mark) => [.. Rest(mark).Select(FileSum.Parse).OfType<FileSum>()];
        ImmutableArray<string> Rest(string mark) =>
            [.. lines.Skip(1).Where(l => l.StartsWith(mark, StringComparison.Ordinal)).Select(l => l[mark.Length..])];
    }
}
