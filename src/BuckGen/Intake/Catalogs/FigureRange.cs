using System.Text.Json.Serialization;

namespace BuckGen.Intake.Catalogs;

/// <summary>A number, or the minimum and the maximum where makers, grades or sources differ.</summary>
/// <param name="Low">The minimum.</param>
/// <param name="High">The maximum; the same for a plain number.</param>
public readonly record struct FigureRange(double Low, double High)
{
    /// <summary>Half-way between.</summary>
    [JsonIgnore]
    public double Middle => (Low + High) / 2;
}
