using System.Globalization;

namespace BuckGen.Design.Prediction;

/// <summary>Inputs of the prediction in words.</summary>
internal static class InputText
{
    public static string Name(VariedInput input) => input switch
    {
        VariedInput.HotStiffness => "stiffness of the hot sheet",
        VariedInput.Vacuum => "vacuum reached",
        VariedInput.Gauge => "gauge as delivered",
        VariedInput.Stiffening => "stiffening as it is drawn",
        VariedInput.Sag => "sag before forming",
        VariedInput.EdgeStiffness => "colder edge: stiffness at the frame over that in the middle",
        VariedInput.Friction => "friction on the buck",
        _ => throw new ArgumentOutOfRangeException(nameof(input)),
    };

    public static string Value(VariedInput input, double? value) => (input, value) switch
    {
        (_, null) => "sticks",
        (VariedInput.HotStiffness, { } v) => Text($"{v:0.##} MPa"),
        (VariedInput.Vacuum, { } v) => Text($"{v / 1000:0} kPa"),
        (VariedInput.Gauge or VariedInput.Sag, { } v) => Text($"{v:0.##} mm"),
        (_, { } v) => Text($"{v:0.##}"),
    };

    /// <summary>
    /// The change of the thinnest wall, or why it is not known. The walls themselves are those of a coarse net and have no range.
    /// </summary>
    public static string Effect(InputEffect effect) =>
        effect.Change is { } change ? Text($"{change * 100:+0;-0;0} %") : "not known: a simulation did not converge";

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
