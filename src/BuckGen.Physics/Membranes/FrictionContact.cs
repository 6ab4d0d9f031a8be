using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>Coulomb friction: nodes in contact slide along the tool where the sheet pulls harder than friction holds.</summary>
/// <remarks>
/// <para>
/// The force on a node is split by the normal of the sheet there, the mean over its elements. The part in the sheet is rotated
/// into the surface of the tool. With the normal of the tool instead, a sharp edge would hold the sheet for good. Next to it the
/// chord across the edge pulls a node almost straight into the tool. With the mean of both sides a node passes on the tension as
/// a rope does over a pulley. With friction f the tension grows by (1 + f·tan(a/2))/(1 - f·tan(a/2)) where the sheet turns by the
/// angle a: Euler's exp(f·a), except for terms of third order in a. Where one node turns by a right angle, a coefficient of 1 and
/// more holds it completely.
/// </para>
/// <para>
/// Friction reduces the velocity after each step and never reverses it, so it stops the node without chatter. Only the
/// compressive part of the normal force causes friction, and a node that is pulled off the tool loses contact: there is no
/// adhesion. Otherwise a sliding sheet would be drawn into a hollow corner without any load. The node may come back into contact.
/// </para>
/// <para>
/// Next to a sharp edge of a rising tool, the first small tension moves nodes before the sheet presses at all, with any friction.
/// So even with very large friction the triangles across such an edge become up to a fifth thicker or thinner than with nodes
/// that stick. Where nodes lie exactly on the edge, one more row is drawn down the wall.
/// </para>
/// </remarks>
internal sealed class FrictionContact
{
    /// <summary>Steps between two updates of the normals of the sheet, which turn slowly.</summary>
    private const int NormalUpdateInterval = 4;

    private readonly ToolContact contact;
    private readonly MembraneNodes nodes;
    private readonly MembraneElements elements;
    private readonly double friction, elementSize, tolerance, minSeparationForce;
    private readonly Vec3[] sheetNormal, toolNormal;
    private readonly Func<int, BoundaryCondition> boundaryConditionOf;
    private int steps;

    /// <param name="contact">The state of contact of the nodes.</param>
    /// <param name="nodes">The nodes.</param>
    /// <param name="elements">The elements; none may be removed while the sheet slides.</param>
    /// <param name="friction">Coefficient of friction.</param>
    /// <param name="boundaryConditionOf">The boundary condition of a node.</param>
    /// <param name="elementSize">Size of an element before forming, mm.</param>
    /// <param name="tensionScale">Unit of tension of the sheet, shear modulus times thickness, N/mm.</param>
    public FrictionContact(
        ToolContact contact, MembraneNodes nodes, MembraneElements elements, double friction,
        Func<int, BoundaryCondition> boundaryConditionOf, double elementSize, double tensionScale)
    {
        (this.contact, this.nodes, this.elements) = (contact, nodes, elements);
        (this.friction, this.boundaryConditionOf, this.elementSize) = (friction, boundaryConditionOf, elementSize);
        // Neither rounding nor the small waves of the first steps may lift a sheet without pressure off a flat top.
        (tolerance, minSeparationForce) = (1e-7 * elementSize, 1e-3 * tensionScale * elementSize);
        (sheetNormal, toolNormal) = (new Vec3[nodes.Count], new Vec3[nodes.Count]);
    }

    /// <summary>Tangential force beyond the limit of friction, summed over the nodes in contact, N.</summary>
    public double SlipResidual { get; private set; }

    /// <summary>Tangential force that friction carries, summed over the nodes in contact, N.</summary>
    public double FrictionForce { get; private set; }

    /// <summary>
    /// Sets the velocities of the nodes in contact such that the coming step of all nodes moves them to their new positions.
    /// </summary>
    /// <param name="damping">Share of the velocity that a step removes.</param>
    /// <param name="onRelease">Called for a node that loses contact; gives it its inverse mass again.</param>
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
            // On a sharp edge the normal of the tool is not unique, so it alone does not show that a node is pulled off.
            if (force.Dot(normal) > minSeparationForce && force.Dot(sheetNormal[i]) > minSeparationForce)
            {
                contact.Release(i);
                onRelease(i);
                continue;
            }
            var (tangentialForce, normalForce) = SplitForce(i, force, normal);
            var frictionForce = Math.Min(tangentialForce.Length, friction * normalForce);
            (SlipResidual, FrictionForce) =
                (SlipResidual + tangentialForce.Length - frictionForce, FrictionForce + frictionForce);

            var velocity = new Vec3(nodes.VelocityX[i], nodes.VelocityY[i], nodes.VelocityZ[i]);
            var acceleration = tangentialForce * (accelerationFactor / nodes.MassXY[i]);
            velocity = Constrained(i, (velocity - normal * velocity.Dot(normal)) * velocityFactor + acceleration);
            var speed = velocity.Length;
            var slipSpeed = speed - accelerationFactor * friction * normalForce / nodes.MassXY[i];
            var slip = slipSpeed > 0
                ? SlipAlongSurface(i, position, velocity * (Math.Min(slipSpeed, elementSize / 8) / speed))
                : default;
            if (slip != default) toolNormal[i] = default;
            // The coming step multiplies the velocity by this factor.
            (nodes.VelocityX[i], nodes.VelocityY[i], nodes.VelocityZ[i]) =
                (slip.X / velocityFactor, slip.Y / velocityFactor, slip.Z / velocityFactor);
        }
    }

    /// <summary>The tangential force, and the compressive normal force.</summary>
    private (Vec3 Tangential, double Normal) SplitForce(int i, Vec3 force, Vec3 normal)
    {
        var sheet = sheetNormal[i];
        // Just below a sharp edge the sheet may still be normal to the wall; turned farther than that, it is folded.
        if (sheet.Dot(normal) < -0.5) sheet = normal;
        var normalComponent = force.Dot(sheet);
        var inSheet = force - sheet * normalComponent;
        return (Constrained(i, inSheet - (sheet + normal) * (inSheet.Dot(normal) / (1 + sheet.Dot(normal)))),
            Math.Max(0, -normalComponent));
    }

    /// <summary>
    /// The displacement along the surface closest to a straight one, by Newton's method; zero where it would leave the surface or
    /// jump.
    /// </summary>
    private Vec3 SlipAlongSurface(int i, Vec3 position, Vec3 displacement)
    {
        var projected = position + displacement;
        for (var iteration = 0; iteration < 12; iteration++)
        {
            var gap = contact.GapAt(projected);
            if (Math.Abs(gap) <= tolerance)
                return (projected - position).Length <= 2 * displacement.Length ? projected - position : default;
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

    /// <summary>The part of a vector in the planes of symmetry of a node.</summary>
    private Vec3 Constrained(int i, Vec3 v)
    {
        var boundaryCondition = boundaryConditionOf(i);
        return new(
            boundaryCondition.HasFlag(BoundaryCondition.FixedX) ? 0 : v.X,
            boundaryCondition.HasFlag(BoundaryCondition.FixedY) ? 0 : v.Y, v.Z);
    }

    /// <summary>
    /// Each element has the same weight, whatever its size, so that neither side of an edge outweighs the other.
    /// </summary>
    private void UpdateSheetNormals()
    {
        Array.Clear(sheetNormal);
        for (var e = 0; e < elements.Count; e++)
        {
            var (a, b, c) = (elements.A[e], elements.B[e], elements.C[e]);
            var normal = Normalized(nodes.DoubleAreaVector(a, b, c));
            (sheetNormal[a], sheetNormal[b], sheetNormal[c]) =
                (sheetNormal[a] + normal, sheetNormal[b] + normal, sheetNormal[c] + normal);
        }
        for (var i = 0; i < nodes.Count; i++) sheetNormal[i] = Normalized(Constrained(i, sheetNormal[i]));
    }

    private static Vec3 Normalized(Vec3 v) => v == default ? v : v * (1 / v.Length);
}
