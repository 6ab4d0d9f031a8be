using BuckGen.Geometry;
using BuckGen.Physics.Membranes;

namespace BuckGen.Design.Prediction;

/// <summary>The hot sheet in its frame: how it sags, and where it is colder.</summary>
internal static class SheetBefore
{
    /// <summary>Creates the sheet; flat and evenly hot unless the settings say otherwise.</summary>
    /// <param name="mesh">Mesh of the sheet inside the frame.</param>
    /// <param name="material">Material in the middle.</param>
    /// <param name="gauge">Thickness, mm.</param>
    /// <param name="opening">The frame's opening, mm.</param>
    /// <param name="forming">Sag, and stiffness at the frame.</param>
    public static ClampedSheet Create(
        TriangleMesh mesh, HyperelasticMaterial material, double gauge, Bounds opening, FormingSpec forming)
    {
        var sheet = ClampedSheet.FromMesh(mesh, material, gauge);
        if (forming.Sag > 0)
        {
            sheet = sheet with
            {
                Sag =
                [
                    .. mesh.Nodes.Zip(sheet.BoundaryConditions, (node, condition) =>
                        condition == BoundaryCondition.Clamped ? 0 : forming.Sag * ShareOfSag(node, opening)),
                ],
            };
        }

        return forming.EdgeStiffness > 1
            ? sheet with { RelativeModulus = [.. mesh.Triangles.Select(t => RelativeModulus(Middle(mesh, t), opening, forming))] }
            : sheet;
    }

    /// <summary>
    /// A parabola along both sides of the frame: the first approximation of the deflection of a membrane under an even load.
    /// </summary>
    private static double ShareOfSag(Vec2 node, Bounds opening)
    {
        var fromMiddle = node - opening.Centre;
        var (x, y) = (2 * fromMiddle.X / opening.Width, 2 * fromMiddle.Y / opening.Height);
        return Math.Max(0, (1 - x * x) * (1 - y * y));
    }

    private static double RelativeModulus(Vec2 place, Bounds opening, FormingSpec forming)
    {
        var fromFrame = Math.Min(
            Math.Min(place.X - opening.MinX, opening.MaxX - place.X), Math.Min(place.Y - opening.MinY, opening.MaxY - place.Y));
        return 1 + (forming.EdgeStiffness - 1) * Math.Clamp(1 - fromFrame / forming.EdgeWidth, 0, 1);
    }

    private static Vec2 Middle(TriangleMesh mesh, MeshTriangle t) =>
        (mesh.Nodes[t.A] + mesh.Nodes[t.B] + mesh.Nodes[t.C]) * (1.0 / 3);
}
