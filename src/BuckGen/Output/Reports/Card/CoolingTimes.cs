using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Intake.Catalogs;
using BuckGen.Physics.Heat;

namespace BuckGen.Output.Reports.Card;

/// <summary>
/// How long a part cools on the buck before it can be taken off: ranges, because contact, air and boards are only roughly known.
/// One end comes from the values with which heat leaves quickest, the other from those with which it leaves slowest.
/// </summary>
/// <param name="First">The first part, s.</param>
/// <param name="Later">A part of a long series, each like the one before, s; null when such parts stay too warm.</param>
/// <param name="BuckFace">Temperature of the buck's face when the sheet of such a part comes down, °C; null with them.</param>
internal sealed record CoolingTimes(FigureRange First, FigureRange? Later, FigureRange? BuckFace)
{
    /// <summary>Temperature to which the buck is warmed before the first part, °C (common practice, no source).</summary>
    public const double WarmedTo = 45;

    /// <summary>Time between taking off a part and the next sheet under the heater, s (common practice, no source).</summary>
    public const double Handling = 30;

    /// <summary>
    /// Emissivity of wood, minimum and maximum (Incropera and DeWitt, from memory); also of a plastic for which none is known.
    /// </summary>
    private static readonly FigureRange Emissivity = new(0.85, 0.95);

    /// <summary>Conductance between the formed sheet and the buck, W/(m²·K) (common practice, no source).</summary>
    private static readonly FigureRange Contact = new(100, 500);

    /// <summary>Film coefficient of still air, W/(m²·K) (Incropera and DeWitt, from memory).</summary>
    private static readonly FigureRange StillAir = new(5, 10);

    /// <summary>Thickest body that the model takes, mm: heat needs a day to get through so much wood.</summary>
    private const double MaxThickness = 200;

    /// <summary>The times; null when a figure is missing, or when the part stays too warm.</summary>
    /// <param name="design">The buck.</param>
    /// <param name="plastic">The plastic.</param>
    /// <param name="heating">How long a sheet is heated, s.</param>
    /// <param name="room">Temperature of the workshop, °C.</param>
    public static CoolingTimes? Find(BuckDesign design, CatalogPlastic plastic, double heating, double room)
    {
        if (plastic is not { SetTemperature: { } set, FormingNormal: { } normal } || normal.Middle <= set + 1
            || plastic.Heat(set, normal.Middle) is not { } material || design is not { Blank: { } blank, Layers.IsEmpty: false })
            return null;
        CoolingSeriesResult At(bool quick) => CoolingSeries.Simulate(new()
        {
            Sheet = new(blank.Gauge, material),
            Buck = new(
                new(Thickness(design, quick), BuckMaterial.Find(design).At(quick)), End(Contact, quick),
                quick ? InRoom(Emissivity, quick, room) : SheetFace.Insulated),
            Air = InRoom(plastic.Emissivity ?? Emissivity, quick, room),
            Bare = InRoom(Emissivity, quick, room),
            SheetStart = normal.Middle,
            BuckStart = WarmedTo,
            TakeOff = set,
            BareSeconds = Math.Min(heating + Handling, SheetHeating.MaxTime),
        });
        var (quick, slow) = (At(quick: true), At(quick: false));
        if ((quick.First, slow.First) is not ({ } one, { } other)) return null;
        return (quick.Later, slow.Later) is ({ } soon, { } late)
            ? new(Between(one.Seconds, other.Seconds), Between(soon.Seconds, late.Seconds),
                Between(soon.BuckBefore, late.BuckBefore))
            : new(Between(one.Seconds, other.Seconds), null, null);
    }

    /// <summary>A face from which heat goes into the air and as radiation to the walls of the workshop.</summary>
    private static SheetFace InRoom(FigureRange emissivity, bool quick, double room) => new()
    {
        FilmCoefficient = End(StillAir, quick),
        AirTemperature = room,
        Emissivity = End(emissivity, quick),
        HeaterTemperature = room,
    };

    /// <summary>
    /// Thickness of wood under the sheet, mm: the whole stack at most; under the floor of a cavity the base alone.
    /// </summary>
    private static double Thickness(BuckDesign design, bool quick)
    {
        var plate = quick || design.Spec.Kind == BuckKind.Male ? 0
            : design.Layers.Where(l => l.Role == LayerRole.Base).Sum(l => l.Thickness);
        return Math.Min(plate > 0 ? plate : design.Height, MaxThickness);
    }

    private static double End(FigureRange range, bool quick) => quick ? range.High : range.Low;

    private static FigureRange Between(double a, double b) => new(Math.Min(a, b), Math.Max(a, b));
}
