namespace BuckGen.Physics.Tests.Plates;

/// <summary>
/// A rectangular plate of stiffness 1 under a load of 1, solved on a grid by differences and conjugate gradients: a judge of the
/// series.
/// </summary>
internal static class FiniteDifferencePlate
{
    /// <summary>
    /// Deflection in the middle, greatest moment in the middle and at the middle of the longer edge, extrapolated from two grids.
    /// </summary>
    /// <param name="ratio">Height over width; the width is 1.</param>
    /// <param name="clamped">Edges that can't tilt, or edges that can.</param>
    public static (double Deflection, double MiddleMoment, double EdgeMoment) Solve(int ratio, bool clamped)
    {
        var (coarse, fine) = (Solve(16, ratio, clamped), Solve(32, ratio, clamped));
        // The error of the differences falls with the square of the grid.
        return ((4 * fine.W - coarse.W) / 3, (4 * fine.Middle - coarse.Middle) / 3, (4 * fine.Edge - coarse.Edge) / 3);
    }

    private static (double W, double Middle, double Edge) Solve(int columns, int ratio, bool clamped)
    {
        var (nx, ny, h) = (columns + 1, columns * ratio + 1, 1.0 / columns);
        double[,] Apply(double[,] w) => Laplacian(Laplacian(w, h, clamped ? 1 : 0), h, null);

        // Conjugate gradients for the inner points.
        var w = new double[nx, ny];
        var residual = Fill(nx, ny, (_, _) => 1);
        var (direction, size) = ((double[,])residual.Clone(), Dot(residual, residual));
        for (var round = 0; round < 20_000 && size > 1e-20; round++)
        {
            var image = Apply(direction);
            var step = size / Dot(direction, image);
            var (nextW, nextResidual) = (w, residual);
            w = Fill(nx, ny, (x, y) => nextW[x, y] + step * direction[x, y]);
            residual = Fill(nx, ny, (x, y) => nextResidual[x, y] - step * image[x, y]);
            var next = Dot(residual, residual);
            var (old, share) = (direction, next / size);
            direction = Fill(nx, ny, (x, y) => residual[x, y] + share * old[x, y]);
            size = next;
        }
        var (cx, cy) = (nx / 2, ny / 2);
        var across = (2 * w[cx, cy] - w[cx - 1, cy] - w[cx + 1, cy]) / (h * h);
        var along = (2 * w[cx, cy] - w[cx, cy - 1] - w[cx, cy + 1]) / (h * h);
        return (w[cx, cy], across + 0.3 * along, clamped ? 2 * w[1, cy] / (h * h) : 0);
    }

    /// <summary>
    /// Second differences; on the edge the point beyond mirrors the one inside (tilt nothing) or its negative (moment nothing).
    /// </summary>
    private static double[,] Laplacian(double[,] w, double h, int? mirrored)
    {
        var (nx, ny) = (w.GetLength(0), w.GetLength(1));
        var result = new double[nx, ny];
        for (var x = 0; x < nx; x++)
        {
            for (var y = 0; y < ny; y++)
            {
                var inside = x > 0 && y > 0 && x < nx - 1 && y < ny - 1;
                if (inside)
                    result[x, y] = (w[x - 1, y] + w[x + 1, y] + w[x, y - 1] + w[x, y + 1] - 4 * w[x, y]) / (h * h);
                else if (mirrored is { } mirror)
                    result[x, y] = 2 * mirror * Inner(w, x, y) / (h * h);
            }
        }
        return result;
    }

    private static double Inner(double[,] w, int x, int y) =>
        w[Math.Clamp(x, 1, w.GetLength(0) - 2), Math.Clamp(y, 1, w.GetLength(1) - 2)];

    private static double[,] Fill(int nx, int ny, Func<int, int, double> value)
    {
        var result = new double[nx, ny];
        for (var x = 1; x < nx - 1; x++)
            for (var y = 1; y < ny - 1; y++) result[x, y] = value(x, y);
        return result;
    }

    private static double Dot(double[,] a, double[,] b)
    {
        var sum = 0.0;
        for (var x = 1; x < a.GetLength(0) - 1; x++)
            for (var y = 1; y < a.GetLength(1) - 1; y++) sum += a[x, y] * b[x, y];
        return sum;
    }
}
