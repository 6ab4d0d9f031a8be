using System.Numerics;
using System.Runtime.Intrinsics;
using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>Positions, velocities and forces of the nodes, as a structure of arrays, padded to whole vectors.</summary>
/// <remarks>The unit of time is the step, so a velocity is the displacement in one step, mm.</remarks>
internal sealed class MembraneNodes
{
    public MembraneNodes(int count)
    {
        var padded = PaddedCount(count);
        Count = count;
        (X, Y, Z) = (new double[padded], new double[padded], new double[padded]);
        (VelocityX, VelocityY, VelocityZ) = (new double[padded], new double[padded], new double[padded]);
        (ForceX, ForceY, ForceZ) = (new double[padded], new double[padded], new double[padded]);
        (InverseMassX, InverseMassY, InverseMassZ) = (new double[padded], new double[padded], new double[padded]);
        (MassXY, MassZ) = (new double[padded], new double[padded]);
        MinGap = new double[padded];
        (InterleavedPositions, InterleavedForces, SecondInterleavedForces) =
            (new double[4 * padded], new double[4 * padded], new double[4 * padded]);
    }

    public int Count { get; }

    public double[] X { get; }
    public double[] Y { get; }
    public double[] Z { get; }

    public double[] VelocityX { get; }
    public double[] VelocityY { get; }
    public double[] VelocityZ { get; }

    /// <summary>Internal force of the sheet and pressure of the gas on the nodes, N.</summary>
    public double[] ForceX { get; }
    public double[] ForceY { get; }
    public double[] ForceZ { get; }

    /// <summary>Inverse of the fictitious mass, mm/N; zero in directions in which the node is fixed.</summary>
    public double[] InverseMassX { get; }
    public double[] InverseMassY { get; }
    public double[] InverseMassZ { get; }

    /// <summary>Fictitious mass in x and y, N/mm.</summary>
    public double[] MassXY { get; }

    /// <summary>Fictitious mass in z, N/mm.</summary>
    public double[] MassZ { get; }

    /// <summary>Lower bound of the gap to the tool, mm: so far a node can move without contact.</summary>
    public double[] MinGap { get; }

    /// <summary>The positions once more as the elements read them: x, y, z and padding of each node together.</summary>
    public double[] InterleavedPositions { get; }

    /// <summary>Forces in the same layout, of the first half of the elements.</summary>
    public double[] InterleavedForces { get; }

    /// <summary>Forces of the second half.</summary>
    public double[] SecondInterleavedForces { get; }

    /// <summary>Position of a node, mm.</summary>
    public Vec3 Position(int node) => new(X[node], Y[node], Z[node]);

    /// <summary>Square of the distance between two nodes, mm².</summary>
    public double DistanceSquared(int a, int b) =>
        (X[a] - X[b]) * (X[a] - X[b]) + (Y[a] - Y[b]) * (Y[a] - Y[b]) + (Z[a] - Z[b]) * (Z[a] - Z[b]);

    /// <summary>Normal of the upper side of a triangle, of the length of twice its area, mm².</summary>
    public Vec3 DoubleAreaVector(int a, int b, int c) => (Position(b) - Position(a)).Cross(Position(c) - Position(a));

    /// <summary>Fills <see cref="InterleavedPositions"/>.</summary>
    public void InterleavePositions()
    {
        for (var i = 0; i < X.Length; i += 4)
        {
            var (a, b, c, d) = LaneTranspose.ToPoints(
                Vector256.Create(X.AsSpan(i)), Vector256.Create(Y.AsSpan(i)), Vector256.Create(Z.AsSpan(i)));
            a.CopyTo(InterleavedPositions, 4 * i);
            b.CopyTo(InterleavedPositions, 4 * i + 4);
            c.CopyTo(InterleavedPositions, 4 * i + 8);
            d.CopyTo(InterleavedPositions, 4 * i + 12);
        }
    }

    /// <summary>
    /// Sums the interleaved forces and writes them to <see cref="ForceX"/>, <see cref="ForceY"/> and <see cref="ForceZ"/>.
    /// </summary>
    /// <param name="both">Whether there are any of the second half.</param>
    public void DeinterleaveForces(bool both)
    {
        for (var i = 0; i < X.Length; i += 4)
        {
            var (a, b) = (InterleavedForce(i, both), InterleavedForce(i + 1, both));
            var (c, d) = (InterleavedForce(i + 2, both), InterleavedForce(i + 3, both));
            var (x, y, z) = LaneTranspose.ToLanes(a, b, c, d);
            x.CopyTo(ForceX, i);
            y.CopyTo(ForceY, i);
            z.CopyTo(ForceZ, i);
        }
    }

    private Vector256<double> InterleavedForce(int node, bool both)
    {
        var force = Vector256.Create(InterleavedForces.AsSpan(4 * node));
        return both ? force + Vector256.Create(SecondInterleavedForces.AsSpan(4 * node)) : force;
    }

    /// <summary>
    /// One central-difference step with viscous damping. <paramref name="damping"/> is the share of the velocity that a step
    /// removes, 0 to 1.
    /// </summary>
    public void Integrate(double damping)
    {
        var (velocityFactor, accelerationFactor) =
            (new Vector<double>((1 - damping / 2) / (1 + damping / 2)), new Vector<double>(1 / (1 + damping / 2)));
        for (var i = 0; i < X.Length; i += Vector<double>.Count)
        {
            var x = velocityFactor * new Vector<double>(VelocityX, i)
                + accelerationFactor * new Vector<double>(ForceX, i) * new Vector<double>(InverseMassX, i);
            var y = velocityFactor * new Vector<double>(VelocityY, i)
                + accelerationFactor * new Vector<double>(ForceY, i) * new Vector<double>(InverseMassY, i);
            var z = velocityFactor * new Vector<double>(VelocityZ, i)
                + accelerationFactor * new Vector<double>(ForceZ, i) * new Vector<double>(InverseMassZ, i);
            x.CopyTo(VelocityX, i);
            y.CopyTo(VelocityY, i);
            z.CopyTo(VelocityZ, i);
            (new Vector<double>(X, i) + x).CopyTo(X, i);
            (new Vector<double>(Y, i) + y).CopyTo(Y, i);
            (new Vector<double>(Z, i) + z).CopyTo(Z, i);
            (new Vector<double>(MinGap, i) - Vector.SquareRoot(x * x + y * y + z * z)).CopyTo(MinGap, i);
        }
    }

    /// <summary>A count rounded up to a multiple of eight: whole vectors on any machine.</summary>
    internal static int PaddedCount(int count) => (count + 7) / 8 * 8;
}
