using System.Collections.Immutable;
using BuckGen.Cancellation;
using BuckGen.Intake.Catalogs;

namespace BuckGen.Design.Prediction;

/// <summary>
/// What each uncertain input does to the thinnest wall: one at a time is varied over its usual range, on the coarse mesh. The
/// usual ranges are common practice, no source.
/// </summary>
internal static class InputComparison
{
    private const double LeakyVacuum = 0.7, ThinGauge = 0.95, MaxStiffening = 0.3, ColdEdge = 3, SlidingFriction = 0.3;

    /// <summary>Largest usual sag over the shorter side of the frame.</summary>
    private const double UsualSag = 0.1;

    /// <summary>The effects, the largest first; those that are not known come last.</summary>
    /// <param name="inputs">The inputs of the job.</param>
    /// <param name="modulus">Shear modulus of the hot sheet, softest and stiffest, MPa.</param>
    /// <param name="cancellation">Stops the simulations.</param>
    public static ImmutableArray<InputEffect> Compare(
        FormingInputs inputs, FigureRange modulus, CancellationToken cancellation)
    {
        Variation[] variations = [.. Variations(inputs, modulus)];
        FormingInputs[] tried = [.. variations.SelectMany(v => (FormingInputs[])[v.With(v.From), v.With(v.To)])];
        var thinnest = ParallelWork.Select(
            tried, i => new PartForming(i).PredictThinnest(cancellation), cancellation);
        return Ordered(variations.Select(
            (v, i) => new InputEffect(v.Input, v.From, v.To, thinnest[2 * i], thinnest[2 * i + 1])));
    }

    /// <summary>The largest effect first; those that are not known last.</summary>
    internal static ImmutableArray<InputEffect> Ordered(IEnumerable<InputEffect> effects) =>
        [.. effects.OrderByDescending(e => e.Change is { } change ? Math.Abs(change) : -1)];

    private static IEnumerable<Variation> Variations(FormingInputs inputs, FigureRange modulus)
    {
        var (forming, sheet, air) = (inputs.Forming, inputs.Sheet, inputs.Air);
        if (modulus.Low < modulus.High)
            yield return new(VariedInput.HotStiffness, modulus.Low, modulus.High, m => Set(f => f with { Modulus = m }));
        var vacuum = air.AmbientPressure - air.ReservoirPressure;
        yield return new(VariedInput.Vacuum, vacuum, LeakyVacuum * vacuum,
            p => inputs with { Air = air with { ReservoirPressure = air.AmbientPressure - p } });
        yield return new(VariedInput.Gauge, sheet.Gauge, ThinGauge * sheet.Gauge,
            g => inputs with { Sheet = sheet with { Gauge = g } });
        yield return new(VariedInput.Stiffening, 0, Math.Max(MaxStiffening, 2 * forming.Stiffening),
            s => Set(f => f with { Stiffening = s }));
        var shorter = Math.Min(inputs.Blank.Opening.Width, inputs.Blank.Opening.Height);
        yield return new(VariedInput.Sag, 0, Math.Max(UsualSag * shorter, forming.Sag), s => Set(f => f with { Sag = s }));
        yield return new(VariedInput.EdgeStiffness, 1, Math.Max(ColdEdge, forming.EdgeStiffness),
            e => Set(f => f with { EdgeStiffness = e }));
        yield return new(VariedInput.Friction, null, forming.Friction ?? SlidingFriction, m => Set(f => f with { Friction = m }));

        FormingInputs Set(Func<FormingSpec, FormingSpec> change) => inputs with { Forming = change(forming) };
    }

    /// <summary>An input with the ends of its usual range.</summary>
    private sealed record Variation(VariedInput Input, double? From, double? To, Func<double?, FormingInputs> With)
    {
        public Variation(VariedInput input, double from, double to, Func<double, FormingInputs> with)
            : this(input, (double?)from, to, value => with(value!.Value))
        {
        }
    }
}

/// <summary>What one uncertain input does to the thinnest wall.</summary>
/// <param name="Input">The input.</param>
/// <param name="From">One end of its range, in its unit; null for a sheet that sticks.</param>
/// <param name="To">The other end.</param>
/// <param name="ThinnestFrom">Thinnest wall at the first end, mm; null when that simulation did not converge.</param>
/// <param name="ThinnestTo">Thinnest wall at the other end, mm; null when that simulation did not converge.</param>
public sealed record InputEffect(VariedInput Input, double? From, double? To, double? ThinnestFrom, double? ThinnestTo)
{
    /// <summary>Relative change of the thinnest wall from one end to the other; null when it is not known.</summary>
    public double? Change => ThinnestTo / ThinnestFrom - 1;
}

/// <summary>An input of the prediction that a maker knows only roughly.</summary>
public enum VariedInput
{
    /// <summary>Shear modulus of the hot sheet, MPa.</summary>
    HotStiffness,

    /// <summary>Pressure difference that the vacuum reaches, Pa.</summary>
    Vacuum,

    /// <summary>Thickness of the sheet as delivered, mm.</summary>
    Gauge,

    /// <summary>Stiffening under stretch, as <see cref="FormingSpec.Stiffening"/>.</summary>
    Stiffening,

    /// <summary>Sag before forming, mm.</summary>
    Sag,

    /// <summary>Stiffness at the frame over that in the middle.</summary>
    EdgeStiffness,

    /// <summary>Coefficient of friction between sheet and buck.</summary>
    Friction,
}
