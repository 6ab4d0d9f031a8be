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
internal sealed class SlidingContact
{
    /// <summary>Steps between two looks at the normals of the sheet, which turn slowly.</summary>
    private const int Pause = 4;

    private readonly ToolContact contact;
    private readonly MembraneNodes nodes;
    private readonly MembraneElements elements;
    private readonly double friction, cell, exact, least;
    private readonly Vec3[] sheetNormal, toolNormal;
    private readonly Func<int, NodeHold> hold;
    private int steps;

    /// <param name="contact">Who is on the tool.</param>
    /// <param name="nodes">The nodes.</param>
    /// <param name="elements">The triangles; none may be dropped while the sheet slides.</param>
    /// <param name="friction">Coefficient of friction.</param>
    /// <param name="hold">What each node may not do.</param>
    /// <param name="cell">Size of a triangle before forming, mm.</param>
    /// <param name="tension">The sheet's own unit of tension, N/mm.</param>
    public SlidingContact(
        ToolContact contact, MembraneNodes nodes, MembraneElements elements, double friction, Func<int, NodeHold> hold, double cell, double tension)
    {
        (this.contact, this.nodes, this.elements, this.friction, this.hold, this.cell) = (contact, nodes, elements, friction, hold, cell);
        // What lies on a flat top without pressure must not be lifted off by rounding, nor by the slight waves of the first
        // steps.
        (exact, least) = (1e-7 * cell, 1e-3 * tension * cell);
        (sheetNormal, toolNormal) = (new Vec3[nodes.Count], new Vec3[nodes.Count]);
    }

    /// <summary>Force that is not yet balanced by friction, summed over the nodes on the tool, N.</summary>
    public double Free { get; private set; }

    /// <summary>Force along the tool that friction holds, N.</summary>
    public double Held { get; private set; }

    /// <summary>
    /// Sets the velocities of the nodes on the tool such that the coming step of all nodes brings them to their new places.
    /// </summary>
    /// <param name="damping">Share of the velocity that a step removes.</param>
    /// <param name="release">Gives a node back its freedom to move.</param>
    public void Prepare(double damping, Action<int> release)
    {
        if (steps++ % Pause == 0) SumNormals();
        var (keep, gain) = ((1 - damping / 2) / (1 + damping / 2), 1 / (1 + damping / 2));
        (Free, Held) = (0, 0);
        for (var i = 0; i < nodes.Count; i++)
        {
            if (!contact.OnTool[i])
            {
                toolNormal[i] = default;
                continue;
            }
            var here = nodes.Place(i);
            if (toolNormal[i] == default) toolNormal[i] = Unit(Within(i, Gradient(here)));
            var normal = toolNormal[i];
            var force = new Vec3(nodes.ForceX[i], nodes.ForceY[i], nodes.ForceZ[i]);
            // On a sharp edge the tool's normal is any of many, so that alone does not tell that a node is pulled off.
            if (force.Dot(normal) > least && force.Dot(sheetNormal[i]) > least)
            {
                contact.Release(i);
                release(i);
                continue;
            }
            var (along, pressing) = Split(i, force, normal);
            var held = Math.Min(along.Length, friction * pressing);
            (Free, Held) = (Free + along.Length - held, Held + held);

            var velocity = new Vec3(nodes.VelocityX[i], nodes.VelocityY[i], nodes.VelocityZ[i]);
            velocity = Within(i, (velocity - normal * velocity.Dot(normal)) * keep + along * (gain / nodes.Mass[i]));
            var speed = velocity.Length;
            var left = speed - gain * friction * pressing / nodes.Mass[i];
            var way = left > 0 ? Way(i, here, velocity * (Math.Min(left, cell / 8) / speed)) : default;
            if (way != default) toolNormal[i] = default;
            // The coming step takes its share away.
            (nodes.VelocityX[i], nodes.VelocityY[i], nodes.VelocityZ[i]) = (way.X / keep, way.Y / keep, way.Z / keep);
        }
    }

    /// <summary>The part of a force along the tool, and how hard the rest presses.</summary>
    private (Vec3 Along, double Pressing) Split(int i, Vec3 force, Vec3 normal)
    {
        var sheet = sheetNormal[i];
        // Just below a sharp edge the sheet may still lie at right angles to the wall; turned farther away than that, it is
        // folded.
        if (sheet.Dot(normal) < -0.5) sheet = normal;
        var through = force.Dot(sheet);
        var inSheet = force - sheet * through;
        return (Within(i, inSheet - (sheet + normal) * (inSheet.Dot(normal) / (1 + sheet.Dot(normal)))), Math.Max(0, -through));
    }

    /// <summary>The way along the surface nearest to a straight one; none where it would leave the surface or jump.</summary>
    private Vec3 Way(int i, Vec3 here, Vec3 straight)
    {
        var place = here + straight;
        for (var turn = 0; turn < 12; turn++)
        {
            var distance = contact.DistanceAt(place);
            if (Math.Abs(distance) <= exact) return (place - here).Length <= 2 * straight.Length ? place - here : default;
            var gradient = Within(i, Gradient(place));
            var square = gradient.Dot(gradient);
            if (!(square > 1e-6)) break;
            place -= gradient * (distance / square);
        }
        return default;
    }

    private Vec3 Gradient(Vec3 at)
    {
        var h = 1e-4 * cell;
        var (x, y, z) = (new Vec3(h, 0, 0), new Vec3(0, h, 0), new Vec3(0, 0, h));
        return new Vec3(
            contact.DistanceAt(at + x) - contact.DistanceAt(at - x), contact.DistanceAt(at + y) - contact.DistanceAt(at - y),
            contact.DistanceAt(at + z) - contact.DistanceAt(at - z)) * (0.5 / h);
    }

    /// <summary>What is left of a direction in the planes of symmetry that a node lies in.</summary>
    private Vec3 Within(int i, Vec3 v) => new(hold(i).HasFlag(NodeHold.X) ? 0 : v.X, hold(i).HasFlag(NodeHold.Y) ? 0 : v.Y, v.Z);

    /// <summary>Each triangle counts as one, whatever its size, so that neither side of an edge outweighs the other.</summary>
    private void SumNormals()
    {
        Array.Clear(sheetNormal);
        for (var e = 0; e < elements.Count; e++)
        {
            var (a, b, c) = (elements.A[e], elements.B[e], elements.C[e]);
            var normal = Unit(nodes.Normal(a, b, c));
            (sheetNormal[a], sheetNormal[b], sheetNormal[c]) = (sheetNormal[a] + normal, sheetNormal[b] + normal, sheetNormal[c] + normal);
        }
        for (var i = 0; i < nodes.Count; i++) sheetNormal[i] = Unit(Within(i, sheetNormal[i]));
    }

    private static Vec3 Unit(Vec3 v) => v == default ? v : v * (1 / v.Length);
}
