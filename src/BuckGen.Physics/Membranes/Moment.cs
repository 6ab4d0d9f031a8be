namespace BuckGen.Physics.Membranes;

/// <summary>Where all nodes were at a step and how they went, with what drove them.</summary>
internal sealed class Moment
{
    private readonly double[][] lists;

    /// <param name="nodes">The nodes, as they are now.</param>
    /// <param name="drive">Frame, gas, pressure and the like.</param>
    /// <param name="met">How many nodes had met the tool.</param>
    public Moment(MembraneNodes nodes, FormingDrive drive, int met)
    {
        lists = [.. Lists(nodes).Select(list => (double[])list.Clone())];
        (Drive, Met) = (drive, met);
    }

    /// <summary>Frame, gas, pressure and the like.</summary>
    public FormingDrive Drive { get; }

    /// <summary>How many nodes had met the tool.</summary>
    public int Met { get; }

    /// <summary>Puts the nodes back.</summary>
    public void Restore(MembraneNodes nodes)
    {
        foreach (var (kept, list) in lists.Zip(Lists(nodes))) kept.CopyTo(list, 0);
    }

    private static double[][] Lists(MembraneNodes n) => [
        n.X, n.Y, n.Z, n.VelocityX, n.VelocityY, n.VelocityZ, n.YieldX, n.YieldY, n.YieldZ, n.Mass, n.MassUp, n.Clearance];
}

/// <summary>What moves a sheet on its way to the tool.</summary>
/// <param name="Frame">Height of the frame, mm.</param>
/// <param name="GasDepth">Gas let in, over the area inside the frame, mm.</param>
/// <param name="Pressure">Pressure, MPa.</param>
/// <param name="Volume">Volume swept, mm³.</param>
/// <param name="Damping">Share of the velocity that a step removes.</param>
/// <param name="Pace">How fast frame or gas move on.</param>
internal readonly record struct FormingDrive(double Frame, double GasDepth, double Pressure, double Volume, double Damping, double Pace);
