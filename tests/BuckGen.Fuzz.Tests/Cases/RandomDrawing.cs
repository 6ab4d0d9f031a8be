using BuckGen.Fuzz.Tests.Sketches;
using BuckGen.Tests.Intake.Fuzzing;

namespace BuckGen.Fuzz.Tests.Cases;

/// <summary>A drawing as it comes in: what it was made by, the name of its file, its bytes.</summary>
internal sealed record RandomDrawing(string Kind, string FileName, byte[] Content)
{
    /// <summary>True for a damaged copy of a file that was whole.</summary>
    public bool IsDamaged => Kind.StartsWith(Damage, StringComparison.Ordinal);

    private const string Damage = "damaged ";

    private static readonly (Func<RandomSource, IEnumerable<SketchLoop>> Draw, string Kind, double Weight)[] Sketches =
    [
        (Star.Draw, "star", 20), (Rings.Draw, "rings", 10), (Neighbours.Draw, "neighbours", 14), (Slivers.Draw, "slivers", 8),
        (Petals.Draw, "petals", 10),
        (Plate.Draw, "plate", 14), (Comb.Draw, "comb", 14), (ManyCorners.Draw, "many corners", 0.4),
    ];

    private static readonly Lazy<IReadOnlyList<CorpusBytes>> Dxf = new(() => CorpusBytes.In("dxf")),
        Svg = new(() => CorpusBytes.In("svg"));

    public static RandomDrawing Create(RandomSource dice, int seed, int number)
    {
        if (dice.Chance(0.15)) return Damaged(dice, seed, number);
        var (draw, kind) = Pick(dice);
        var (size, far) = (Size(dice), dice.Chance(0.1) ? dice.Scaled(100, 100_000) : 0);
        var (turn, by) = (dice.Any(0, 0, dice.Between(0, 7)), SketchLoop.Towards(dice.Between(0, 7)) * far);
        var loops = draw(dice).Select(l => l.Placed(turn, size, by)).ToList();
        if (dice.Chance(0.3))
        {
            kind += " with crumbs";
            loops = [.. loops.Select(l => Sprinkles.On(l, dice))];
        }

        return dice.Chance(0.6)
            ? new(kind, "sketch.dxf", SketchDxf.Write(loops))
            : new(kind, "sketch.svg", SketchSvg.Write(loops));
    }

    /// <summary>Across, mm: a workshop piece mostly.</summary>
    private static double Size(RandomSource dice) => dice.Whole(0, 19) switch
    {
        0 => dice.Scaled(1e-3, 1),
        1 or 2 => dice.Scaled(1, 20),
        3 when dice.Chance(0.3) => dice.Scaled(200, 3000),
        _ => dice.Scaled(20, 200),
    };

    private static (Func<RandomSource, IEnumerable<SketchLoop>> Draw, string Kind) Pick(RandomSource dice)
    {
        var left = dice.Between(0, Sketches.Sum(s => s.Weight));
        foreach (var (draw, kind, weight) in Sketches)
            if ((left -= weight) <= 0) return (draw, kind);
        return (Sketches[0].Draw, Sketches[0].Kind);
    }

    private static RandomDrawing Damaged(RandomSource dice, int seed, int number)
    {
        var mutant = Mutant.Create(dice.Chance(0.5) ? Dxf.Value : Svg.Value, seed, number);
        return new(Damage + mutant.File, Path.GetFileName(mutant.File), mutant.Content);
    }
}
