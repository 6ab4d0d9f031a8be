using BuckGen.Geometry;
using BuckGen.Physics.Membranes;
using Xunit;

namespace BuckGen.Physics.Tests.Membranes;

public class StoppingTests
{
    [Fact]
    public void Forming_stops_in_its_middle_on_request()
    {
        using var stop = new CancellationTokenSource();
        var sheet =
            ClampedSheet.FromMesh(FrameMesh.CrissCross(new(-50, -50, 50, 50), 10), HyperelasticMaterial.NeoHookean(0.2), 1);

        Assert.ThrowsAny<OperationCanceledException>(() =>
            MembraneForming.Form(sheet, new StoppingTool(stop), new(90_000), stop.Token));
    }

    /// <summary>Stops the forming as soon as it is asked for a distance.</summary>
    private sealed class StoppingTool(CancellationTokenSource stop) : ITool
    {
        public double SignedDistance(Vec3 point)
        {
            stop.Cancel();
            return point.Z + 40;
        }
    }
}
