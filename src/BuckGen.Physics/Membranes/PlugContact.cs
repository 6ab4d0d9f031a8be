using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>The moving plug and the nodes that it carries.</summary>
internal sealed class PlugContact
{
    private readonly ITool shape;
    private readonly MembraneNodes nodes;
    private readonly ToolContact contact;
    private readonly double tolerance;
    private readonly bool[] isCarried, isChilled;
    private readonly double[] minGap;
    private double lastAdvance;

    /// <param name="plug">The plug.</param>
    /// <param name="nodes">The nodes.</param>
    /// <param name="contact">The contact with the tool: a carried node takes no part in it.</param>
    /// <param name="tolerance">Distance from the surface at which a node counts as in contact, mm.</param>
    public PlugContact(Plug plug, MembraneNodes nodes, ToolContact contact, double tolerance)
    {
        (shape, this.nodes, this.contact, this.tolerance) = (plug.Shape, nodes, contact, tolerance);
        Remaining = plug.Stroke;
        (isCarried, isChilled, minGap) = (new bool[nodes.Count], new bool[nodes.Count], new double[nodes.Count]);
    }

    /// <summary>How far the plug is above its lowest position, mm.</summary>
    public double Remaining { get; private set; }

    /// <summary>Whether it has been withdrawn.</summary>
    public bool IsWithdrawn { get; private set; }

    /// <summary>
    /// Whether each node lay under the plug when it was withdrawn: it has chilled and moves straight down only.
    /// </summary>
    public ReadOnlySpan<bool> IsChilled => isChilled;

    /// <summary>Moves the plug down, with the nodes that it carries.</summary>
    public void Advance(double distance)
    {
        lastAdvance = Math.Min(distance, Remaining);
        Remaining -= lastAdvance;
        for (var i = 0; i < nodes.Count; i++)
        {
            minGap[i] -= lastAdvance;
            if (isCarried[i]) (nodes.Z[i], nodes.VelocityZ[i]) = (nodes.Z[i] - lastAdvance, -lastAdvance);
        }
    }

    /// <summary>Takes the displacement of the plug out of the velocity of the nodes that it carries.</summary>
    public void Stop()
    {
        for (var i = 0; i < nodes.Count; i++) if (isCarried[i]) nodes.VelocityZ[i] = 0;
    }

    /// <summary>Takes up the free nodes that the last step brought to the plug.</summary>
    public void DetectContacts()
    {
        if (IsWithdrawn) return;
        for (var i = 0; i < nodes.Count; i++)
        {
            if (!contact.IsFree[i]) continue;
            var step = new Vec3(nodes.VelocityX[i], nodes.VelocityY[i], nodes.VelocityZ[i]);
            minGap[i] -= step.Length;
            if (minGap[i] > 0) continue;
            var end = nodes.Position(i);
            var gap = GapAt(end);
            if (gap > tolerance)
            {
                minGap[i] = gap - tolerance;
                continue;
            }

            if (gap < -tolerance)
                (nodes.X[i], nodes.Y[i], nodes.Z[i]) =
                    ContactPath.Meet(GapAt, end, step + new Vec3(0, 0, lastAdvance), tolerance);
            contact.Fix(i);
            isCarried[i] = true;
        }

        lastAdvance = 0;
    }

    /// <summary>Withdraws the plug.</summary>
    /// <param name="onRelease">Called for a node that is released; gives it its inverse mass again.</param>
    public void Withdraw(Action<int> onRelease)
    {
        if (IsWithdrawn) return;
        IsWithdrawn = true;
        for (var i = 0; i < nodes.Count; i++)
        {
            if (!isCarried[i]) continue;
            (isCarried[i], isChilled[i]) = (false, IsBelow(nodes.Position(i)));
            contact.Release(i);
            onRelease(i);
        }
    }

    private double GapAt(Vec3 place) => shape.SignedDistance(place - new Vec3(0, 0, Remaining));

    /// <summary>Whether a place on the surface lies on the underside of the plug, and not on its sides.</summary>
    private bool IsBelow(Vec3 place)
    {
        var down = 1e3 * tolerance;
        return GapAt(place - new Vec3(0, 0, down)) > down / 2;
    }
}
