using BuckGen.Cutting.Boards;

namespace BuckGen.Fuzz.Tests.Cases;

/// <summary>How a shop might cut.</summary>
internal static class RandomCutting
{
    public static CuttingSpec Create(RandomSource dice) => new(
        dice.Any(Machine.Laser, Machine.Laser, Machine.Router),
        dice.Chance(0.1) ? dice.Between(0.5, 3) : dice.Said(0, 0.5),
        dice.Any(0, dice.Said(0, 10), 4),
        dice.Any(0, dice.Said(0, 20), 5))
    {
        Bed = dice.Chance(0.2) ? new(dice.Said(100, 1500), dice.Said(100, 1000)) : null,
    };
}
