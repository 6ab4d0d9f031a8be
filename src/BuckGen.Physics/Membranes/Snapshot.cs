namespace BuckGen.Physics.Membranes;

/// <summary>State of all nodes and of the load after a step.</summary>
internal sealed class Snapshot
{
    private readonly double[][] copies;

    /// <param name="nodes">The nodes in their current state.</param>
    /// <param name="state">The state of the load.</param>
    /// <param name="contactCount">Number of nodes that have come into contact.</param>
    public Snapshot(MembraneNodes nodes, LoadState state, int contactCount)
    {
        copies = [.. Arrays(nodes).Select(list => (double[])list.Clone())];
        (State, ContactCount) = (state, contactCount);
    }

    /// <summary>The state of the load.</summary>
    public LoadState State { get; }

    /// <summary>Number of nodes that had come into contact.</summary>
    public int ContactCount { get; }

    /// <summary>Restores the nodes.</summary>
    public void Restore(MembraneNodes nodes)
    {
        foreach (var (copy, array) in copies.Zip(Arrays(nodes))) copy.CopyTo(array, 0);
    }

    private static double[][] Arrays(MembraneNodes n) => [
        n.X, n.Y, n.Z, n.VelocityX, n.VelocityY, n.VelocityZ, n.InverseMassX, n.InverseMassY, n.InverseMassZ, n.MassXY, n.MassZ,
        n.MinGap];
}
