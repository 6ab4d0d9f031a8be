using BuckGen.Cutting.Boards;
using BuckGen.Settings;
using Xunit;

namespace BuckGen.Tests.Cutting.Boards;

public class CuttingSpecTests
{
    private static readonly (string What, double Least, double Most, string Range, Func<double, CuttingSpec> With)[] Rows =
    [
        ("kerf", 0, 5, "from 0 to 5 mm", v => new(Kerf: v)),
        ("spacing of parts", 0, 200, "from 0 to 200 mm", v => new(Spacing: v)),
        ("edge margin", 0, 200, "from 0 to 200 mm", v => new(EdgeMargin: v)),
        ("width of the machine's bed", 50, 10000, "from 50 to 10000 mm", v => new() { Bed = new(v, 400) }),
        ("height of the machine's bed", 50, 10000, "from 50 to 10000 mm", v => new() { Bed = new(600, v) }),
    ];

    public static TheoryData<string> Numbers => [.. Rows.Select(r => r.What)];

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Both_limits_are_taken_and_what_lies_beyond_them_is_refused(string what)
    {
        var row = Rows.Single(r => r.What == what);
        row.With(row.Least).Validate();
        row.With(row.Most).Validate();
        foreach (var beyond in (double[])[Math.BitDecrement(row.Least), Math.BitIncrement(row.Most), double.NaN])
            Assert.Equal(
                FormattableString.Invariant($"The {what} is {beyond} mm; it must be {row.Range}."),
                Assert.Throws<SpecException>(row.With(beyond).Validate).Message);
    }

    /// <summary>Common practice, no source: 0.8 mm through 3 mm of MDF, 1.0 through 6, 2.0 through 12.</summary>
    [Theory]
    [InlineData(1, 0.8)]
    [InlineData(3, 0.8)]
    [InlineData(4.5, 0.9)]
    [InlineData(6, 1.0)]
    [InlineData(9, 1.5)]
    [InlineData(12, 2.0)]
    public void A_laser_makes_wider_holes_through_thicker_boards(double thickness, double hole)
    {
        Assert.Equal(hole, new CuttingSpec().MinHoleDiameter(thickness), 1e-9);
        Assert.Equal(2.4, new CuttingSpec(Kerf: 1.2).MinHoleDiameter(thickness), 1e-9); // never under two kerfs
        Assert.Equal(3, new CuttingSpec(Machine.Router).MinHoleDiameter(thickness));
    }

    [Fact]
    public void A_test_piece_as_wide_as_its_hole_has_no_kerf_and_a_wider_one_is_refused()
    {
        Assert.Equal(0, CuttingSpec.KerfOfTest(20, 20));
        Assert.Equal(
            "The test piece is 20.14 mm and its hole 19.76 mm wide; the hole must be the larger, so measure again.",
            Assert.Throws<SpecException>(() => CuttingSpec.KerfOfTest(19.76, 20.14)).Message);
    }
}
