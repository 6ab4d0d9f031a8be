namespace BuckGen.Fuzz.Tests.Cases;

/// <summary>The choices of one case. The runtime's seeded generator gives the same numbers in every version.</summary>
internal sealed class RandomSource(int seed, int number)
{
    private readonly Random random = new(unchecked(seed * 1_000_003 + number));

    public bool Chance(double probability) => random.NextDouble() < probability;

    public int Whole(int from, int to) => random.Next(from, to + 1);

    public double Between(double from, double to) => from + (to - from) * random.NextDouble();

    /// <summary>Each power of ten as likely as any other.</summary>
    public double Scaled(double from, double to) => Math.Exp(Between(Math.Log(from), Math.Log(to)));

    public T Any<T>(params IReadOnlyList<T> choices) => choices[random.Next(choices.Count)];

    /// <summary>Rounded as a person would say it, mostly.</summary>
    public double Said(double from, double to) =>
        Chance(0.7) ? Math.Clamp(Math.Round(Between(from, to) * 2) / 2, from, to) : Between(from, to);
}
