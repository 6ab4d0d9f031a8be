using System.Globalization;
using BuckGen.Design.Venting;
using BuckGen.Geometry;
using BuckGen.Plugins;

namespace Pegboard;

/// <summary>
/// Vents over the holes of a pegboard. The board lies under the base and leads the air away. So the former's table needs no
/// plenum.
/// </summary>
/// <remarks>
/// A job says <c>pattern = "pegboard"</c>. For another board it adds <c>[settings.pegboard]</c> with <c>pitch</c> and the first
/// hole's <c>x</c> and <c>y</c>, in mm.
/// </remarks>
/// <param name="pitch">From hole to hole, mm. 25.4 is common practice (no source): boards are drilled by the inch.</param>
/// <param name="first">The middle of any hole, in the coordinates of the drawing.</param>
public sealed class PegboardPattern(double pitch, Vec2 first) : IVentPattern, IWithSettings
{
    /// <summary>Holes an inch apart, one at the origin of the drawing.</summary>
    public PegboardPattern()
        : this(25.4, new(0, 0))
    {
    }

    /// <inheritdoc/>
    public string Name => "pegboard";

    /// <inheritdoc/>
    public IEnumerable<Vec2> Places(VentFloor floor, VentSpec spec)
    {
        var box = floor.Air.Outer.Bounds;
        for (var j = First(box.MinY, first.Y); first.Y + j * pitch <= box.MaxY; j++)
            for (var i = First(box.MinX, first.X); first.X + i * pitch <= box.MaxX; i++)
                yield return new(first.X + i * pitch, first.Y + j * pitch);
    }

    /// <inheritdoc/>
    public object With(IReadOnlyDictionary<string, string> settings)
    {
        if (settings.Keys.FirstOrDefault(k => k is not ("pitch" or "x" or "y")) is { } strange)
            throw new ArgumentException($"\"{strange}\" is not known; known are pitch, x and y");
        var wanted = Number(settings, "pitch", pitch);
        if (wanted is not (>= 5 and <= 200))
            throw new ArgumentException($"the pitch is {wanted} mm; it must be from 5 to 200 mm");
        return new PegboardPattern(wanted, new(Number(settings, "x", first.X), Number(settings, "y", first.Y)));
    }

    /// <summary>Number of the first hole at or after a coordinate.</summary>
    private double First(double from, double hole) => Math.Ceiling((from - hole) / pitch);

    private static double Number(IReadOnlyDictionary<string, string> settings, string key, double otherwise) =>
        !settings.TryGetValue(key, out var text) ? otherwise
        : double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number
        : throw new ArgumentException($"\"{key}\" is \"{text}\"; it must be a number of mm");
}
