using BuckGen.Tests.Intake.Outlines;

namespace BuckGen.Tests.Intake.Fuzzing;

/// <summary>A damaged copy of a corpus file; seed and number are all it takes to make it again.</summary>
/// <param name="File">The file it was made from.</param>
/// <param name="Seed">The seed of the run.</param>
/// <param name="Number">Its number in the run.</param>
/// <param name="Content">Its bytes.</param>
internal sealed record Mutant(string File, int Seed, int Number, byte[] Content)
{
    // Duplicated chunks must not make a file of megabytes, which would only be slow.
    private const int MaxBytes = 400_000;
    private const int LargeFile = 60_000;

    /// <summary>Makes one out of the files.</summary>
    public static Mutant Create(IReadOnlyList<CorpusBytes> files, int seed, int number)
    {
        // The runtime's seeded generator gives the same numbers in every version.
        var random = new Random(unchecked(seed * 1_000_003 + number));
        var file = Pick();
        var content = file.Content;
        var damages = random.Next(3) == 0 ? Damage.All : Damage.Gentle;
        for (var left = 1 + random.Next(1 << random.Next(4)); left > 0; left--)
        {
            content = damages[random.Next(damages.Length)](content, new(random, Pick().Content, file.IsDxf));
            if (content.Length > MaxBytes) content = content[..MaxBytes];
        }

        return new(file.Name, seed, number, content);

        // Large files are read slowly and say little more than small ones.
        CorpusBytes Pick()
        {
            var picked = files[random.Next(files.Count)];
            return picked.Content.Length > LargeFile && random.Next(20) != 0 ? Pick() : picked;
        }
    }

    /// <summary>How to see it again.</summary>
    public override string ToString() =>
        $"mutant of {File}, {Content.Length} bytes, BUCKGEN_FUZZ=1 BUCKGEN_FUZZ_SEED={Seed} BUCKGEN_FUZZ_FIRST={Number}";
}

/// <summary>A file of the corpus with its bytes.</summary>
internal sealed record CorpusBytes(string Name, byte[] Content)
{
    public bool IsDxf => Name.EndsWith(".dxf", StringComparison.Ordinal);

    /// <summary>All files of a folder of the corpus, in the order of their names.</summary>
    public static IReadOnlyList<CorpusBytes> In(string folder) =>
        [.. Corpus.Files.Where(f => f.Name.StartsWith(folder + "/", StringComparison.Ordinal))
            .OrderBy(f => f.Name, StringComparer.Ordinal)
            .Select(f => new CorpusBytes(f.Name, f.Content))];
}
