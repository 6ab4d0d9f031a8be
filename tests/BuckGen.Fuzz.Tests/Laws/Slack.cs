namespace BuckGen.Fuzz.Tests.Laws;

/// <summary>What rounding may take before a law counts as broken, mm.</summary>
internal static class Slack
{
    /// <summary>Where curves are made of lines and arcs: the run's chord error, and half as much again.</summary>
    public const double Curve = 0.015;

    /// <summary>How far from an edge points are checked: clearly outside the curve's slack.</summary>
    public const double Aside = 0.02;

    /// <summary>What is written with its decimals and read back.</summary>
    public const double Written = 2e-4;

    /// <summary>An arc that rises less than 0.0005 mm is written as its chord.</summary>
    public const double Flat = 0.0005 + Written;
}
