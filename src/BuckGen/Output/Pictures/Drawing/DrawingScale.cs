using System.Collections.Immutable;

namespace BuckGen.Output.Pictures.Drawing;

/// <summary>How much larger or smaller than real a thing is drawn.</summary>
/// <param name="OnPaper">Paper's part of the ratio.</param>
/// <param name="Real">Reality's part of the ratio.</param>
/// <remarks>
/// Source: ISO 5455, recommended scales (from memory), and between them the ones that let a drawing fill its page.
/// </remarks>
internal sealed record DrawingScale(int OnPaper, int Real)
{
    private static readonly ImmutableArray<DrawingScale> Scales =
    [
        new(50, 1), new(20, 1), new(10, 1), new(5, 1), new(4, 1), new(3, 1), new(2, 1), new(3, 2), new(1, 1), new(2, 3),
        new(1, 2), new(2, 5), new(1, 3), new(1, 4), new(1, 5), new(1, 6), new(1, 8), new(1, 10), new(1, 15), new(1, 20),
        new(1, 30), new(1, 50), new(1, 100), new(1, 200), new(1, 500), new(1, 1000),
    ];

    /// <summary>Millimetres on paper for a real millimetre.</summary>
    public double Factor => (double)OnPaper / Real;

    /// <summary>The largest scale at which something fits; the smallest one when it fits at none.</summary>
    /// <param name="width">Real width, mm.</param>
    /// <param name="height">Real height, mm.</param>
    /// <param name="room">Width of the room on paper, mm.</param>
    /// <param name="headroom">Height of the room on paper, mm.</param>
    public static DrawingScale ToFit(double width, double height, double room, double headroom) =>
        Scales.FirstOrDefault(s => width * s.Factor <= room && height * s.Factor <= headroom, Scales[^1]);

    /// <summary>The ratio, as "1:2" or "1:2.5".</summary>
    public override string ToString() => OnPaper < Real
        ? FormattableString.Invariant($"1:{(double)Real / OnPaper:0.#}")
        : FormattableString.Invariant($"{(double)OnPaper / Real:0.#}:1");
}
