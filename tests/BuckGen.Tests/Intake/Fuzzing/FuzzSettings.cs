using System.Globalization;

namespace BuckGen.Tests.Intake.Fuzzing;

/// <summary>How many damaged files are tried, and which.</summary>
/// <param name="Count">Number of mutants for each reader.</param>
/// <param name="Seed">Decides together with a mutant's number what the mutant is.</param>
/// <param name="First">Number of the first mutant.</param>
/// <param name="Timed">True for a run that was asked for: then a mutant that takes too long fails as well.</param>
internal sealed record FuzzSettings(int Count, int Seed, int First, bool Timed)
{
    /// <summary>
    /// As the environment asks: BUCKGEN_FUZZ the count, BUCKGEN_FUZZ_SEED and BUCKGEN_FUZZ_FIRST to see one of them again.
    /// </summary>
    /// <param name="usual">The count when the variable is not set.</param>
    public static FuzzSettings Or(int usual) =>
        new(Number("BUCKGEN_FUZZ") ?? usual, Number("BUCKGEN_FUZZ_SEED") ?? 1, Number("BUCKGEN_FUZZ_FIRST")
            ?? 0, Number("BUCKGEN_FUZZ") is not null);

    private static int? Number(string variable) =>
        Environment.GetEnvironmentVariable(variable) is { Length: > 0 } text
            ? int.Parse(text, CultureInfo.InvariantCulture) : null;
}
