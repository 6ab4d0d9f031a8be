using BuckGen.Intake.Catalogs;
using BuckGen.Physics.Air;
using BuckGen.Settings;

namespace BuckGen.Design.Venting;

/// <summary>The settings of the vents and of the vacuum.</summary>
internal static class VentSettings
{
    public static readonly TextSetting
        Pattern = new("pattern", "\"walls\"",
            "walls: along every wall; grid; given: only the points below; or the name of a plug-in's pattern")
        {
            Option = "--vents",
        },
        Points = new("points", "[[\"10mm\", \"20mm\"]]", "further vents"),
        KeepOut = new("keep-out", "[[\"0mm\", \"0mm\", \"30mm\", \"20mm\"]]", "no vents in these rectangles");

    public static readonly NumberSetting
        Spacing = new("spacing", "spacing of vents", 25, 5, 500, "farthest two vents lie apart along a wall")
        {
            Option = "--vent-spacing",
            Source = Setting.Practice,
        },
        GridPitch = new("grid-pitch", "pitch of the vent grid", 50, 5, 500,
            "distance in the pattern grid")
        { Source = Setting.Practice },
        WallDistance =
            new("wall-distance", "distance of vents from the wall", 0.5, 0, 20, "from the foot of the wall to the hole")
            {
                Source = Setting.Practice,
            },
        Diameter = new("diameter", "diameter of vents", null, 0.2, 10, "diameter of the vents instead of the calculated one")
        {
            Example = 0.8,
            Option = "--vent-diameter",
        },
        MinDrill = new("min-drill", "narrowest drill", 0.8, 0.2, 10,
            "narrowest hole that is drilled by hand; below it a finding offers other ways")
        {
            Source = Setting.Practice,
        },
        Bore = new("bore", "diameter of relief bores", 5, 1, 30, "diameter of the relief bores below the surface")
        {
            Option = "--bore",
            Source = Setting.Practice,
        },
        FaceThickness =
            new("face-thickness", "thickness left over a relief bore", 3, 0.5, 50, "wood left over a bore drilled from below")
            {
                Source = Setting.Practice,
            },
        Land = new("land", "land round bores", 2, 0.5, 50, "minimum wood round bores") { Source = Setting.Practice };

    public static readonly ChoiceSetting<Drills> Drills = new("drills", Intake.Catalogs.Drills.Metric,
        "the drills you buy: by mm, or by number (#80 to #1); vents are rounded down to one of them")
    { Option = "--drills" };

    private static readonly AirFlowSpec Air = new();

    public static readonly NumberSetting
        Vacuum = new("vacuum", "vacuum", Air.AmbientPressure - Air.ReservoirPressure, 0, Air.AmbientPressure,
            "pressure below the outside air; kPa, mbar, inHg, mmHg or psi")
        {
            Kind = QuantityKind.Pressure,
            Source = "minimum that a copolyester maker asks for (Eastman, thermoforming FAQ)",
        },
        Pump = new("pump-litres-per-second", "flow of the pump", null, 0.001, 1000, "if omitted: no pump")
        {
            Kind = QuantityKind.Number,
            Unit = "L/s",
            Example = 2,
        },
        Tank = new("tank-litres", "volume of the tank", null, 0.01, 100_000,
            "if omitted: so large that its pressure stays constant")
        {
            Kind = QuantityKind.Number,
            Unit = "L",
            Example = 40,
        },
        Seconds = new("seconds", "time for the air to leave", Air.WantedTime, 0.01, 60, "time in which the air should be out")
        {
            Kind = QuantityKind.Number,
            Unit = "s",
            Source = Setting.Practice,
        };

    public static readonly SettingTable
        Table = new("vents",
            "Vents, where the sheet would trap air (they need [base] and [sheet]); holes are no wider than the formed sheet "
            + "is thick",
            [Pattern, Spacing, GridPitch, WallDistance, Diameter, Drills, MinDrill, Bore, FaceThickness, Land, Points, KeepOut]),
        VacuumTable = new("vacuum", "The former's vacuum, to check that the air leaves in time", [Vacuum, Pump, Tank, Seconds]);
}
