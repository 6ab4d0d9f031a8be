using System.Collections.Immutable;
using BuckGen.Cutting.Boards;
using BuckGen.Settings;

namespace BuckGen.Cutting.Costs;

/// <summary>Time and money of a job, by the shop's own rates.</summary>
/// <param name="Currency">The shop's currency; empty when not given.</param>
/// <param name="Materials">The stocks, the plastic last.</param>
/// <param name="Work">The work.</param>
internal sealed record JobCost(string Currency, ImmutableArray<MaterialCost> Materials, ImmutableArray<WorkStep> Work)
{
    /// <summary>Materials by what is used up, as far as their prices are given.</summary>
    public double MaterialByShare => Materials.Sum(m => m.ShareCost ?? 0);

    /// <summary>Materials bought whole, as far as their prices are given.</summary>
    public double MaterialWhole => Materials.Sum(m => m.WholeCost ?? 0);

    /// <summary>Time of all work, minutes, as far as it is known.</summary>
    public double Minutes => Work.Sum(w => w.Minutes ?? 0);

    /// <summary>Work, as far as time and price are known.</summary>
    public double WorkCost => Work.Sum(w => w.Cost ?? 0);

    /// <summary>What is missing for the whole cost, in plain words; none when nothing is.</summary>
    public ImmutableArray<string> Missing =>
    [
        .. Materials.Where(m => m.UnitPrice is null).Select(m => $"price of {m.Name}"),
        .. Work.Where(w => w.Minutes is null).Select(w => $"time to {w.Name}"),
        .. Work.Where(w => w is { Minutes: not null, Hour: null }).Select(w => $"price of the hour to {w.Name}"),
    ];

    /// <summary>Computes the cost of a plan; null when neither a rate, a price nor a feed is given.</summary>
    /// <param name="plan">The parts laid out on boards.</param>
    /// <param name="rates">The shop's rates.</param>
    /// <exception cref="SpecException">A rate is out of range.</exception>
    public static JobCost? Compute(CutPlan plan, RateSpec rates)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(rates);
        rates.Validate();
        var plastic = MaterialCost.Plastic(plan);
        ImmutableArray<MaterialCost> materials =
            [.. MaterialCost.Stock(plan), .. plastic is null ? Array.Empty<MaterialCost>() : [plastic]];
        var isPriced = rates != RateSpec.None || materials.Any(m => m.UnitPrice is not null)
            || plan.AllBoards.Any(s => s.Stock.CutFeed is not null);
        return isPriced ? new(rates.Currency, materials, WorkStep.FromPlan(plan, rates)) : null;
    }
}
