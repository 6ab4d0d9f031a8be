using BuckGen.Physics.Plates;
using CsCheck;
using Xunit;

namespace BuckGen.Physics.Tests.Plates;

public class SupportTests
{
    private static readonly BoardProperties Mdf = BoardProperties.Mdf(12);

    private static readonly Gen<(double Thickness, double Deflection)> Jobs = Gen.Select(Gen.Double[3, 25], Gen.Double[0.05, 2]);

    /// <summary>
    /// Continuous beams under an even load: handbook values of the greatest moment and deflection (AISC manual, from memory).
    /// </summary>
    [Theory]
    [InlineData(1, 0.01302, 0.1250)]
    [InlineData(2, 0.00541, 0.1250)]
    [InlineData(3, 0.0069, 0.1000)]
    [InlineData(4, 0.0065, 0.1071)]
    public void Bays_in_a_row_as_in_the_handbook(int bays, double deflection, double moment)
    {
        var strip = ContinuousStrip.ForBays(bays);

        Assert.Equal(deflection, strip.Deflection, 0.00005);
        Assert.Equal(moment, strip.Moment, 0.00005);
    }

    [Fact]
    public void No_number_of_bays_from_two_on_is_worse_than_two_or_three()
    {
        for (var bays = 2; bays < 40; bays++)
        {
            Assert.True(ContinuousStrip.ForBays(bays).Deflection <= ContinuousStrip.ForBays(3).Deflection + 1e-9);
            Assert.True(ContinuousStrip.ForBays(bays).Moment <= ContinuousStrip.ForBays(2).Moment + 1e-9);
        }
    }

    [Fact]
    public void An_inner_bay_is_the_strip_of_a_long_clamped_plate()
    {
        Assert.Equal(ContinuousStrip.InnerBay.Deflection, RectangularPlate.Clamped(20).Deflection, 1e-5);
        Assert.Equal(ContinuousStrip.InnerBay.Moment, RectangularPlate.Clamped(20).Moment, 2e-4);
    }

    /// <summary>
    /// Timoshenko and Woinowsky-Krieger, article 54: 0.00581·q·a⁴/D between point supports (from memory), and the same series for
    /// points.
    /// </summary>
    [Fact]
    public void Small_pads_deflect_nearly_as_a_flat_slab_on_points()
    {
        var points = 0.0;
        for (var m = 0; m < 400; m++)
            for (var n = 1 - m % 2; n < 400; n += 2)
                points += (m == 0 || n == 0 ? 4 : 8) / Math.Pow(4 * Math.PI * Math.PI * (m * m + n * n), 2);

        // 0.0058004: the book's last figure is one too high.
        Assert.Equal(0.00581, points, 0.00001);
        Assert.InRange(PadPlate.ForPads(0.05).Deflection / points, 0.985, 1);
    }

    /// <summary>The same book, table of flat slabs on columns of side u, ν = 0.2 (from memory): moment over the column.</summary>
    [Theory]
    [InlineData(0.1, 0.196)]
    [InlineData(0.2, 0.131)]
    [InlineData(0.3, 0.0933)]
    [InlineData(0.4, 0.0678)]
    [InlineData(0.5, 0.0487)]
    public void The_moment_over_a_pad_as_in_Timoshenkos_table(double padShare, double moment) =>
        Assert.Equal(moment, PadPlate.ForPads(padShare, 0.2).Moment, 0.0005);

    [Fact]
    public void Wider_pads_bend_the_board_less()
    {
        Gen.Double[0.05, 0.8].Sample(share =>
        {
            var (pads, wider) = (PadPlate.ForPads(share), PadPlate.ForPads(share * 1.1));
            Assert.True(wider.Deflection < pads.Deflection && wider.Moment < pads.Moment);
        }, iter: 30);
    }

    [Fact]
    public void The_largest_span_just_holds()
    {
        Gen.Select(Jobs, Gen.Double[1, 8]).Sample((job, ratio) =>
        {
            var plate = RectangularPlate.SimplySupported(ratio);
            var span = plate.MaxSpan(job.Thickness, Mdf, job.Deflection);
            var (deflection, stress) = plate.ResponseTo(span, job.Thickness, Mdf);
            Assert.True(deflection <= job.Deflection * (1 + 1e-9) && stress <= Mdf.AllowedStress * (1 + 1e-9));
            Assert.True(deflection >= job.Deflection * (1 - 1e-9) || stress >= Mdf.AllowedStress * (1 - 1e-9));
        });
    }

    [Fact]
    public void The_number_of_bays_is_the_least_that_holds()
    {
        Gen.Select(Jobs, Gen.Double[50, 1000]).Sample((job, width) =>
        {
            bool Holds(int bays)
            {
                var (deflection, stress) = ContinuousStrip.ForBays(bays).ResponseTo(width / bays, job.Thickness, Mdf);
                return deflection <= job.Deflection && stress <= Mdf.AllowedStress;
            }
            var bays = SupportSpacing.MinBays(width, job.Thickness, Mdf, job.Deflection);
            Assert.True(Holds(bays));
            Assert.True(bays == 1 || !Holds(bays - 1));
        });
    }

    [Fact]
    public void Ribs_and_feet_at_their_largest_distance_hold()
    {
        Jobs.Sample(job =>
        {
            var ribs = SupportSpacing.MaxRibSpacing(job.Thickness, Mdf, job.Deflection);
            Assert.True(ContinuousStrip.ForBays(2).ResponseTo(ribs, job.Thickness, Mdf).Stress <= Mdf.AllowedStress * (1 + 1e-9));
            Assert.True(ContinuousStrip.ForBays(3)
                .ResponseTo(ribs, job.Thickness, Mdf).Deflection <= job.Deflection * (1 + 1e-9));

            var feet = SupportSpacing.MaxFootSpacing(20, job.Thickness, Mdf, job.Deflection)!.Value;
            var (deflection, stress) = PadPlate.ForPads(20 / feet).ResponseTo(feet, job.Thickness, Mdf);
            Assert.True(deflection <= job.Deflection * (1 + 1e-6) && stress <= Mdf.AllowedStress * (1 + 1e-6));
        }, iter: 30);
    }

    [Theory]
    [InlineData(4.4311346272637895)] // Divided by twenty times itself it gives 0.049999999999999996.
    [InlineData(8.8622692545275789)]
    [InlineData(7.0)]
    public void Thick_boards_on_small_feet_span_twenty_of_their_sides(double side) =>
        Assert.Equal(20 * side, SupportSpacing.MaxFootSpacing(side, 40, Mdf, 5)!.Value, 1e-9);

    [Fact]
    public void A_board_too_thin_for_any_grid_of_feet_gets_none() =>
        Assert.Null(SupportSpacing.MaxFootSpacing(1000, 3, Mdf, 0.01));

    [Fact]
    public void A_hand_worked_base_of_12_mm_MDF()
    {
        // q = 0.101325 MPa, D = 2500·12³/(12·0.91) = 395 604 N·mm. For 0.5 mm: (0.5·395 604/(0.0068834·0.101325))^¼ = 129.8 mm;
        // for 22/3 MPa: 12·√(7.3333/(6·0.125·0.101325)) = 117.9 mm. The stress rules.
        Assert.Equal(117.9, SupportSpacing.MaxRibSpacing(12, Mdf, 0.5), 0.05);
        Assert.Equal(129.8, ContinuousStrip.ForBays(3).MaxSpan(12, Mdf with { SafetyFactor = 1 }, 0.5), 0.1);
    }

    [Fact]
    public void Numbers_out_of_range_are_refused_by_name()
    {
        void Refused(string words, Action act) =>
            Assert.Contains(words, Assert.Throws<ArgumentOutOfRangeException>(act).Message, StringComparison.Ordinal);

        Refused("thickness is 0 mm", () => ContinuousStrip.InnerBay.ResponseTo(100, 0, Mdf));
        Refused("modulus", () => ContinuousStrip.InnerBay.ResponseTo(100, 12, Mdf with { Modulus = double.NaN }));
        Refused("safety factor", () => SupportSpacing.MaxRibSpacing(12, Mdf with { SafetyFactor = 0.5 }, 0.5));
        Refused("number of bays", () => ContinuousStrip.ForBays(0));
        Refused("side of a pad", () => PadPlate.ForPads(0.01));
        Refused("thickness of the MDF is 60 mm; it must be from 2.5 to 45 mm", () => BoardProperties.Mdf(60));
    }
}
