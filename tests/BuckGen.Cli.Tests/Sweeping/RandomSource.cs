using System.Globalization;

namespace BuckGen.Cli.Tests.Sweeping;

/// <summary>Random choices that are the same for the same number, on every machine.</summary>
internal sealed class RandomSource(int seed)
{
    private readonly Random random = new(seed);

    public bool Chance(double share) => random.NextDouble() < share;

    public T One<T>(params T[] of) => of[random.Next(of.Length)];

    public int Whole(int from, int to) => random.Next(from, to + 1);

    public double Between(double from, double to) => from + (to - from) * random.NextDouble();

    /// <summary>A size: small ones are as likely as large ones.</summary>
    public double Size(double from, double to) => Math.Exp(Between(Math.Log(from), Math.Log(to)));

    /// <summary>A length as people write it, mostly with few digits.</summary>
    public string Length(double from, double to) => Text(Size(from, to)) + "mm";

    /// <summary>A number of at most four digits, so that limits and round values are met too.</summary>
    public static string Text(double value)
    {
        var digits = Math.Clamp(3 - (int)Math.Floor(Math.Log10(Math.Abs(value) + 1e-9)), 0, 6);
        return Math.Round(value, digits).ToString("0.######", CultureInfo.InvariantCulture);
    }
}
