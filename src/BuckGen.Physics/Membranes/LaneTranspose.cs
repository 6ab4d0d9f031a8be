using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace BuckGen.Physics.Membranes;

/// <summary>
/// Four places as they lie in memory, x, y, z and a spare one after another, against their coordinates in four lanes each.
/// </summary>
internal static class LaneTranspose
{
    /// <summary>The coordinates of four places.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (Vector256<double> X, Vector256<double> Y, Vector256<double> Z) ToLanes(
        Vector256<double> a, Vector256<double> b, Vector256<double> c, Vector256<double> d)
    {
        if (!Avx.IsSupported) return (Vector256.Create(a[0], b[0], c[0], d[0]), Vector256.Create(a[1], b[1], c[1], d[1]), Vector256.Create(a[2], b[2], c[2], d[2]));
        var (low, lowToo) = (Avx.UnpackLow(a, b), Avx.UnpackLow(c, d));
        return (Avx.Permute2x128(low, lowToo, 0x20), Avx.Permute2x128(Avx.UnpackHigh(a, b), Avx.UnpackHigh(c, d), 0x20), Avx.Permute2x128(low, lowToo, 0x31));
    }

    /// <summary>Four places of such coordinates.</summary>
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

    private static Vector256<double> PointAt(Vector256<double> x, Vector256<double> y, Vector256<double> z, int i) => Vector256.Create(x[i], y[i], z[i], 0);
}
