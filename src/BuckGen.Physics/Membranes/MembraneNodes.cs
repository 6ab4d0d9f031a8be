using System.Numerics;
using System.Runtime.Intrinsics;
using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>
/// Where the nodes are, how fast they go and what pulls at them; one list a coordinate, padded to whole vectors.
/// </summary>
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
        (Lined, Pull, PullToo) = (new double[4 * padded], new double[4 * padded], new double[4 * padded]);
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

    /// <summary>The places once more, x, y, z and a spare of each node together, as the triangles ask for them.</summary>
    public double[] Lined { get; }

    /// <summary>Forces laid out likewise, of the first half of the triangles.</summary>
    public double[] Pull { get; }

    /// <summary>Of the second half.</summary>
    public double[] PullToo { get; }

    /// <summary>Where a node is.</summary>
    public Vec3 Place(int node) => new(X[node], Y[node], Z[node]);

    /// <summary>Square of the distance between two nodes, mm².</summary>
    public double Square(int a, int b) => (X[a] - X[b]) * (X[a] - X[b]) + (Y[a] - Y[b]) * (Y[a] - Y[b]) + (Z[a] - Z[b]) * (Z[a] - Z[b]);

    /// <summary>The upper side of a triangle, as long as twice its area, mm².</summary>
    public Vec3 Normal(int a, int b, int c) => (Place(b) - Place(a)).Cross(Place(c) - Place(a));

    /// <summary>Lines up the places.</summary>
    public void Line()
    {
        for (var i = 0; i < X.Length; i += 4)
        {
            var (a, b, c, d) = Quads.Places(Vector256.Create(X.AsSpan(i)), Vector256.Create(Y.AsSpan(i)), Vector256.Create(Z.AsSpan(i)));
            a.CopyTo(Lined, 4 * i);
            b.CopyTo(Lined, 4 * i + 4);
            c.CopyTo(Lined, 4 * i + 8);
            d.CopyTo(Lined, 4 * i + 12);
        }
    }

    /// <summary>Takes the forces apart again.</summary>
    /// <param name="both">Whether there are any of the second half.</param>
    public void GatherForces(bool both)
    {
        for (var i = 0; i < X.Length; i += 4)
        {
            var (a, b, c, d) = (Pulled(i, both), Pulled(i + 1, both), Pulled(i + 2, both), Pulled(i + 3, both));
            var (x, y, z) = Quads.Lanes(a, b, c, d);
            x.CopyTo(ForceX, i);
            y.CopyTo(ForceY, i);
            z.CopyTo(ForceZ, i);
        }
    }

    private Vector256<double> Pulled(int node, bool both)
    {
        var pull = Vector256.Create(Pull.AsSpan(4 * node));
        return both ? pull + Vector256.Create(PullToo.AsSpan(4 * node)) : pull;
    }

    /// <summary>
    /// One step of the damped motion. <paramref name="damping"/> is the share of the velocity that a step removes, 0 to 1.
    /// </summary>
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

    /// <summary>A number of entries filled up to eights, whole vectors on any machine.</summary>
    internal static int Padded(int count) => (count + 7) / 8 * 8;
}
