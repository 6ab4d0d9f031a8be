namespace BuckGen.References.Tests.Layers;

/// <summary>How far one written layer is from what it should be; for a female buck the cavity is compared.</summary>
/// <param name="File">The outline.</param>
/// <param name="ReadBy">Who read the outline for the comparison.</param>
/// <param name="Case">How the buck was made.</param>
/// <param name="Layer">1 for the lowest.</param>
/// <param name="ExpectedArea">Area of the independent offset, mm².</param>
/// <param name="Area">Area of the layer, mm².</param>
/// <param name="MaxDistance">Hausdorff distance of the boundaries, mm.</param>
/// <param name="DiffersAcross">True when that is too far and not only a sharp tip or notch that is a hair longer.</param>
internal sealed record LayerVerdict(
    string File, string ReadBy, LayerCase Case, int Layer, double ExpectedArea, double Area, double MaxDistance,
    bool DiffersAcross)
{
    /// <summary>
    /// By which share the area differs; what is smaller than a square millimetre counts as one, for there the chords of the
    /// arcs decide.
    /// </summary>
    public double AreaMiss => Math.Abs(Area - ExpectedArea) / Math.Max(1, Math.Max(ExpectedArea, Area));

    public override string ToString() => FormattableString.Invariant(
        $"{File} read by {ReadBy}, {Case}, layer {Layer}: area {Area:F3} of {ExpectedArea:F3} mm2 ({AreaMiss:P3}), edges ")
        + FormattableString.Invariant($"{MaxDistance:F4} mm apart");
}
