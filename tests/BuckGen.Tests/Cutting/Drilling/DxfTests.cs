using System.Collections.Immutable;
using BuckGen.Cutting.Drilling;
using BuckGen.Dxf;
using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading;
using Snapshooter.Xunit3;
using Xunit;

namespace BuckGen.Tests.Cutting.Drilling;

public class DxfTests
{
    [Theory]
    [InlineData(DxfVersion.R12)]
    [InlineData(DxfVersion.R2000)]
    public void Every_hole_is_a_point_and_a_circle_on_the_layer_for_vents(DxfVersion version)
    {
        var entities = DxfReader.Read([.. DrillDxf.Write(Holes.Few, version)]).Entities;
        Assert.All(entities, e => Assert.Equal("VENT", e.Layer));
        Assert.Equal(
            Holes.Few.Select(h => (h.Centre.X, h.Centre.Y)).Order(),
            entities.OfType<DxfPointEntity>().Select(p => (p.Position.X, p.Position.Y)).Order(), Near);
        Assert.Equal(
            Holes.Few.Select(h => (h.Centre.X, h.Diameter)).Order(),
            entities.OfType<DxfCircle>().Select(c => (c.Centre.X, 2 * c.Radius)).Order(), Near);
    }

    [Fact]
    public void The_R12_file_stays_as_it_was() =>
        Snapshot.Match(DrillDxf.Write(Holes.Few[..2], DxfVersion.R12).Text().Replace("\r\n", "\n", StringComparison.Ordinal));

    [Fact]
    public void A_map_without_holes_is_refused() => Assert.Throws<DrillException>(() => DrillDxf.Write([], DxfVersion.R12));

    [Fact]
    public void A_file_that_holds_other_holes_is_noticed()
    {
        ImmutableArray<DrillHole> drawn = [.. DrillRun.Split(Holes.Few).SelectMany(r => r.Holes)];
        byte[] file = [.. DrillDxf.Write(Holes.Few, DxfVersion.R12)];
        DrillDxfCheck.Verify(file, drawn);
        Assert.Throws<DrillException>(() => DrillDxfCheck.Verify(file, drawn[1..]));
        foreach (var other in (DrillHole[])[drawn[1] with { Diameter = 2 }, drawn[1] with { Centre = new(10, 0.1) }])
            Assert.Throws<DrillException>(() => DrillDxfCheck.Verify(file, drawn.SetItem(1, other)));
    }

    private static bool Near((double, double) a, (double, double) b) =>
        Math.Abs(a.Item1 - b.Item1) < 1e-3 && Math.Abs(a.Item2 - b.Item2) < 1e-3;
}
