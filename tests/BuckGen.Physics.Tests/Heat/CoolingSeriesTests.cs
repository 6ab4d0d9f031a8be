using BuckGen.Physics.Heat;
using Xunit;

namespace BuckGen.Physics.Tests.Heat;

/// <summary>Part after part on a buck that warms.</summary>
public class CoolingSeriesTests
{
    private static readonly SheetMaterial Plastic = new(0.205, 1270, 1500), Wood = new(0.14, 760, 1600);

    private static readonly CoolingCycle Cycle = new()
    {
        Sheet = new(2, Plastic),
        Buck = new(new(40, Wood), 200, SheetFace.Insulated),
        Air = SheetFace.InAir(12, 20),
        Bare = SheetFace.InAir(12, 20),
        SheetStart = 145,
        BuckStart = 20,
        TakeOff = 70,
        BareSeconds = 90,
    };

    [Fact]
    public void The_second_part_meets_a_warmer_buck_and_takes_longer()
    {
        var parts = CoolingSeries.OneByOne(Cycle, 6).ToArray();

        Assert.Equal(20, parts[0].BuckBefore);
        Assert.All(parts.Zip(parts.Skip(1)), pair =>
        {
            Assert.True(pair.Second.Seconds > pair.First.Seconds && pair.Second.BuckBefore > pair.First.BuckBefore);
            Assert.True(pair.Second.BuckBefore < pair.First.BuckAfter);
        });
        Assert.True(parts[1].Seconds > 1.1 * parts[0].Seconds);
    }

    [Fact]
    public void The_first_part_is_that_of_the_plain_cooling()
    {
        var alone = SheetCooling.Until(Cycle.Sheet, Cycle.Buck, Cycle.Air, 145, 70, 20);

        // The series runs on a coarser grid.
        Assert.Equal(alone.Seconds!.Value, CoolingSeries.Simulate(Cycle).First!.Value.Seconds, alone.Seconds.Value * 0.01);
    }

    [Theory]
    [InlineData(12, 90, 20)]
    [InlineData(40, 90, 20)]
    [InlineData(40, 20, 60)]
    [InlineData(120, 60, 45)]
    public void The_later_part_is_the_one_that_hundreds_of_parts_lead_to(double thickness, double bare, double start)
    {
        var cycle = Cycle with
        {
            Buck = Cycle.Buck with { Body = new(thickness, Wood) },
            BareSeconds = bare,
            BuckStart = start
        };

        var later = CoolingSeries.Simulate(cycle).Later!.Value;

        var last = CoolingSeries.OneByOne(cycle, thickness < 100 ? 300 : 900).Last();
        Assert.Equal(last.Seconds, later.Seconds, last.Seconds * 0.01);
        Assert.Equal(last.BuckBefore, later.BuckBefore, 2 * CoolingSeries.Tolerance);
    }

    [Fact]
    public void A_strong_wind_on_the_bare_buck_cools_its_face_to_the_air()
    {
        var windy = Cycle with { Bare = SheetFace.InAir(2000, 20), BareSeconds = 600 };

        Assert.InRange(CoolingSeries.OneByOne(windy, 2).Last().BuckBefore, 20, 20.5);
        Assert.InRange(CoolingSeries.OneByOne(Cycle with { BareSeconds = 600 }, 2).Last().BuckBefore, 22, 40);
    }

    [Fact]
    public void A_buck_warmed_more_than_the_series_warms_it_makes_the_first_part_the_slower()
    {
        var result = CoolingSeries.Simulate(Cycle with { BuckStart = 65, BareSeconds = 3000 });

        Assert.True(result.First!.Value.Seconds > result.Later!.Value.Seconds);
    }

    [Fact]
    public void Where_the_parts_begin_does_not_change_where_they_end()
    {
        var cold = CoolingSeries.Simulate(Cycle with { BuckStart = 0 }).Later!.Value;
        var warm = CoolingSeries.Simulate(Cycle with { BuckStart = 60 }).Later!.Value;

        Assert.Equal(cold.Seconds, warm.Seconds, cold.Seconds * 0.01);
    }

    [Fact]
    public void Where_nothing_else_takes_the_heat_the_later_part_cools_by_air_alone()
    {
        // The far face is insulated, the buck is never bare and the cycle repeats: all that a sheet brings leaves by its face in
        // air. The buck evens out the temperature of that face. So it is quicker hot all through, and slower always at 65 °C.
        var later = CoolingSeries.Simulate(Cycle with { BareSeconds = 0 }).Later!.Value;

        var hot = SheetCooling.Until(Cycle.Sheet, SheetFace.Insulated, Cycle.Air, 145, 70, SheetPlace.Mean).Seconds!.Value;
        var heat = 0.002 * 1270 * 1500 * (145 - 65);
        Assert.InRange(later.Seconds, hot, heat / (12 * (65 - 20)));
    }

    [Fact]
    public void Parts_that_never_become_cold_enough_are_none()
    {
        var warmRoom = Cycle with { Air = SheetFace.InAir(12, 80), Bare = SheetFace.InAir(12, 80) };

        Assert.Null(CoolingSeries.Simulate(warmRoom with { Buck = Cycle.Buck with { Body = new(2, Wood) } }).First);
        var thick = CoolingSeries.Simulate(warmRoom);
        Assert.NotNull(thick.First);
        Assert.Null(thick.Later);
    }

    [Fact]
    public void Numbers_out_of_range_are_refused()
    {
        Assert.Contains("between two parts",
            Assert.Throws<ArgumentOutOfRangeException>(() => CoolingSeries.Simulate(Cycle with { BareSeconds = -1 })).Message);
        Assert.Throws<ArgumentOutOfRangeException>(() => CoolingSeries.Simulate(Cycle with { BuckStart = 2000 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => CoolingSeries.Simulate(Cycle with { TakeOff = double.NaN }));
        Assert.Throws<ArgumentOutOfRangeException>(() => CoolingSeries.Simulate(Cycle with { Bare = SheetFace.InAir(-1, 20) }));
    }
}
