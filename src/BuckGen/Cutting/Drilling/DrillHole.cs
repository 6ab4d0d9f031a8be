using BuckGen.Geometry;

namespace BuckGen.Cutting.Drilling;

/// <summary>A hole to be drilled straight down from the top face of a layer.</summary>
/// <param name="Centre">Its centre, mm.</param>
/// <param name="Diameter">Diameter of the bit, mm: 0.001 to 100.</param>
/// <param name="Depth">How far below the top face the tip goes, mm: 0.001 to 1000.</param>
/// <param name="Layer">Number of the layer that is drilled, 1 = lowest.</param>
/// <param name="Reason">What it is for, in plain words.</param>
internal sealed record DrillHole(Vec2 Centre, double Diameter, double Depth, int Layer, string Reason)
{
    /// <summary>The drill's name: "1.0 mm" or "#60".</summary>
    public string Drill { get; init; } = FormattableString.Invariant($"{Diameter:0.0##} mm");

    private const double MaxCoordinate = 100_000;
    private const double MaxDiameter = 100;
    private const double MaxDepth = 1000;

    /// <summary>Checks every number against its range.</summary>
    /// <exception cref="DrillException">A number is out of range; the message names the hole.</exception>
    internal void Validate()
    {
        Require(Math.Abs(Centre.X) <= MaxCoordinate && Math.Abs(Centre.Y) <= MaxCoordinate,
            $"its centre must lie within {MaxCoordinate} mm of the origin in x and y");
        Require(Diameter is >= DrillText.Step and <= MaxDiameter,
            $"its diameter is {Diameter} mm; it must be from {DrillText.Step} to {MaxDiameter} mm");
        Require(Depth is >= DrillText.Step and <= MaxDepth,
            $"its depth is {Depth} mm; it must be from {DrillText.Step} to {MaxDepth} mm");
        Require(Layer >= 1, $"its layer is {Layer}; layers count from 1");
    }

    private void Require(bool holds, FormattableString problem)
    {
        if (!holds) throw new DrillException(FormattableString.Invariant($"Hole at {Centre} in layer {Layer}: {problem}."));
    }
}
