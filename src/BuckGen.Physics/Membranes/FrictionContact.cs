using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>Lets the nodes on the tool slide along it where the sheet pulls harder than friction holds.</summary>
/// <remarks>
/// <para>
/// The force on a node is split by the normal of the sheet there, the mean of the triangles round it, and what lies in the sheet
/// is turned into the surface of the tool. Split by the tool's own normal, a sharp edge would hold the sheet for good: next to it
/// the chord across the edge pulls a node almost straight into the tool. By the mean of both sides a node passes on the tension
/// as a rope does over a pulley, and with friction f the tension grows by (1 + f·tan(a/2))/(1 - f·tan(a/2)) where the sheet turns
/// by the angle a: Euler's exp(f·a), but for the third power of a. Where one node turns by a right angle, a coefficient of 1 and
/// more holds it altogether.
/// </para>
/// <para>
/// Friction reduces the velocity after each step and never reverses it, so it brings to rest and cannot shake. Only the
/// pressing part of the force makes friction, and a node that is pulled off the tool leaves it: there is no glue, and in a hollow
/// corner a sheet that slides would otherwise be drawn into the corner by nothing. It may come back.
/// </para>
/// <para>
/// Next to a sharp edge of a tool that rises, the first faint pull takes nodes along before the sheet presses at all, at any
/// friction. So even at very much friction the triangles across such an edge come out up to a fifth thicker or thinner than with
/// nodes that stick, and where nodes lie just on the edge, one row more is drawn down the wall.
/// </para>
/// </remarks>
internal sealed class FrictionContact
{
    /// <summary>Steps between two looks at the normals of the sheet, which turn slowly.</summary>
    private const int NormalUpdateInterval = 4;

    private readonly ToolContact contact;
    private readonly MembraneNodes nodes;
    private readonly MembraneElements elements;
    private readonly double friction, elementSize, tolerance, minSeparationForce;
    private readonly Vec3[] sheetNormal, toolNormal;
    private readonly Func<int, BoundaryCondition> boundaryConditionOf;
    private int steps;

    /// <param name="contact">Who is on the tool.</param>
    /// <param name="nodes">The nodes.</param>
    /// <param name="elements">The triangles; none may be dropped while the sheet slides.</param>
    /// <param name="friction">Coefficient of friction.</param>
    /// <param name="boundaryConditionOf">The boundary condition of a node.</param>
    /// <param name="elementSize">Size of a triangle before forming, mm.</param>
    /// <param name="tensionScale">The sheet's own unit of tension, N/mm.</param>
    public FrictionContact(
        ToolContact contact, MembraneNodes nodes, MembraneElements elements, double friction,
        Func<int, BoundaryCondition> boundaryConditionOf, double elementSize, double tensionScale)
    {
        (this.contact, this.nodes, this.elements) = (contact, nodes, elements);
        (this.friction, this.boundaryConditionOf, this.elementSize) = (friction, boundaryConditionOf, elementSize);
        // What lies on a flat top without pressure must not be lifted off by rounding, nor by the slight waves of the first
        // steps.
        (tolerance, minSeparationForce) = (1e-7 * elementSize, 1e-3 * tensionScale * elementSize);
        (sheetNormal, toolNormal) = (new Vec3[nodes.Count], new Vec3[nodes.Count]);
    }

    /// <summary>Force that is not yet balanced by friction, summed over the nodes on the tool, N.</summary>
    public double SlipResidual { get; private set; }

    /// <summary>Force along the tool that friction holds, N.</summary>
    public double FrictionForce { get; private set; }

    /// <summary>
    /// Sets the velocities of the nodes on the tool such that the coming step of all nodes brings them to their new places.
    /// </summary>
    /// <param name="damping">Share of the velocity that a step removes.</param>
    /// <param name="onRelease">Gives a node back its freedom to move.</param>
    public void ApplyFriction(double damping, Action<int> onRelease)
    {
        if (steps++ % NormalUpdateInterval == 0) UpdateSheetNormals();
        var (velocityFactor, accelerationFactor) = ((1 - damping / 2) / (1 + damping / 2), 1 / (1 + damping / 2));
        (SlipResidual, FrictionForce) = (0, 0);
        for (var i = 0; i < nodes.Count; i++)
        {
            if (!contact.IsInContact[i])
            {
                toolNormal[i] = default;
                continue;
            }
            var position = nodes.Position(i);
            if (toolNormal[i] == default) toolNormal[i] = Normalized(Constrained(i, GapGradient(position)));
            var normal = toolNormal[i];
            var force = new Vec3(nodes.ForceX[i], nodes.ForceY[i], nodes.ForceZ[i]);
            // On a sharp edge the tool's normal is any of many, so that alone does not tell that a node is pulled off.
            if (force.Dot(normal) > minSeparationForce && force.Dot(sheetNormal[i]) > minSeparationForce)
            {
                contact.Release(i);
                onRelease(i);
                continue;
            }
            var (tangentialForce, normalForce) = SplitForce(i, force, normal);
            var frictionForce = Math.Min(tangentialForce.Length, friction * normalForce);
            (SlipResidual, FrictionForce) = (SlipResidual + tangentialForce.Length - frictionForce, FrictionForce + frictionForce);

            var velocity = new Vec3(nodes.VelocityX[i], nodes.VelocityY[i], nodes.VelocityZ[i]);
            velocity = Constrained(i, (velocity - normal * velocity.Dot(normal)) * velocityFactor + tangentialForce * (accelerationFactor / nodes.MassXY[i]));
            var speed = velocity.Length;
            var slipSpeed = speed - accelerationFactor * friction * normalForce / nodes.MassXY[i];
            var slip = slipSpeed > 0 ? SlipAlongSurface(i, position, velocity * (Math.Min(slipSpeed, elementSize / 8) / speed)) : default;
            if (slip != default) toolNormal[i] = default;
            // The coming step takes its share away.
            (nodes.VelocityX[i], nodes.VelocityY[i], nodes.VelocityZ[i]) = (slip.X / velocityFactor, slip.Y / velocityFactor, slip.Z / velocityFactor);
        }
    }

    /// <summary>The part of a force along the tool, and how hard the rest presses.</summary>
    private (Vec3 Tangential, double Normal) SplitForce(int i, Vec3 force, Vec3 normal)
    {
        var sheet = sheetNormal[i];
        // Just below a sharp edge the sheet may still lie at right angles to the wall; turned farther away than that, it is
        // folded.
        if (sheet.Dot(normal) < -0.5) sheet = normal;
        var normalComponent = force.Dot(sheet);
        var inSheet = force - sheet * normalComponent;
        return (Constrained(i, inSheet - (sheet + normal) * (inSheet.Dot(normal) / (1 + sheet.Dot(normal)))), Math.Max(0, -normalComponent));
    }

    /// <summary>The way along the surface nearest to a straight one; none where it would leave the surface or jump.</summary>
    private Vec3 SlipAlongSurface(int i, Vec3 position, Vec3 displacement)
    {
        var projected = position + displacement;
        for (var iteration = 0; iteration < 12; iteration++)
        {
            var gap = contact.GapAt(projected);
            if (Math.Abs(gap) <= tolerance) return (projected - position).Length <= 2 * displacement.Length ? projected - position : default;
            var gradient = Constrained(i, GapGradient(projected));
            var gradientSquared = gradient.Dot(gradient);
            if (!(gradientSquared > 1e-6)) break;
            projected -= gradient * (gap / gradientSquared);
        }
        return default;
    }

    private Vec3 GapGradient(Vec3 position)
    {
        var h = 1e-4 * elementSize;
        var (x, y, z) = (new Vec3(h, 0, 0), new Vec3(0, h, 0), new Vec3(0, 0, h));
        return new Vec3(
            contact.GapAt(position + x) - contact.GapAt(position - x), contact.GapAt(position + y) - contact.GapAt(position - y),
            contact.GapAt(position + z) - contact.GapAt(position - z)) * (0.5 / h);
    }

    /// <summary>What is left of a direction in the planes of symmetry that a node lies in.</summary>
    private Vec3 Constrained(int i, Vec3 v) => new(boundaryConditionOf(i).HasFlag(BoundaryCondition.FixedX) ? 0 : v.X, boundaryConditionOf(i).HasFlag(BoundaryCondition.FixedY) ? 0 : v.Y, v.Z);

    /// <summary>Each triangle counts as one, whatever its size, so that neither side of an edge outweighs the other.</summary>
    private void UpdateSheetNormals()
    {
        Array.Clear(sheetNormal);
        for (var e = 0; e < elements.Count; e++)
        {
            var (a, b, c) = (elements.A[e], elements.B[e], elements.C[e]);
            var normal = Normalized(nodes.DoubleAreaVector(a, b, c));
            (sheetNormal[a], sheetNormal[b], sheetNormal[c]) = (sheetNormal[a] + normal, sheetNormal[b] + normal, sheetNormal[c] + normal);
        }
        for (var i = 0; i < nodes.Count; i++) sheetNormal[i] = Normalized(Constrained(i, sheetNormal[i]));
    }

    private static Vec3 Normalized(Vec3 v) => v == default ? v : v * (1 / v.Length);
}
