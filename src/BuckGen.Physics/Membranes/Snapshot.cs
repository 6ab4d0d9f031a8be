namespace BuckGen.Physics.Membranes;

/// <summary>Where all nodes were at a step and how they went, with what drove them.</summary>
internal sealed class Snapshot
{
    private readonly double[][] copies;

    /// <param name="nodes">The nodes, as they are now.</param>
    /// <param name="drive">Frame, gas, pressure and the like.</param>
    /// <param name="met">How many nodes had met the tool.</param>
    public Snapshot(MembraneNodes nodes, LoadState drive, int met)
    {
        copies = [.. Arrays(nodes).Select(list => (double[])list.Clone())];
        (State, ContactCount) = (drive, met);
    }

    /// <summary>Frame, gas, pressure and the like.</summary>
    public LoadState State { get; }

    /// <summary>How many nodes had met the tool.</summary>
    public int ContactCount { get; }

    /// <summary>Puts the nodes back.</summary>
    public void Restore(MembraneNodes nodes)
    {
        foreach (var (copy, array) in copies.Zip(Arrays(nodes))) copy.CopyTo(array, 0);
    }

    private static double[][] Arrays(MembraneNodes n) => [
        n.X, n.Y, n.Z, n.VelocityX, n.VelocityY, n.VelocityZ, n.InverseMassX, n.InverseMassY, n.InverseMassZ, n.MassXY, n.MassZ, n.MinGap];
}
