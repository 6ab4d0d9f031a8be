using BuckGen.Cutting.Boards;
using BuckGen.Design.Specs;
using BuckGen.Dxf;
using BuckGen.Output.Files;

namespace BuckGen.Fuzz.Tests.Cases;

/// <summary>A drawing with settings; seed and number are all it takes to make it again.</summary>
/// <param name="Seed">The seed of the run.</param>
/// <param name="Number">Its number in the run.</param>
/// <param name="Drawing">What comes in.</param>
/// <param name="Buck">What is wanted.</param>
/// <param name="Cutting">How it is cut.</param>
/// <param name="Output">Which files.</param>
/// <param name="Whole">True to make all of them; report and pictures take most of the time.</param>
internal sealed record DesignCase(int Seed, int Number, RandomDrawing Drawing, BuckSpec Buck, CuttingSpec Cutting,
    OutputOptions Output, bool Whole)
{
    public static DesignCase Create(int seed, int number)
    {
        var dice = new RandomSource(seed, number);
        return new(
            seed, number, RandomDrawing.Create(dice, seed, number), RandomBuck.Create(dice), RandomCutting.Create(dice),
            new("", dice.Any(DxfVersion.R12, DxfVersion.R2000), dice.Chance(0.1)), dice.Chance(0.02));
    }

    /// <summary>How to see it again.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"BUCKGEN_FUZZ=1 BUCKGEN_FUZZ_SEED={Seed} BUCKGEN_FUZZ_FIRST={Number} ({Drawing.Kind}, {Drawing.Content.Length} ")
        + FormattableString.Invariant(
            $"bytes, {Buck.Kind} {Buck.Depth:0.###} mm {Buck.Draft:0.##} degrees at {Buck.OutlineAt}, steps {Buck.Steps}, ")
            + FormattableString.Invariant($"{Buck.Corners.Corners})");
}
