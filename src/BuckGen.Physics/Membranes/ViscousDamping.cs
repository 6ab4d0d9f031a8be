namespace BuckGen.Physics.Membranes;

/// <summary>
/// Critical damping of the current motion by Rayleigh's quotient. It takes the change of the forces along the displacement of the
/// last step, less the work of the gas that was let in.
/// </summary>
internal sealed class ViscousDamping(MembraneNodes nodes)
{
    private readonly double[] previousForceX = new double[nodes.X.Length], previousForceY = new double[nodes.X.Length],
        previousForceZ = new double[nodes.X.Length];

    /// <summary>Share of the velocity that a step removes.</summary>
    public double Share { get; set; } = 0.1;

    /// <summary>Keeps the forces before a step.</summary>
    public void KeepForces()
    {
        nodes.ForceX.CopyTo(previousForceX, 0);
        nodes.ForceY.CopyTo(previousForceY, 0);
        nodes.ForceZ.CopyTo(previousForceZ, 0);
    }

    /// <summary>Updates the share from the forces after the step.</summary>
    /// <param name="gasWork">Work of the gas that was let in.</param>
    public void Update(double gasWork)
    {
        var (work, inertia) = (-gasWork, 1e-300);
        for (var i = 0; i < nodes.Count; i++)
        {
            var (x, y, z) = (nodes.VelocityX[i], nodes.VelocityY[i], nodes.VelocityZ[i]);
            work += x * (nodes.ForceX[i] - previousForceX[i]) + y * (nodes.ForceY[i] - previousForceY[i])
                + z * (nodes.ForceZ[i] - previousForceZ[i]);
            inertia += nodes.MassXY[i] * (x * x + y * y) + nodes.MassZ[i] * z * z;
        }

        var frequency = Math.Sqrt(Math.Max(0, -work / inertia));
        Share = Math.Clamp(0.8 * Share + 0.2 * 2 * frequency, 0.001, 1);
    }
}
