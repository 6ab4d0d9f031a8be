using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Tests.Support;

namespace BuckGen.Dxf.Tests.Reading;

public class SplineTests
{
    private const string Points = "10 0|20 0|10 1|20 1|10 2|20 0";

    [Fact]
    public void A_rational_spline_is_read()
    {
        var spline = Sample.ReadOne<DxfSpline>($"0 SPLINE|70 3|71 2|40 0|40 0|40 0|40 1|40 1|40 1|41 1|41 0.5|41 1|{Points}");
        Assert.Equal((2, true, true), (spline.Degree, spline.Closed, spline.Periodic));
        Assert.Equal([0, 0, 0, 1, 1, 1], spline.Knots);
        Assert.Equal([1, 0.5, 1], spline.Weights);
        Assert.Equal([new(0, 0), new(1, 1), new(2, 0)], spline.ControlPoints);
    }

    [Fact]
    public void Weights_of_minus_one_mean_none() =>
        Assert.Empty(
            Sample.ReadOne<DxfSpline>($"0 SPLINE|71 2|40 0|40 0|40 0|40 1|40 1|40 1|41 -1|41 -1|41 -1|{Points}").Weights);

    [Fact]
    public void Fit_points_alone_are_a_curve_too()
    {
        var spline = Sample.ReadOne<DxfSpline>("0 SPLINE|71 3|74 2|11 0|21 0|31 0|11 5|21 1|31 0");
        Assert.Equal([new(0, 0), new(5, 1)], spline.FitPoints);
        Assert.Empty(spline.ControlPoints);
    }

    [Theory]
    [InlineData("71 2|40 0|40 0|40 1|40 1|" + Points, "4 knots")]
    [InlineData("71 0|40 0|40 1|40 2|40 3|" + Points, "degree is 0")]
    [InlineData("71 2000000000|" + Points, "degree is 2000000000")]
    [InlineData("71 2|40 0|40 0|40 0|40 1|40 0.5|40 1|" + Points, "knots decrease")]
    [InlineData("71 2|40 1|40 1|40 1|40 1|40 1|40 1|" + Points, "no room")]
    [InlineData("71 3|40 0|40 0|40 1|40 1|" + Points, "3 control points")]
    [InlineData("71 2|40 0|40 0|40 0|40 1|40 1|40 1|41 1|" + Points, "1 weights")]
    [InlineData("71 2|40 0|40 0|40 0|40 1|40 1|40 1|41 1|41 0|41 1|" + Points, "weight is zero")]
    [InlineData("71 3|11 0|21 0", "neither")]
    public void A_spline_that_cannot_be_evaluated_is_refused(string tags, string why)
    {
        var exception = Sample.RefusedEntity($"0 SPLINE|8 CURVES|{tags}");
        Assert.Equal((5, "SPLINE"), (exception.Line, exception.EntityType));
        Assert.Contains(why, exception.Message, StringComparison.Ordinal);
        Assert.Contains("layer CURVES", exception.Message, StringComparison.Ordinal);
    }
}
