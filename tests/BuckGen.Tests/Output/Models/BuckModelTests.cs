using BuckGen.Design.Bucks;
using BuckGen.Design.Venting;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Geometry.Tests;
using BuckGen.Intake.Outlines;
using BuckGen.Output.Models;
using BuckGen.Output.Models.Meshing;
using BuckGen.Tests.Design.Bucks;
using Xunit;

namespace BuckGen.Tests.Output.Models;

/// <summary>Models of bucks whose measures follow from trigonometry.</summary>
[Trait("Tier", "slow")]
public class BuckModelTests
{
    private static readonly Stock Ply6 = new("ply 6", 6);

    // The wall moves 36 tan 5° = 3.1496 mm outward from the face to the foot.
    private static readonly double Shift = 36 * PlainBuck.Tan5;

    [Fact]
    public void A_mitred_box_is_a_frustum_of_twelve_triangles()
    {
        var mesh = BuckModel
            .Smooth(PlainBuck.Create(Shapes.Rectangle(100, 60), PlainBuck.Spec with { Corners = CornerJoin.Mitre }));

        Assert.Empty(MeshFaults.Find(mesh));
        Assert.Equal(12, mesh.Triangles.Length);
        // The prismatoid's formula: h/6 (foot + 4 middle + face).
        Assert.Equal(6 * (Box(2 * Shift) + 4 * Box(Shift) + Box(0)), mesh.Volume, 1.0);
        Assert.Equal((-Shift, -Shift, 0), (mesh.MinCorner.X, mesh.MinCorner.Y, mesh.MinCorner.Z), Near);
        Assert.Equal((100 + Shift, 60 + Shift, 36), (mesh.MaxCorner.X, mesh.MaxCorner.Y, mesh.MaxCorner.Z), Near);

        static double Box(double more) => (100 + more) * (60 + more);
    }

    /// <summary>
    /// What a round takes from the edge of a disc: the square of the radius less a quarter of a circle, carried round the axis.
    /// Its centroid lies 2r/3/(4 - π) from the centre of the arc, along either side. Source: Pappus's second theorem.
    /// </summary>
    [Fact]
    public void A_disc_with_a_round_edge_lacks_a_ring()
    {
        const double Edge = 6;
        var spec = PlainBuck.Spec with { Draft = 0 };
        var (sharp, round) = (BuckModel.Smooth(PlainBuck.Create(Shapes.Disc(30), spec)),
            BuckModel.Smooth(PlainBuck.Create(Shapes.Disc(30), spec with { EdgeRadius = Edge })));

        Assert.Empty(MeshFaults.Find(round));
        var fromSharpEdge = Edge - Edge * (2.0 / 3) / (4 - Math.PI);
        var ring = Edge * Edge * (1 - Math.PI / 4) * 2 * Math.PI * (30 - fromSharpEdge);
        Assert.Equal(ring, sharp.Volume - round.Volume, 0.02 * ring);
        Assert.Equal(36, round.MaxCorner.Z, 1e-6);
    }

    [Theory]
    [InlineData(BuckKind.Male)]
    [InlineData(BuckKind.Female)]
    public void A_ledge_is_level_in_the_model(BuckKind kind)
    {
        var spec = PlainBuck.Spec with
        {
            Kind = kind,
            Base = new(Ply6),
            Corners = CornerJoin.Mitre,
            Side = [new() { Draft = 0 }, new() { Height = 0, Inset = 8 }, new() { Height = 12, Draft = 0 }],
            OutlineAt = kind == BuckKind.Male ? OutlineAt.Base : OutlineAt.Face,
        };
        var mesh = BuckModel.Smooth(PlainBuck.Create(Shapes.Rectangle(100, 60), spec));

        Assert.Empty(MeshFaults.Find(mesh));
        var (plate, hollow) = kind == BuckKind.Male ? (140 * 100, 24 * 100 * 60 + 12 * 84 * 44)
            : (190 * 150, 36 * 150 * 110 - 24 * 100 * 60 - 12 * 84 * 44);
        Assert.Equal(6.0 * plate + hollow, mesh.Volume, 12.0);
    }

    [Fact]
    public void A_disc_is_a_cone_less_its_tip()
    {
        var mesh = BuckModel.Smooth(PlainBuck.Create(Shapes.Disc(30)));

        Assert.Empty(MeshFaults.Find(mesh));
        var foot = 30 + Shift;
        Assert.InRange(mesh.Volume / (Math.PI * 36 / 3 * (foot * foot + foot * 30 + 30 * 30)), 0.999, 1);
    }

    [Fact]
    public void A_cavity_in_a_block_on_a_plate_is_one_body()
    {
        var design = PlainBuck.Create(Shapes.Slot(60, 30), PlainBuck.Spec with { Kind = BuckKind.Female, Base = new(Ply6) });

        Assert.Equal([2], MeshFaults.EulerCharacteristics(BuckModel.Stepped(design)));
        Assert.Equal([2], MeshFaults.EulerCharacteristics(BuckModel.Smooth(design)));
        // Without the plate the cavity goes right through.
        Assert.Equal([0],
            MeshFaults.EulerCharacteristics(
                BuckModel.Smooth(PlainBuck.Create(Shapes.Slot(60, 30), PlainBuck.Spec with { Kind = BuckKind.Female }))));
    }

    // A counter of 3 mm closes 1.5 / tan 5° = 17.15 mm below the face: a pit in the model, its floor within a chord error of the
    // wall's shift.
    [Fact]
    public void A_counter_that_closes_is_a_pit_of_the_right_depth()
    {
        var mesh = BuckModel.Smooth(PlainBuck.Create(Shapes.Counter(60, 60, 3, 30)));

        Assert.Equal([2], MeshFaults.EulerCharacteristics(mesh));
        var floor = mesh.Points.Where(p => p is { X: > 20 and < 40, Y: > 10 and < 50 }).Min(p => p.Z);
        Assert.Equal(36 - 1.5 / PlainBuck.Tan5, floor, SolidBuilder.ChordError / PlainBuck.Tan5);
    }

    [Fact]
    public void Islands_on_no_plate_are_bodies_of_their_own() =>
        Assert.Equal([2, 2],
            MeshFaults.EulerCharacteristics(
                BuckModel.Smooth(PlainBuck.Create(Shapes.Union(Shapes.Disc(10), Shapes.DiscAt(60, 0, 10))))));

    [Theory]
    [InlineData(PlenumKind.Feet)]
    [InlineData(PlenumKind.Channels)]
    public void Plenum_and_plates_are_part_of_both_models(PlenumKind kind)
    {
        var design = PlainBuck.Create(Shapes.Counter(80, 60, 40, 20), PlainBuck.Spec with
        {
            Base = new(Ply6, 20, new("MDF 9", 9)),
            Sheet = new(),
            Vents = new(),
            Plenum = new(PlainBuck.Mdf12, kind),
        });

        foreach (var mesh in (SolidMesh[])[BuckModel.Stepped(design), BuckModel.Smooth(design)])
        {
            Assert.Empty(MeshFaults.Find(mesh));
            Assert.Equal((0, design.Height), (mesh.MinCorner.Z, mesh.MaxCorner.Z));
            Assert.Single(MeshFaults.EulerCharacteristics(mesh));
        }

        Assert.InRange(BuckModel.Stepped(design).Volume / design.Layers.Sum(l => l.Region.Area * l.Thickness), 0.999, 1.001);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-5)]
    public void Upright_and_locking_walls_are_closed_too(double draft)
    {
        var design =
            PlainBuck.Create(Shapes.Counter(80, 60, 40, 20), PlainBuck.Spec with { Draft = draft, Corners = CornerJoin.Mitre });

        Assert.Empty(MeshFaults.Find(BuckModel.Smooth(design)));
        Assert.Empty(MeshFaults.Find(BuckModel.Stepped(design)));
        if (draft == 0) Assert.Equal(36 * (80 * 60 - 40 * 20), BuckModel.Smooth(design).Volume, 1e-6);
    }

    [Fact]
    public void Drawing_the_loops_the_other_way_round_changes_no_byte()
    {
        var loops = Shapes.Union(Shapes.Counter(60, 60, 3, 30), Shapes.Slot(60, 15).Moved(100, 30)).Loops.ToArray();
        var (one, other) = (PlainBuck.Create(Region.FromLoops(loops)),
            PlainBuck.Create(Region.FromLoops(loops.Reverse().Select(l => l.Reversed()))));

        Assert.Equal(StlFile.Write(BuckModel.Stepped(one)), StlFile.Write(BuckModel.Stepped(other)));
        Assert.Equal(StlFile.Write(BuckModel.Smooth(one)), StlFile.Write(BuckModel.Smooth(other)));
    }

    [Fact]
    public void Far_from_the_origin_it_is_the_same_buck()
    {
        var (near, far) = (PlainBuck.Create(Shapes.Slot(60, 30)), PlainBuck.Create(Shapes.Slot(60, 30).Moved(100_000, -70_000)));

        Assert.Equal(BuckModel.Smooth(near).Volume, BuckModel.Smooth(far).Volume, 0.1);
        Assert.Empty(MeshFaults.Find(BuckModel.Smooth(far)));
    }

    [Fact]
    public void The_wall_of_a_design_put_together_by_hand_is_not_known()
    {
        var made = PlainBuck.Create(Shapes.Disc(30));
        var byHand =
            new BuckGen.Design.BuckDesign(Outline.FromRegion("drawn", Shapes.Disc(30)), made.Spec, made.Plan, made.Layers, null,
                made.Footprint, []);

        Assert.Equal(BuckModel.Stepped(made).Volume, BuckModel.Stepped(byHand).Volume);
        Assert.Throws<ArgumentException>(() => BuckModel.Smooth(byHand));
    }

    /// <summary>Within the grid's step and the offset's own tolerance.</summary>
    private static bool Near((double, double, double) a, (double, double, double) b) =>
        Math.Max(Math.Abs(a.Item1 - b.Item1), Math.Max(Math.Abs(a.Item2 - b.Item2), Math.Abs(a.Item3 - b.Item3))) < 0.001;
}
