using BuckGen.Geometry;
using BuckGen.Physics.Membranes;

namespace BuckGen.Physics.Tests.Membranes;

/// <summary>Forms sheets of radius or half side 100 mm, and reads their thickness over the thickness before.</summary>
internal static class Formed
{
    public const double Size = 100;

    private const double Modulus = 0.2, Thickness = 1.5;

    /// <summary>The sheet's own unit of pressure, μ·t0/a, Pa.</summary>
    public const double PressureUnit = Modulus * Thickness / Size * 1e6;

    /// <summary>A disc clamped at its rim.</summary>
    public static ClampedSheet Disc(int rings, double mooneyRatio = 0) =>
        ClampedSheet.FromMesh(DiscMesh.Create(Size, rings), HyperelasticMaterial.MooneyRivlin(Modulus, mooneyRatio), Thickness);

    /// <summary>Half of a strip between two planes of symmetry, one cell wide, clamped at x = 100 mm.</summary>
    public static ClampedSheet Strip(int cells) =>
        ClampedSheet.FromMesh(FrameMesh.CrissCross(new(0, 0, Size, Size / cells), Size / cells),
            HyperelasticMaterial.NeoHookean(Modulus), Thickness, [0], [0, Size / cells]);

    /// <summary>A quarter of a square clamped at x = 100 mm and y = 100 mm.</summary>
    public static ClampedSheet Quarter(int cells) =>
        ClampedSheet.FromMesh(FrameMesh.CrissCross(new(0, 0, Size, Size), Size / cells), HyperelasticMaterial.NeoHookean(Modulus),
            Thickness, [0], [0]);

    /// <summary>A whole square.</summary>
    public static ClampedSheet Square(int cells) =>
        ClampedSheet.FromMesh(FrameMesh.CrissCross(new(-Size, -Size, Size, Size), 2 * Size / cells),
            HyperelasticMaterial.NeoHookean(Modulus), Thickness);

    /// <summary>The middle of every triangle and its thickness over the thickness before.</summary>
    public static IEnumerable<(Vec3 Position, double ThicknessRatio)> ThicknessRatios(this FormedSheet formed) =>
        formed.Sheet.Mesh.Triangles.Select((t, i) => (formed.CentroidOf(t), formed.Thickness[i] / formed.Sheet.Thickness));

    /// <summary>
    /// Thickness over the thickness before at a place of a profile: a straight line through the triangles nearby. The band grows
    /// until there are enough of them on both sides.
    /// </summary>
    /// <param name="formed">The sheet.</param>
    /// <param name="counts">Which triangles belong to the profile.</param>
    /// <param name="along">Coordinate along the profile.</param>
    /// <param name="at">Where.</param>
    public static double ThicknessRatioAt(this FormedSheet formed, Func<Vec3, bool> counts, Func<Vec3, double> along, double at)
    {
        (double Way, double ThicknessRatio)[] points =
            [.. formed.ThicknessRatios().Where(p => counts(p.Position)).Select(p => (along(p.Position) - at, p.ThicknessRatio))];
        for (var band = 0.03; band < 0.3; band *= 1.2)
        {
            (double Way, double ThicknessRatio)[] near = [.. points.Where(p => Math.Abs(p.Way) <= band)];
            if (near.Length < 8) continue;
            var mean = near.Average(p => p.Way);
            var spread = near.Average(p => (p.Way - mean) * (p.Way - mean));
            if (spread < 0.1 * band * band || Math.Abs(mean) > 0.5 * band) continue;
            var level = near.Average(p => p.ThicknessRatio);
            return level - mean * near.Average(p => (p.Way - mean) * p.ThicknessRatio) / spread;
        }
        throw new InvalidOperationException($"Too few triangles at {at}.");
    }
}
