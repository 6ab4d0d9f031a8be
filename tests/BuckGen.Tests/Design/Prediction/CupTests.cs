using BuckGen.Design.Bucks;
using BuckGen.Design.Prediction;
using BuckGen.Geometry;
using BuckGen.Tests.Design.Forming;
using Xunit;

namespace BuckGen.Tests.Design.Prediction;

/// <summary>
/// Round cups, as whole jobs form them, against an axisymmetric membrane of 800 elements that sticks, neo-Hookean, loaded to a
/// pressure of 30 G·t/a. It was computed outside this project with a method of its own.
/// </summary>
[Trait("Tier", "slow")]
public class CupTests(ITestOutputHelper log)
{
    private const double Radius = 50, Gauge = 1, Pressure = (101_325 - 33_600) * 1e-6;

    private static readonly double[] OnFloor = [0, 0.2, 0.4, 0.6, 0.8, 0.9], OnWall = [0.1, 0.2, 0.4, 0.6, 0.8];

    public static TheoryData<FormingDetail, double, double[], double[], double> Cups => new()
    {
        { FormingDetail.Quick, 25, [.7234, .6964, .6353, .5391, .4214, .3408], [.7392, .6931, .5944, .4866, .3628], 0.075 },
        { FormingDetail.Fine, 25, [.7234, .6964, .6353, .5391, .4214, .3408], [.7392, .6931, .5944, .4866, .3628], 0.035 },
        { FormingDetail.Quick, 50, [.2976, .2828, .2528, .2159, .1705, .1380], [.6854, .6126, .4644, .3229, .2030], 0.075 },
        { FormingDetail.Fine, 50, [.2976, .2828, .2528, .2159, .1705, .1380], [.6854, .6126, .4644, .3229, .2030], 0.035 },
    };

    [Theory]
    [MemberData(nameof(Cups))]
    public void A_cup_is_as_thick_as_an_axisymmetric_membrane(
        FormingDetail detail, double depth, double[] floor, double[] wall, double maxError)
    {
        var part = Predict(detail, depth);

        double[] errors =
        [
            .. OnFloor.Select((at, i) => ThicknessNear(part, m => m.Below > depth - 0.3, m => m.Radius / Radius, at)
                / floor[i] - 1),
            .. OnWall.Select((at, i) =>
                ThicknessNear(part, m => m.Radius > Radius - 0.6 && m.Below > 0.3, m => m.Below / depth, at) / wall[i] - 1),
        ];
        log.WriteLine($"{depth}, {part.Triangles.Length} triangles, errors in %: "
            + string.Join(' ', errors.Select(e => $"{100 * e:+0.0;-0.0}")));
        Assert.All(errors, e => Assert.InRange(e, -maxError, maxError));
    }

    /// <summary>Thickness over gauge at a place: a straight line through the triangles nearest to it on either side.</summary>
    private static double ThicknessNear(
        FormedPart part, Func<(double Radius, double Below), bool> counts, Func<(double Radius, double Below), double> place,
        double at)
    {
        var top = part.Points.Max(p => p.Z);
        var all = part.Triangles.Select(t => (t.Thickness, Middle: Middle(part, t, top))).Where(t => counts(t.Middle))
            .Select(t => (X: place(t.Middle) - at, t.Thickness)).OrderBy(t => Math.Abs(t.X)).ToArray();
        (double X, double Thickness)[] near = [.. all.Where(t => t.X <= 0).Take(12), .. all.Where(t => t.X > 0).Take(12)];
        Assert.True(near.Length >= 12, $"{near.Length} triangles near {at}");
        var (x, y) = (near.Average(t => t.X), near.Average(t => t.Thickness));
        var slope = at == 0 ? 0 : near.Sum(t => (t.X - x) * (t.Thickness - y)) / near.Sum(t => (t.X - x) * (t.X - x));
        return (y - slope * x) / Gauge;
    }

    private static (double Radius, double Below) Middle(FormedPart part, FormedTriangle t, double top)
    {
        var (a, b, c) = (part.Points[t.A], part.Points[t.B], part.Points[t.C]);
        return (new Vec2((a.X + b.X + c.X) / 3, (a.Y + b.Y + c.Y) / 3).Length, top - (a.Z + b.Z + c.Z) / 3);
    }

    private static FormedPart Predict(FormingDetail detail, double depth) =>
        Formed.Design(Formed.Disc(2 * Radius), Formed.Spec(BuckKind.Female, depth, gauge: Gauge) with
        {
            Prediction = new() { Detail = detail, Stiffening = 0, Modulus = Pressure * Radius / (30 * Gauge) },
        }).Formed!;
}
