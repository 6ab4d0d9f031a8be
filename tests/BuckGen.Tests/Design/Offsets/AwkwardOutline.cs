using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Geometry.Tests;
using BuckGen.Intake.Reading;
using BuckGen.Tests.Intake.Outlines;

namespace BuckGen.Tests.Design.Offsets;

/// <summary>An outline that is hard to offset.</summary>
/// <param name="Name">What it is called in a failure.</param>
/// <param name="Why">What is hard about it.</param>
/// <param name="Region">The outline.</param>
/// <param name="Distances">The distances at which it is hard, mm.</param>
internal sealed record AwkwardOutline(string Name, string Why, Region Region, params double[] Distances)
{
    /// <summary>The exact rung that must be able to do it.</summary>
    public IOffsetter Exact { get; init; } = new ArcOffsetter();

    /// <summary>Every row; a fault that was found and repaired gets one too.</summary>
    public static IReadOnlyList<AwkwardOutline> All { get; } =
    [
        new("collinear vertices", "a corner without a turn must not start a join",
            Shapes.Polygon((0, 0), (20, 0), (50, 0), (50, 10), (50, 30), (25, 30), (0, 30), (0, 11)), 3, -3, -14.9),
        new("circle of eight arcs", "every joint is smooth; one circle must come out",
            Region.FromLoops([Loop.FromCorners([.. Enumerable.Range(0, 8).Select(i =>
                (new Vec2(20, 0).Turned(i * Math.PI / 4), Math.Tan(Math.PI / 16)))])]), 5, -5, -19.9),
        new("slot", "lines run smoothly into arcs", Shapes.Slot(40, 10), 3, -3, -9.99),
        new("s of two arcs", "arcs of opposite turn meet smoothly",
            Region.FromLoops([Loop.FromCorners(
                [(new(0, 0), 1), (new(20, 0), -1), (new(40, 0), 0), (new(60, 0), 0), (new(60, 30), 0), (new(0, 30), 0)])]),
                2, 9.9, -2),
        new("hook", "an arc runs back beside the line it came from: a cusp with one straight side",
            Region.FromLoops(
                [Loop.FromCorners([(new(0, 0), 1), (new(20, 0), -1), (new(40, 0), 0), (new(40, 30), 0), (new(0, 30), 0)])]),
                2, 9.9, -2),
        new("hardly a corner", "a turn of a millionth is too small for a join and too large for nothing",
            Shapes.Polygon((0, 0), (50, 5e-5), (100, 0), (100, 40), (0, 40)), 5, -5),
        new("corner of a thousandth", "the join is an arc a few micrometres long",
            Shapes.Polygon((0, 0), (50, -0.05), (100, 0), (100, 40), (0, 40)), 5, -5),
        new("cusps outward", "the room between three touching circles: at its points both sides have the same direction",
            Region.FromLoops([Loop.FromCorners([.. Enumerable.Range(0, 3).Select(i =>
                (new Vec2(50 / Math.Sqrt(3), 0).Turned(i * 2 * Math.PI / 3), -Math.Tan(Math.PI / 12)))])]), 2, 20, -2),
        new("cusp inward", "a heart of three half circles: the notch has no width at its bottom",
            Region.FromLoops([Loop.FromCorners([(new(-20, 0), 1), (new(20, 0), 1), (new(0, 0), 1)])]), 2, 9.9, -2, -9),
        new("drop", "an arc above half a turn and a point",
            Region.FromLoops([Loop.FromCorners([(new(0, 30), 0), (new(-8.66, 5), Math.Tan(Math.PI / 3)), (new(8.66, 5), 0)])]), 4,
            -4, -9),
        new("three quarter disc", "an arc above half a turn with an inner corner",
            Region.FromLoops([Loop.FromCorners([(new(0, 0), 0), (new(20, 0), Math.Tan(3 * Math.PI / 8)), (new(0, -20), 0)])]), 6,
            -6),
        new("half the width of a rectangle", "inset to a line: nothing is left", Shapes.Rectangle(100, 60), -30),
        new("nearly half the width", "inset to a sliver of 0.002 mm", Shapes.Rectangle(100, 60), -29.999),
        new("half the width of a slot", "inset to a line, arcs to points", Shapes.Slot(40, 10), -10),
        new("radius of a disc", "inset to a point", Shapes.Disc(20), -20),
        new("half the width of a ring", "inset to a circle without width", Shapes.Ring(30, 10), -10),
        new("hole closed exactly", "outset by the hole's radius", Shapes.Ring(30, 10), 10),
        new("islands that just touch", "outset by half the gap: two circles share a point",
            Shapes.Union(Shapes.DiscAt(0, 0, 10), Shapes.DiscAt(24, 0, 10)), 2),
        new("sides that just touch", "outset by half the gap: two sides share a line",
            Shapes.Union(Shapes.Rectangle(30, 30), Shapes.RectangleAt(34, 0, 30, 30)), 2),
        new("neck cut exactly", "inset by half the neck: two pieces share a line",
            Shapes.Polygon((0, 0), (40, 0), (40, 15), (60, 15), (60, 0), (100, 0), (100, 40), (60, 40), (60, 25), (40, 25),
                (40, 40), (0, 40)), -5),
        new("fillet of the distance", "an inner corner rounded at 5 mm grows by 5 mm: the arc shrinks to its centre",
            Region.FromLoops([Loop.FromCorners(
                [(new(0, 0), 0), (new(60, 0), 0), (new(60, 20), 0), (new(25, 20), -Shapes.QuarterTurn), (new(20, 25), 0),
                    (new(20, 60), 0), (new(0, 60), 0)])]), 5, 4.9999, 5.0001),
        new("rounding of the distance", "an outer corner rounded at 5 mm shrinks by 5 mm: the arc shrinks to its centre",
            Region.FromLoops([Loop.FromCorners(
                [(new(0, 0), 0), (new(55, 0), Shapes.QuarterTurn), (new(60, 5), 0), (new(60, 40), 0), (new(0, 40), 0)])]), -5,
                -4.9999, -5.0001),
        new("needle", "a spike of one degree: a mitre would reach a hundred times the distance",
            Shapes.Polygon((0, 0), (100, -0.8727), (100, 0.8727)), 2, -0.5),
        new("starfish", "ten corners, five of them sharp",
            Shapes.Polygon(
                [.. Enumerable.Range(0, 10).Select(i => new Vec2(i % 2 == 0 ? 50 : 15, 0).Turned(i * Math.PI / 5))
                    .Select(p => (p.X, p.Y))]), 5, -5, -11),
        new("tiny step", "an edge of two micrometres between long ones",
            Shapes.Polygon((0, 0), (50, 0), (50, 0.002), (100, 0.002), (100, 40), (0, 40)), 3, -3),
        new("comb", "gaps of 4 mm that close together at once",
            Comb(), 1.9, 2, 2.1, -1.9),
        new("far away", "a million millimetres from the origin", Shapes.Slot(40, 10).Moved(1e6, -1e6), 3, -3),
        new("target", "islands in holes in islands: neighbours grow together",
            Region.FromLoops(((double[])[50, 40, 30, 20, 10]).Select(r => Loop.Circle(new(0, 0), r))), 4, 6, -4),
        new("hole beside the edge", "a wall of 4 mm between hole and outside is gone at 2 mm",
            Region.FromLoops([Loop.Rectangle(new(0, 0, 60, 40)), Loop.Circle(new(30, 14), 10)]), -1.9, -2.1, 3),
        new("two holes", "holes run together", Region.FromLoops(
            [Loop.Rectangle(new(0, 0, 80, 40)), Loop.Circle(new(28, 20), 10), Loop.Circle(new(52, 20), 10)]), -1.9, -2.1, 9),
        new("zigzag of small steps", "a hundred corners nearer to each other than the distance",
            Shapes.Polygon([.. Enumerable.Range(0, 100).Select(i => (i * 0.5, i % 2 * 0.4)), (49.5, 30), (0, 30)]), 6, -6),
        new("petals that stop short",
            "each crosses itself by half a micrometre at its tip: arcs in the air between them close to a loop of phantom wood",
            Petals(), -18 * Math.Tan(15.58 * Math.PI / 180), -22 * Math.Tan(15.58 * Math.PI / 180), 2,
            9) { Exact = new ArcOffsetter(MovedSides.Both) },
        new("bow tie at a corner",
            "the path runs 0.0005 mm past its start and crosses itself: for so long its material is on the right",
            Shapes.Polygon((0, 0), (50, 0), (50, 30), (-0.0003, 30), (-0.0003, -0.0005), (0.0002, -0.0002)), 3,
            -3) { Exact = new ArcOffsetter(MovedSides.Both) },
        new("spike out and straight back", "a cusp with no width: neither a point nor a notch",
            Shapes.Polygon((0, 0), (25, 0), (25, -1e-4), (25, 0), (50, 0), (50, 30), (0, 30)), 3, -3),
        new("spike on a corner", "the corner is passed twice, and both times an arc is put round it",
            Shapes.Polygon((0, 0), (50, 0), (50.00002, -0.00001), (50, 0), (50, 30), (0, 30)), 3, -3, 0.1),
        new("spike on an arc", "the arc round its tip leaves the edge at nearly no angle",
            Region.FromLoops(
                [Loop.FromCorners(
                    [(new(0, -20), Shapes.QuarterTurn), (new(20, 0), 0), (new(20.0000013, 0), 0), (new(20, 0), 1),
                        (new(-20, 0), Shapes.QuarterTurn)])]), 6.69, -2),
        new("sliver", "a side runs forth, back and forth again, a ten thousandth of a millimetre aside",
            Shapes.Polygon((0, 0), (35, 0.0001), (15, -0.0001), (50, 0), (50, 30), (0, 30)), 3.1496,
            -3) { Exact = new ArcOffsetter(MovedSides.Both) },
        new("arc nearly at its centre",
            "an arc shrinks to 0.09 mm between smooth neighbours; only rounding tells that it is too near to where it comes from",
            CorpusRegion("dxf/lc_ellipses_r14.dxf"), -5.02),
    ];

    /// <summary>Corners that turn by more than 150°: a mitre there hangs on the last few degrees.</summary>
    public int SharpCorners => Region.Loops.Sum(l => Enumerable.Range(0, l.Segments.Length).Count(i =>
        Math.Abs(l.Segments[i].DirectionAt(1).AngleTo(l.Segments[(i + 1) % l.Segments.Length].DirectionAt(0))) > 150
            * Math.PI / 180));

    /// <summary>The six petals of the corpus.</summary>
    private static Region Petals() => CorpusRegion("svg/h_petals_stop_short.svg");

    private static Region CorpusRegion(string name) => OutlineReader.Read(Corpus.File(name).Content, name).Region;

    /// <summary>Ten teeth, 4 mm wide and 25 mm long, with gaps of 4 mm.</summary>
    private static Region Comb() => Shapes.Polygon(
        [(0, 0), (76, 0), .. Enumerable.Range(0, 10).SelectMany(Tooth).SkipLast(2)]);

    private static (double X, double Y)[] Tooth(int i) => [(76 - 8 * i, 30), (72 - 8 * i, 30), (72 - 8 * i, 5), (68 - 8 * i, 5)];
}
