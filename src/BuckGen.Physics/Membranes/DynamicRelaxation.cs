namespace BuckGen.Physics.Membranes;

/// <summary>Follows the equilibrium path of a sheet from flat to formed by dynamic relaxation with viscous damping.</summary>
/// <remarks>
/// <para>
/// Dynamic relaxation after A. S. Day and J. R. H. Otter (from memory): fictitious masses make every step stable, and tool or gas
/// advance only as fast as the residual forces stay small. So each node follows the equilibrium path, and where it comes into
/// contact does not depend on masses or damping.
/// </para>
/// <para>
/// The damping is viscous and near critical for the lowest mode that moves, estimated by Rayleigh's quotient (P. Underwood,
/// adaptive dynamic relaxation, from memory). It is not kinetic damping, which stops all nodes at each peak of the kinetic
/// energy. In between, the sheet would swing past equilibrium and touch the tool too early.
/// </para>
/// </remarks>
internal sealed class DynamicRelaxation : IDisposable
{
    /// <summary>
    /// Stiffness of the gas: pressure at a mean depth of one characteristic length, over the unit of pressure of the sheet,
    /// μ·t0/length. Any value is right that outweighs the fall of the pressure of a bubble beyond its peak, about 0.2.
    /// </summary>
    private const double RelativeGasStiffness = 3;

    /// <summary>Steps between two updates of masses and damping.</summary>
    private const int MassUpdateInterval = 32;

    /// <summary>
    /// Smallest number of steps between two searches for self-contact; a flank must not pass through the other in between.
    /// </summary>
    private const int SelfContactInterval = 8;

    private const double MaxLoadRate = 1 / 250.0, MinLoadRate = 1e-6;

    /// <summary>
    /// Residual allowed before the first contact: the sheet is elastic, so the path up to there does not change the result.
    /// </summary>
    private const double PreContactTolerance = 0.3;

    /// <summary>Time between two snapshots, over the decay time of the slowest mode.</summary>
    private const double SnapshotInterval = 4;

    /// <summary>Relative residual at which the sheet counts as in equilibrium.</summary>
    private const double EquilibriumTolerance = 1e-4;

    /// <summary>Area stretch of a free triangle from which on the sheet counts as burst.</summary>
    private const double BurstAreaStretch = 200;

    private readonly ClampedSheet sheet;
    private readonly FormingLoad load;
    private readonly MembraneNodes nodes;
    private readonly MembraneElements elements;
    private readonly ToolContact contact;
    private readonly SelfContact selfContact;
    private readonly FrictionContact? frictionContact;
    private readonly ForkJoin workers = new();
    private readonly double[] previousForceX, previousForceY, previousForceZ;
    private readonly int[] clampedNodes;
    private readonly double area, characteristicLength, tensionScale, gasStiffness;

    private double startVolume, frameHeight, gasDepth, pressure, maxPressure, removedVolume, volume;
    private double loadRate = MinLoadRate * 10, damping = 0.1;
    private int contactsAtRemoval, stepCount;
    private bool isRising, isBeforeContact, isSettling;
    private int snapshotStep;
    private Snapshot? olderSnapshot, newerSnapshot;

    public DynamicRelaxation(ClampedSheet sheet, ITool tool, FormingLoad load)
    {
        (this.sheet, this.load) = (sheet, load);
        area = sheet.Mesh.Area;
        characteristicLength = sheet.CharacteristicLength();
        tensionScale = sheet.Material.ShearModulus * sheet.Thickness;
        gasStiffness = RelativeGasStiffness * tensionScale / (characteristicLength * characteristicLength);
        nodes = new(sheet.Mesh.Nodes.Length);
        elements = new(sheet);
        (previousForceX, previousForceY, previousForceZ) =
            (new double[nodes.X.Length], new double[nodes.X.Length], new double[nodes.X.Length]);
        clampedNodes = [.. Enumerable.Range(0, nodes.Count).Where(i => sheet.BoundaryConditions[i] == BoundaryCondition.Clamped)];
        for (var i = 0; i < nodes.Count; i++)
            (nodes.X[i], nodes.Y[i], nodes.Z[i]) = (sheet.Mesh.Nodes[i].X, sheet.Mesh.Nodes[i].Y, load.Rise);
        (frameHeight, isRising) = (load.Rise, load.Rise > 0);
        // With a limit on the swept depth, a large residual would let in too much gas.
        isBeforeContact = isRising || load.SweptDepth is null;
        var isClamped = sheet.BoundaryConditions.Select(b => b == BoundaryCondition.Clamped);
        contact = new(tool, nodes, isClamped, 1e-9 * characteristicLength);
        selfContact = new(nodes, contact, SymmetryLimits.FromSheet(sheet));
        contact.DetectContacts();
        if (load.Friction is { } friction)
        {
            frictionContact = new(
                contact, nodes, elements, friction, i => sheet.BoundaryConditions[i], Math.Sqrt(area / nodes.Count),
                tensionScale);
            // With friction the result depends on the path from the first contact on.
            isBeforeContact &= contact.ContactCount == 0;
        }
        UpdateMasses();
        olderSnapshot = newerSnapshot = TakeSnapshot();
    }

    public MembraneNodes Nodes => nodes;

    public ToolContact Contact => contact;

    public SelfContact SelfContact => selfContact;

    public int Steps => stepCount;

    /// <summary>Pressure at the end, MPa.</summary>
    public double Pressure => pressure;

    /// <summary>Volume swept below the frame, mm³.</summary>
    public double Volume => volume;

    /// <summary>Relative residual at the end: residual over reaction forces.</summary>
    public double Residual { get; private set; } = 1;

    /// <summary>Runs on until the sheet is in equilibrium after the whole rise and under a pressure, or fails.</summary>
    /// <param name="stop">The pressure, Pa; not below that of the run before.</param>
    /// <param name="cancellation">Stops the simulation.</param>
    public FormingOutcome RunToEquilibrium(double stop, CancellationToken cancellation)
    {
        maxPressure = stop * 1e-6;
        if (elements.Count == 0) return FormingOutcome.Converged;
        for (var lastStep = stepCount + load.MaxSteps; stepCount < lastStep;)
        {
            Step();
            if (isBeforeContact) WatchForContact();
            // NaN counts as a burst too.
            if (!(elements.MaxAreaStretch < BurstAreaStretch)) return FormingOutcome.Burst;
            if (stepCount % 4 == 0)
            {
                Residual = RelativeResidual();
                var tolerance = isBeforeContact ? Math.Max(PreContactTolerance, load.PathTolerance) : load.PathTolerance;
                isSettling &= Residual >= load.PathTolerance;
                var factor = Residual < tolerance ? 1.05 : Residual < 2 * tolerance ? 0.97 : 0.8;
                if (!isSettling) loadRate = Math.Clamp(loadRate * factor, MinLoadRate, MaxLoadRate);
            }
            if (IsSelfContactDue) selfContact.DetectContacts(elements);
            if (stepCount % MassUpdateInterval == 0)
            {
                cancellation.ThrowIfCancellationRequested();
                RemoveFixedElements();
                UpdateMasses();
                if (elements.Count == 0) return FormingOutcome.Converged;
            }
            if (!isRising && !IsFilling && Residual < EquilibriumTolerance) return FormingOutcome.Converged;
        }
        return FormingOutcome.StepLimit;
    }

    /// <summary>
    /// Ends the phase of large tolerance before the frame arrives or when all gas is in. If a node has come into contact, it
    /// returns to a snapshot well before that, because the place of contact must not depend on the tolerance.
    /// </summary>
    private void WatchForContact()
    {
        if (contact.ContactCount > olderSnapshot!.ContactCount)
        {
            olderSnapshot.Restore(nodes);
            contact.RollBack(olderSnapshot.ContactCount);
            (frameHeight, gasDepth, pressure, volume, damping, loadRate) = olderSnapshot.State;
        }
        else if (isRising ? frameHeight > 0.03 * load.Rise : load.Rise == 0 && IsFilling)
        {
            if (stepCount - snapshotStep >= SnapshotInterval / damping)
                (olderSnapshot, newerSnapshot, snapshotStep) = (newerSnapshot, TakeSnapshot(), stepCount);
            return;
        }
        loadRate *= load.PathTolerance / PreContactTolerance;
        (isBeforeContact, isSettling, olderSnapshot, newerSnapshot) = (false, true, null, null);
    }

    /// <summary>
    /// Whether to search for self-contact: often when the load advances fast compared with the element size, else less often.
    /// </summary>
    private bool IsSelfContactDue => !isRising && !isBeforeContact && stepCount % SelfContactInterval == 0
        && (stepCount % (4 * SelfContactInterval) == 0
            || loadRate * characteristicLength * SelfContactInterval > 0.2 * Math.Sqrt(area / nodes.Count));

    private Snapshot TakeSnapshot() =>
        new(nodes, new(frameHeight, gasDepth, pressure, volume, damping, loadRate), contact.ContactCount);

    public void Dispose() => workers.Dispose();

    /// <summary>Whether gas is still let in.</summary>
    private bool IsFilling => pressure < maxPressure
        && (load.SweptDepth is not { } depth || (volume - startVolume) / area < depth);

    private void Step()
    {
        stepCount++;
        var updatesDamping = stepCount % MassUpdateInterval == MassUpdateInterval / 2;
        if (updatesDamping)
        {
            nodes.ForceX.CopyTo(previousForceX, 0);
            nodes.ForceY.CopyTo(previousForceY, 0);
            nodes.ForceZ.CopyTo(previousForceZ, 0);
        }
        var (volumeBefore, gasDepthBefore) = (volume, gasDepth);
        AdvanceLoad();
        volume = removedVolume + ElementForces.Assemble(elements, nodes, sheet.Material, pressure, workers);
        if (!isRising) pressure = Math.Max(0, gasStiffness * (gasDepth - (volume - startVolume) / area));
        if (updatesDamping) SetDamping(gasStiffness * (gasDepth - gasDepthBefore) * (volume - volumeBefore));
        if (isRising) StopFrame();
        frictionContact?.ApplyFriction(damping, SetInverseMass);
        nodes.Integrate(damping);
        contact.DetectContacts();
    }

    /// <summary>Moves the frame or lets gas in.</summary>
    private void AdvanceLoad()
    {
        if (isSettling) return;
        if (isRising)
        {
            var frameBefore = frameHeight;
            frameHeight = Math.Max(0, frameHeight - loadRate * characteristicLength);
            foreach (var i in clampedNodes) (nodes.Z[i], nodes.VelocityZ[i]) = (frameHeight, frameHeight - frameBefore);
        }
        else if (IsFilling)
        {
            gasDepth += loadRate * (characteristicLength + pressure / gasStiffness);
        }
    }

    /// <summary>Takes the displacement of the frame out of its velocity; at the end of the rise the gas takes over.</summary>
    private void StopFrame()
    {
        foreach (var i in clampedNodes) nodes.VelocityZ[i] = 0;
        if (frameHeight > 0) return;
        isRising = false;
        startVolume = volume;
    }

    /// <summary>Residual forces of the free nodes over the reaction forces of the others.</summary>
    private double RelativeResidual()
    {
        var (residual, reaction) = (0.0, 0.6 * tensionScale * area / characteristicLength);
        for (var i = 0; i < nodes.Count; i++)
        {
            var (x, y, z) = (nodes.ForceX[i], nodes.ForceY[i], nodes.ForceZ[i]);
            if (contact.IsFree[i])
            {
                if (nodes.InverseMassX[i] == 0) x = 0;
                if (nodes.InverseMassY[i] == 0) y = 0;
                residual += Math.Sqrt(x * x + y * y + z * z);
            }
            else if (frictionContact is null || !contact.IsInContact[i])
            {
                reaction += Math.Sqrt(x * x + y * y + z * z);
            }
        }
        return frictionContact is null
            ? residual / reaction
            : (residual + frictionContact.SlipResidual) / (reaction + frictionContact.FrictionForce);
    }

    /// <summary>
    /// Critical damping of the current motion by Rayleigh's quotient. It takes the change of the forces along the displacement of
    /// the last step, less the work of the gas that was let in.
    /// </summary>
    private void SetDamping(double gasWork)
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
        damping = Math.Clamp(0.8 * damping + 0.2 * 2 * frequency, 0.001, 1);
    }

    private void RemoveFixedElements()
    {
        // With friction, elements on the tool can still stretch.
        if (frictionContact is not null || isRising || contact.ContactCount - contactsAtRemoval < nodes.Count / 50) return;
        contactsAtRemoval = contact.ContactCount;
        removedVolume += elements.RemoveFixed(contact.IsFree, nodes, selfContact.KeepFixed);
    }

    private void UpdateMasses()
    {
        FictitiousMass.Assemble(elements, nodes, sheet.Material, pressure, isRising ? 0 : gasStiffness / area);
        for (var i = 0; i < nodes.Count; i++) if (contact.IsFree[i]) SetInverseMass(i);
    }

    /// <summary>Lets a node move, in the directions that its boundary condition leaves free.</summary>
    private void SetInverseMass(int i)
    {
        var boundaryCondition = sheet.BoundaryConditions[i];
        var inverseMass = 1 / nodes.MassXY[i];
        nodes.InverseMassX[i] = boundaryCondition.HasFlag(BoundaryCondition.FixedX) ? 0 : inverseMass;
        nodes.InverseMassY[i] = boundaryCondition.HasFlag(BoundaryCondition.FixedY) ? 0 : inverseMass;
        nodes.InverseMassZ[i] = 1 / nodes.MassZ[i];
    }
}
