using System.Collections.Immutable;

namespace BuckGen.Intake.Catalogs;

/// <summary>Which drills a shop buys.</summary>
public enum Drills
{
    /// <summary>By millimetres.</summary>
    Metric,

    /// <summary>By number: #80 to #1, in inches.</summary>
    Number,
}

/// <summary>A drill one can buy.</summary>
/// <param name="Name">Its name: "1.0 mm" or "#60".</param>
/// <param name="Diameter">Its diameter, mm.</param>
public readonly record struct Drill(string Name, double Diameter);

/// <summary>A series of drills that are made and sold.</summary>
/// <param name="Kind">Metric or number.</param>
/// <param name="Sizes">The drills, the narrowest first.</param>
/// <param name="Source">Where the sizes come from.</param>
public sealed record DrillSeries(Drills Kind, ImmutableArray<Drill> Sizes, string Source)
{
    /// <summary>Rounding of a diameter, mm.</summary>
    private const double Rounding = 1e-6;

    private const double Inch = 25.4;

    /// <summary>Diameters of #80 to #1, ten thousandths of an inch.</summary>
    private static readonly ImmutableArray<int> Numbers =
    [
        135, 145, 160, 180, 200, 210, 225, 240, 250, 260, 280, 292, 310, 320, 330, 350, 360, 370, 380, 390, 400, 410,
        420, 430, 465, 520, 550, 595, 635, 670, 700, 730, 760, 785, 810, 820, 860, 890, 935, 960, 980, 995, 1015, 1040,
        1065, 1100, 1110, 1130, 1160, 1200, 1285, 1360, 1405, 1440, 1470, 1495, 1520, 1540, 1570, 1590, 1610, 1660,
        1695, 1730, 1770, 1800, 1820, 1850, 1890, 1910, 1935, 1960, 1990, 2010, 2040, 2055, 2090, 2130, 2210, 2280,
    ];

    /// <summary>0.2 to 3 mm in steps of 0.05 mm.</summary>
    public static DrillSeries Metric { get; } = new(Drills.Metric,
        [.. Enumerable.Range(4, 57).Select(n => new Drill(FormattableString.Invariant($"{n / 20.0:0.0#} mm"), n / 20.0))],
        "BS 328, sizes of 0.1 and 0.05 mm steps, as an encyclopedia quotes them; ISO 235 and DIN 338 have them too "
            + "(from memory)");

    /// <summary>#80 to #1, 0.34 to 5.79 mm.</summary>
    public static DrillSeries Number { get; } = new(Drills.Number,
        [.. Numbers.Select((size, i) => new Drill(FormattableString.Invariant($"#{80 - i}"), size * Inch / 10_000))],
        "ANSI/ASME B94.11M: #80 to #54 as a public table of drill sizes gives them, the others from memory");

    /// <summary>A series by its word.</summary>
    public static DrillSeries Of(Drills kind) => kind == Drills.Metric ? Metric : Number;

    /// <summary>The widest drill that keeps a limit; the narrowest allowed one when none does.</summary>
    /// <param name="limit">Maximum diameter, mm.</param>
    /// <param name="narrowest">Narrower drills than this are left out, mm.</param>
    public Drill WidestWithin(double limit, double narrowest)
    {
        var drills = Sizes.Where(d => d.Diameter >= narrowest - Rounding).ToArray();
        return Array.FindLast(drills, d => d.Diameter <= limit + Rounding) is { Diameter: > 0 } widest ? widest : drills[0];
    }

    /// <summary>The name of the drill of this diameter; the diameter in mm when the series has none.</summary>
    /// <param name="diameter">The diameter, mm.</param>
    public string NameOf(double diameter)
    {
        foreach (var drill in Sizes)
            if (Math.Abs(drill.Diameter - diameter) <= Rounding) return drill.Name;
        return FormattableString.Invariant($"{diameter:0.0##} mm");
    }

    /// <summary>The name with the diameter beside it where the name does not tell it: "#60 (1.016 mm)".</summary>
    /// <param name="diameter">The diameter, mm.</param>
    public string Describe(double diameter) => NameOf(diameter) is var name && name[0] == '#'
        ? FormattableString.Invariant($"{name} ({diameter:0.0#} mm)")
        : name;
}
