namespace BuckGen.Physics.Membranes;

/// <summary>Follows a sheet from flat to formed by a damped motion so slow that it is near rest all the way.</summary>
/// <remarks>
/// Dynamic relaxation (after A. S. Day and J. R. H. Otter, from memory): the masses are made such that a step is always stable,
/// the damping is near critical for the slowest motion, and tool or gas move on only as fast as the unbalanced forces stay small.
/// So the way of every node is that of the sheet at rest, and where it meets the tool does not depend on mass or damping.
/// </remarks>
internal sealed class FormingRun : IDisposable
{
    /// <summary>Stiffness of the gas: how much of the sheet's own unit of pressure, μ·t0/reach, a mean depth of one reach makes.
    /// Any value is right as long as it outweighs the fall of a bubble's pressure past its peak, about 0.2.</summary>
    private const double GasStiffness = 3;

    /// <summary>Steps between two looks at masses and damping.</summary>
    private const int Pause = 32;

    /// <summary>Least steps between two looks for webs; a flank must not pass through the other in between.</summary>
    private const int WebPause = 8;

    private const double FastestPace = 1 / 250.0, SlowestPace = 1e-6;

    /// <summary>
    /// Unbalanced force tolerated while nothing is met: the sheet is elastic, so the way to its first contact leaves no trace.
    /// </summary>
    private const double Haste = 0.3;

    /// <summary>Time between two moments that one may go back to, over the time in which the slowest motion dies down.</summary>
    private const double Memory = 4;

    /// <summary>Unbalanced force at which the sheet counts as being at rest.</summary>
    private const double Rest = 1e-4;

    /// <summary>Stretch of area of a free triangle from which on the sheet counts as burst.</summary>
    private const double Bursting = 200;

    private readonly ClampedSheet sheet;
    private readonly FormingLoad load;
    private readonly MembraneNodes nodes;
    private readonly MembraneElements elements;
    private readonly ToolContact contact;
    private readonly WebContact web;
    private readonly SlidingContact? sliding;
    private readonly TwoHands hands = new();
    private readonly double[] forceX, forceY, forceZ;
    private readonly int[] clamped;
    private readonly double area, reach, tension, gasStiffness, limit;

    private double startVolume, frame, pace = SlowestPace * 10, gasDepth, pressure, rigidVolume, volume, damping = 0.1;
    private int dropped, steps;
    private bool rising, hasty, calming;
    private int remembered;
    private Moment? earlier, later;

    public FormingRun(ClampedSheet sheet, ITool tool, FormingLoad load)
    {
        (this.sheet, this.load) = (sheet, load);
        area = sheet.Mesh.Area;
        reach = sheet.Reach();
        tension = sheet.Material.ShearModulus * sheet.Thickness;
        gasStiffness = GasStiffness * tension / (reach * reach);
        limit = load.Pressure * 1e-6;
        nodes = new(sheet.Mesh.Nodes.Length);
        elements = new(sheet);
        (forceX, forceY, forceZ) = (new double[nodes.X.Length], new double[nodes.X.Length], new double[nodes.X.Length]);
        clamped = [.. Enumerable.Range(0, nodes.Count).Where(i => sheet.Holds[i] == NodeHold.Clamped)];
        for (var i = 0; i < nodes.Count; i++) (nodes.X[i], nodes.Y[i], nodes.Z[i]) = (sheet.Mesh.Nodes[i].X, sheet.Mesh.Nodes[i].Y, load.Rise);
        (frame, rising) = (load.Rise, load.Rise > 0);
        // Where the gas is let in up to a volume, haste would let in too much.
        hasty = rising || load.SweptDepth is null;
        contact = new(tool, nodes, sheet.Holds.Select(h => h == NodeHold.Clamped), 1e-9 * reach);
        web = new(nodes, contact, MirrorLimits.Of(sheet));
        contact.Update();
        if (load.Friction is not { } friction) return;
        sliding = new(contact, nodes, elements, friction, i => sheet.Holds[i], Math.Sqrt(area / nodes.Count), tension);
        // What slides leaves a trace of its way from the start.
        hasty &= contact.Met == 0;
    }

    public MembraneNodes Nodes => nodes;

    public ToolContact Contact => contact;

    public WebContact Web => web;

    public int Steps => steps;

    /// <summary>Pressure at the end, MPa.</summary>
    public double Pressure => pressure;

    /// <summary>Volume swept below the frame, mm³.</summary>
    public double Volume => volume;

    /// <summary>Unbalanced force at the end, as a share of the forces where the sheet is held.</summary>
    public double Unrest { get; private set; } = 1;

    /// <summary>Runs to the end.</summary>
    public FormingOutcome ToRest(CancellationToken cancellation)
    {
        SetMasses();
        earlier = later = Now();
        while (steps < load.MaxSteps)
        {
            Step();
            if (hasty) Watch();
            // A figure that is not a number is a burst too.
            if (!(elements.LargestStretch < Bursting)) return FormingOutcome.Burst;
            if (steps % 4 == 0)
            {
                Unrest = MeasureUnrest();
                var tolerated = hasty ? Math.Max(Haste, load.Unrest) : load.Unrest;
                calming &= Unrest >= load.Unrest;
                if (!calming) pace = Math.Clamp(pace * (Unrest < tolerated ? 1.05 : Unrest < 2 * tolerated ? 0.97 : 0.8), SlowestPace, FastestPace);
            }
            if (MayHaveMetItself) web.Update(elements);
            if (steps % Pause == 0)
            {
                cancellation.ThrowIfCancellationRequested();
                DropRigid();
                SetMasses();
                if (elements.Count == 0) return FormingOutcome.AtRest;
            }
            if (!rising && !Filling && Unrest < Rest) return FormingOutcome.AtRest;
        }
        return FormingOutcome.TooSlow;
    }

    /// <summary>
    /// Ends the haste before the frame arrives or when the gas is in; where a node has met the tool, by going back to a moment
    /// well before that, since where it meets must not depend on haste.
    /// </summary>
    private void Watch()
    {
        if (contact.Met > earlier!.Met)
        {
            earlier.Restore(nodes);
            contact.Forget(earlier.Met);
            (frame, gasDepth, pressure, volume, damping, pace) = earlier.Drive;
        }
        else if (rising ? frame > 0.03 * load.Rise : load.Rise == 0 && Filling)
        {
            if (steps - remembered >= Memory / damping) (earlier, later, remembered) = (later, Now(), steps);
            return;
        }
        pace *= load.Unrest / Haste;
        (hasty, calming, earlier, later) = (false, true, null, null);
    }

    /// <summary>
    /// Whether it is time to look for webs: often where the drive is fast against the size of the triangles, else less so.
    /// </summary>
    private bool MayHaveMetItself => !rising && !hasty && steps % WebPause == 0
        && (steps % (4 * WebPause) == 0 || pace * reach * WebPause > 0.2 * Math.Sqrt(area / nodes.Count));

    private Moment Now() => new(nodes, new(frame, gasDepth, pressure, volume, damping, pace), contact.Met);

    public void Dispose() => hands.Dispose();

    /// <summary>Whether gas is still let in.</summary>
    private bool Filling => pressure < limit && (load.SweptDepth is not { } depth || (volume - startVolume) / area < depth);

    private void Step()
    {
        steps++;
        var judge = steps % Pause == Pause / 2;
        if (judge)
        {
            nodes.ForceX.CopyTo(forceX, 0);
            nodes.ForceY.CopyTo(forceY, 0);
            nodes.ForceZ.CopyTo(forceZ, 0);
        }
        var (volumeBefore, gasBefore) = (volume, gasDepth);
        Advance();
        volume = rigidVolume + ElementForces.Set(elements, nodes, sheet.Material, pressure, hands);
        if (!rising) pressure = Math.Max(0, gasStiffness * (gasDepth - (volume - startVolume) / area));
        if (judge) SetDamping(gasStiffness * (gasDepth - gasBefore) * (volume - volumeBefore));
        if (rising) StopFrame();
        sliding?.Prepare(damping, GiveWay);
        nodes.Move(damping);
        contact.Update();
    }

    /// <summary>Moves the frame or lets gas in.</summary>
    private void Advance()
    {
        if (calming) return;
        if (rising)
        {
            var before = frame;
            frame = Math.Max(0, frame - pace * reach);
            foreach (var i in clamped) (nodes.Z[i], nodes.VelocityZ[i]) = (frame, frame - before);
        }
        else if (Filling)
        {
            gasDepth += pace * (reach + pressure / gasStiffness);
        }
    }

    /// <summary>Takes the frame's way, which is made, out of its velocity; at the end of the rise the gas takes over.</summary>
    private void StopFrame()
    {
        foreach (var i in clamped) nodes.VelocityZ[i] = 0;
        if (frame > 0) return;
        rising = false;
        startVolume = volume;
    }

    /// <summary>Unbalanced forces of the nodes that can move over the forces of those that can't.</summary>
    private double MeasureUnrest()
    {
        var (free, held) = (0.0, 0.6 * tension * area / reach);
        for (var i = 0; i < nodes.Count; i++)
        {
            var (x, y, z) = (nodes.ForceX[i], nodes.ForceY[i], nodes.ForceZ[i]);
            if (contact.Movable[i])
            {
                if (nodes.YieldX[i] == 0) x = 0;
                if (nodes.YieldY[i] == 0) y = 0;
                free += Math.Sqrt(x * x + y * y + z * z);
            }
            else if (sliding is null || !contact.OnTool[i])
            {
                held += Math.Sqrt(x * x + y * y + z * z);
            }
        }
        return sliding is null ? free / held : (free + sliding.Free) / (held + sliding.Held);
    }

    /// <summary>
    /// Critical damping of the motion that is going on, by Rayleigh's quotient: the change of force against the way of the last
    /// step, less what the gas let in has done.
    /// </summary>
    private void SetDamping(double byGas)
    {
        var (work, inertia) = (-byGas, 1e-300);
        for (var i = 0; i < nodes.Count; i++)
        {
            var (x, y, z) = (nodes.VelocityX[i], nodes.VelocityY[i], nodes.VelocityZ[i]);
            work += x * (nodes.ForceX[i] - forceX[i]) + y * (nodes.ForceY[i] - forceY[i]) + z * (nodes.ForceZ[i] - forceZ[i]);
            inertia += nodes.Mass[i] * (x * x + y * y) + nodes.MassUp[i] * z * z;
        }
        var frequency = Math.Sqrt(Math.Max(0, -work / inertia));
        damping = Math.Clamp(0.8 * damping + 0.2 * 2 * frequency, 0.001, 1);
    }

    private void DropRigid()
    {
        // What slides can still stretch.
        if (sliding is not null || rising || contact.Met - dropped < nodes.Count / 50) return;
        dropped = contact.Met;
        rigidVolume += elements.DropRigid(contact.Movable, nodes, web.Settle);
    }

    private void SetMasses()
    {
        StiffnessBound.SetMasses(elements, nodes, sheet.Material, pressure, rising ? 0 : gasStiffness / area);
        for (var i = 0; i < nodes.Count; i++) if (contact.Movable[i]) GiveWay(i);
    }

    /// <summary>Lets a node follow the forces on it.</summary>
    private void GiveWay(int i)
    {
        var hold = sheet.Holds[i];
        var yield = 1 / nodes.Mass[i];
        nodes.YieldX[i] = hold.HasFlag(NodeHold.X) ? 0 : yield;
        nodes.YieldY[i] = hold.HasFlag(NodeHold.Y) ? 0 : yield;
        nodes.YieldZ[i] = 1 / nodes.MassUp[i];
    }
}
