using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Settings;

namespace BuckGen.Design.Venting;

/// <summary>Round feet under the base, near enough to each other that it does not bow, and clear of the bores.</summary>
internal static class PlenumFeet
{
    /// <summary>Space between a foot and a bore, mm.</summary>
    private const double Clear = 1;

    private const int Directions = 16;

    /// <summary>Maximum number of feet: many more than anyone glues on.</summary>
    private const int MaxFeet = 10_000;

    /// <summary>The feet.</summary>
    /// <param name="plate">The base's bounds.</param>
    /// <param name="bores">Centres of bores.</param>
    /// <param name="diameter">Diameter of a foot, mm.</param>
    /// <param name="boreDiameter">Diameter of a bore, mm.</param>
    /// <param name="pitch">Maximum distance of two feet, mm.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="SpecException">There would be too many feet.</exception>
    public static Region Set(Bounds plate, ImmutableArray<Vec2> bores, double diameter, double boreDiameter, double pitch,
        CancellationToken cancellation)
    {
        var room = plate.Grown(-diameter / 2);
        var (columns, rows) = (Count(room.Width, pitch), Count(room.Height, pitch));
        if ((columns + 1.0) * (rows + 1.0) is > MaxFeet and var count)
            throw new SpecException(FormattableString.Invariant(
                $"The base of {plate.Width:0.#} x {plate.Height:0.#} mm would stand on {count} feet, at most {pitch:0.#} ")
                + FormattableString.Invariant(
                    $"mm apart; the limit is {MaxFeet}. Use a thicker base, larger feet, or a plenum of channels."));
        var (feet, standing, open) = (new List<Vec2>(), new PlaceGrid(diameter + Clear),
            new PlaceGrid((diameter + boreDiameter) / 2 + Clear));
        foreach (var bore in bores) open.Add(bore);
        for (var j = 0; j <= rows; j++)
        {
            cancellation.ThrowIfCancellationRequested();
            for (var i = 0; i <= columns; i++)
            {
                if (Place(new(room.MinX + room.Width * i / columns, room.MinY + room.Height * j / rows)) is not { } place)
                    continue;
                feet.Add(place);
                standing.Add(place);
            }
        }

        return new([.. feet.Select(f => new Island(Loop.Circle(f, diameter / 2), []))]);

        Vec2? Place(Vec2 wished)
        {
            for (var away = 0.0; away <= pitch / 2; away += diameter / 8)
                for (var d = 0; d < (away == 0 ? 1 : Directions); d++)
                    if (wished + new Vec2(away, 0).Turned(2 * Math.PI * d / Directions) is var p && IsFree(p)) return p;
            return null;
        }

        bool IsFree(Vec2 p) =>
            room.Contains(p)
            && !open.HasWithin(p, (diameter + boreDiameter) / 2 + Clear)
            && !standing.HasWithin(p, diameter + Clear);
    }

    private static int Count(double length, double pitch) => Math.Max(1, (int)Math.Ceiling(length / pitch));
}
