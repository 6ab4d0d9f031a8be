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
    private readonly ViscousDamping damping;
    private readonly PlugContact? plug;
    private readonly int[] clampedNodes;
    private readonly double area, characteristicLength, tensionScale, gasStiffness, rise;

    private double startVolume, frameHeight, gasDepth, pressure, maxPressure, removedVolume, volume;
    private double loadRate = MinLoadRate * 10;
    private int contactsAtRemoval, stepCount;
    private bool isBeforeGas, isBeforeContact, isSettling;
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
        damping = new(nodes);
        clampedNodes = [.. Enumerable.Range(0, nodes.Count).Where(i => sheet.BoundaryConditions[i] == BoundaryCondition.Clamped)];
        // A sag hangs clear of the tool at first, so the frame comes down over a female tool too.
        frameHeight = rise = load.Rise + sheet.MaxSag;
        isBeforeGas = rise > 0 || load.Plug is not null;
        for (var i = 0; i < nodes.Count; i++)
        {
            var before = sheet.NodeBefore(i);
            (nodes.X[i], nodes.Y[i], nodes.Z[i]) = (before.X, before.Y, before.Z + frameHeight);
        }

        // With a limit on the swept depth, a large residual would let in too much gas.
        isBeforeContact = (isBeforeGas || load.SweptDepth is null) && load.Plug is null;
        var isClamped = sheet.BoundaryConditions.Select(b => b == BoundaryCondition.Clamped);
        contact = new(tool, nodes, isClamped, 1e-9 * characteristicLength);
        selfContact = new(nodes, contact, SymmetryLimits.FromSheet(sheet));
        contact.DetectContacts();
        if (load.Plug is { } pushed) plug = new(pushed, nodes, contact, 1e-9 * characteristicLength);
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
            if (isBeforeGas || IsFilling) continue;
            if (plug is { IsWithdrawn: false })
            {
                plug.Withdraw(SetInverseMass);
                Residual = 1;
            }
            else if (Residual < EquilibriumTolerance) return FormingOutcome.Converged;
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
            (frameHeight, gasDepth, pressure, volume, damping.Share, loadRate) = olderSnapshot.State;
        }
        else if (isBeforeGas ? frameHeight > 0.03 * rise : rise == 0 && IsFilling)
        {
            if (stepCount - snapshotStep >= SnapshotInterval / damping.Share)
                (olderSnapshot, newerSnapshot, snapshotStep) = (newerSnapshot, TakeSnapshot(), stepCount);
            return;
        }
        loadRate *= load.PathTolerance / PreContactTolerance;
        (isBeforeContact, isSettling, olderSnapshot, newerSnapshot) = (false, true, null, null);
    }

    /// <summary>
    /// Whether to search for self-contact: often when the load advances fast compared with the element size, else less often.
    /// </summary>
    private bool IsSelfContactDue => !isBeforeGas && !isBeforeContact && stepCount % SelfContactInterval == 0
        && (stepCount % (4 * SelfContactInterval) == 0
            || loadRate * characteristicLength * SelfContactInterval > 0.2 * Math.Sqrt(area / nodes.Count));

    private Snapshot TakeSnapshot() =>
        new(nodes, new(frameHeight, gasDepth, pressure, volume, damping.Share, loadRate), contact.ContactCount);

    public void Dispose() => workers.Dispose();

    /// <summary>Whether gas is still let in.</summary>
    private bool IsFilling => pressure < maxPressure
        && (load.SweptDepth is not { } depth || (volume - startVolume) / area < depth);

    private void Step()
    {
        stepCount++;
        var updatesDamping = stepCount % MassUpdateInterval == MassUpdateInterval / 2;
        if (updatesDamping) damping.KeepForces();
        var (volumeBefore, gasDepthBefore) = (volume, gasDepth);
        AdvanceLoad();
        volume = removedVolume + ElementForces.Assemble(elements, nodes, sheet.Material, pressure, workers);
        if (!isBeforeGas) pressure = Math.Max(0, gasStiffness * (gasDepth - (volume - startVolume) / area));
        if (updatesDamping) damping.Update(gasStiffness * (gasDepth - gasDepthBefore) * (volume - volumeBefore));
        if (isBeforeGas) StopDriven();
        frictionContact?.ApplyFriction(damping.Share, SetInverseMass);
        nodes.Integrate(damping.Share);
        contact.DetectContacts();
        plug?.DetectContacts();
    }

    /// <summary>Moves the frame, then the plug; then lets gas in.</summary>
    private void AdvanceLoad()
    {
        if (isSettling) return;
        if (isBeforeGas && frameHeight > 0)
        {
            var frameBefore = frameHeight;
            frameHeight = Math.Max(0, frameHeight - loadRate * characteristicLength);
            foreach (var i in clampedNodes) (nodes.Z[i], nodes.VelocityZ[i]) = (frameHeight, frameHeight - frameBefore);
        }
        else if (isBeforeGas)
        {
            plug!.Advance(loadRate * characteristicLength);
        }
        else if (IsFilling)
        {
            gasDepth += loadRate * (characteristicLength + pressure / gasStiffness);
        }
    }

    /// <summary>Takes the displacement of frame and plug out of their velocity; after both the gas takes over.</summary>
    private void StopDriven()
    {
        foreach (var i in clampedNodes) nodes.VelocityZ[i] = 0;
        plug?.Stop();
        if (frameHeight > 0 || plug is { Remaining: > 0 }) return;
        isBeforeGas = false;
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

    private void RemoveFixedElements()
    {
        // With friction, elements on the tool can still stretch.
        if (frictionContact is not null || isBeforeGas || plug is { IsWithdrawn: false }) return;
        if (contact.ContactCount - contactsAtRemoval < nodes.Count / 50) return;
        contactsAtRemoval = contact.ContactCount;
        removedVolume += elements.RemoveFixed(contact.IsFree, nodes, selfContact.KeepFixed);
    }

    private void UpdateMasses()
    {
        FictitiousMass.Assemble(elements, nodes, sheet.Material, pressure, isBeforeGas ? 0 : gasStiffness / area);
        for (var i = 0; i < nodes.Count; i++) if (contact.IsFree[i]) SetInverseMass(i);
    }

    /// <summary>Lets a node move, in the directions that its boundary condition leaves free.</summary>
    private void SetInverseMass(int i)
    {
        var boundaryCondition = sheet.BoundaryConditions[i];
        var inverseMass = plug is not null && plug.IsChilled[i] ? 0 : 1 / nodes.MassXY[i];
        nodes.InverseMassX[i] = boundaryCondition.HasFlag(BoundaryCondition.FixedX) ? 0 : inverseMass;
        nodes.InverseMassY[i] = boundaryCondition.HasFlag(BoundaryCondition.FixedY) ? 0 : inverseMass;
        nodes.InverseMassZ[i] = 1 / nodes.MassZ[i];
    }
}
