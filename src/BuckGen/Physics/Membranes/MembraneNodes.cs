using System.Numerics;
using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>Where the nodes are, how fast they go and what pulls at them; one list a coordinate, padded to whole vectors.</summary>
/// <remarks>Time is counted in steps, so a velocity is the way of one step, mm.</remarks>
internal sealed class MembraneNodes
{
    public MembraneNodes(int count)
    {
        var padded = Padded(count);
        Count = count;
        (X, Y, Z) = (new double[padded], new double[padded], new double[padded]);
        (VelocityX, VelocityY, VelocityZ) = (new double[padded], new double[padded], new double[padded]);
        (ForceX, ForceY, ForceZ) = (new double[padded], new double[padded], new double[padded]);
        (YieldX, YieldY, YieldZ) = (new double[padded], new double[padded], new double[padded]);
        (Mass, MassUp) = (new double[padded], new double[padded]);
        Clearance = new double[padded];
    }

    public int Count { get; }

    public double[] X { get; }
    public double[] Y { get; }
    public double[] Z { get; }

    public double[] VelocityX { get; }
    public double[] VelocityY { get; }
    public double[] VelocityZ { get; }

    /// <summary>Force of the sheet and of the gas on the nodes, N.</summary>
    public double[] ForceX { get; }
    public double[] ForceY { get; }
    public double[] ForceZ { get; }

    /// <summary>Acceleration by a unit of force, mm/N: one over the mass, nothing where the node is held.</summary>
    public double[] YieldX { get; }
    public double[] YieldY { get; }
    public double[] YieldZ { get; }

    /// <summary>Fictitious mass along x and y, N/mm.</summary>
    public double[] Mass { get; }

    /// <summary>Fictitious mass along z, N/mm.</summary>
    public double[] MassUp { get; }

    /// <summary>How far a node can go before it could meet the tool, mm.</summary>
    public double[] Clearance { get; }

    /// <summary>Where a node is.</summary>
    public Vec3 Place(int node) => new(X[node], Y[node], Z[node]);

    /// <summary>Square of the distance between two nodes, mm².</summary>
    public double Square(int a, int b) => (X[a] - X[b]) * (X[a] - X[b]) + (Y[a] - Y[b]) * (Y[a] - Y[b]) + (Z[a] - Z[b]) * (Z[a] - Z[b]);

    /// <summary>The upper side of a triangle, as long as twice its area, mm².</summary>
    public Vec3 Normal(int a, int b, int c) => (Place(b) - Place(a)).Cross(Place(c) - Place(a));

    public void ClearForces()
    {
        Array.Clear(ForceX);
        Array.Clear(ForceY);
        Array.Clear(ForceZ);
    }

    /// <summary>One step of the damped motion. <paramref name="damping"/> is the share of the velocity that a step takes away, 0 to 1.</summary>
    public void Move(double damping)
    {
        var (keep, gain) = (new Vector<double>((1 - damping / 2) / (1 + damping / 2)), new Vector<double>(1 / (1 + damping / 2)));
        for (var i = 0; i < X.Length; i += Vector<double>.Count)
        {
            var x = keep * new Vector<double>(VelocityX, i) + gain * new Vector<double>(ForceX, i) * new Vector<double>(YieldX, i);
            var y = keep * new Vector<double>(VelocityY, i) + gain * new Vector<double>(ForceY, i) * new Vector<double>(YieldY, i);
            var z = keep * new Vector<double>(VelocityZ, i) + gain * new Vector<double>(ForceZ, i) * new Vector<double>(YieldZ, i);
            x.CopyTo(VelocityX, i);
            y.CopyTo(VelocityY, i);
            z.CopyTo(VelocityZ, i);
            (new Vector<double>(X, i) + x).CopyTo(X, i);
            (new Vector<double>(Y, i) + y).CopyTo(Y, i);
            (new Vector<double>(Z, i) + z).CopyTo(Z, i);
            (new Vector<double>(Clearance, i) - Vector.SquareRoot(x * x + y * y + z * z)).CopyTo(Clearance, i);
        }
    }

    internal static int Padded(int count) => (count + Vector<double>.Count - 1) / Vector<double>.Count * Vector<double>.Count;
}
