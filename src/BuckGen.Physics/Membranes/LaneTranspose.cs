using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace BuckGen.Physics.Membranes;

/// <summary>
/// Transposes four points, with x, y, z and padding one after another, to three vectors of four coordinates, and back.
/// </summary>
internal static class LaneTranspose
{
    /// <summary>The coordinates of four points.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (Vector256<double> X, Vector256<double> Y, Vector256<double> Z) ToLanes(
        Vector256<double> a, Vector256<double> b, Vector256<double> c, Vector256<double> d)
    {
        if (!Avx.IsSupported) return (Lane(a, b, c, d, 0), Lane(a, b, c, d, 1), Lane(a, b, c, d, 2));
        var (low, lowToo) = (Avx.UnpackLow(a, b), Avx.UnpackLow(c, d));
        return (Avx.Permute2x128(low, lowToo, 0x20), Avx.Permute2x128(Avx.UnpackHigh(a, b), Avx.UnpackHigh(c, d), 0x20),
            Avx.Permute2x128(low, lowToo, 0x31));
    }

    /// <summary>Four points from their coordinates.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (Vector256<double> A, Vector256<double> B, Vector256<double> C, Vector256<double> D) ToPoints(
        Vector256<double> x, Vector256<double> y, Vector256<double> z)
    {
        if (!Avx.IsSupported) return (PointAt(x, y, z, 0), PointAt(x, y, z, 1), PointAt(x, y, z, 2), PointAt(x, y, z, 3));
        var (even, odd) = (Avx.UnpackLow(x, y), Avx.UnpackHigh(x, y));
        var (evenUp, oddUp) = (Avx.UnpackLow(z, Vector256<double>.Zero), Avx.UnpackHigh(z, Vector256<double>.Zero));
        return (Avx.Permute2x128(even, evenUp, 0x20), Avx.Permute2x128(odd, oddUp, 0x20),
            Avx.Permute2x128(even, evenUp, 0x31), Avx.Permute2x128(odd, oddUp, 0x31));
    }

    private static Vector256<double> Lane(
        Vector256<double> a, Vector256<double> b, Vector256<double> c, Vector256<double> d, int i) =>
        Vector256.Create(a[i], b[i], c[i], d[i]);

    private static Vector256<double> PointAt(Vector256<double> x, Vector256<double> y, Vector256<double> z, int i) =>
        Vector256.Create(x[i], y[i], z[i], 0);
}
