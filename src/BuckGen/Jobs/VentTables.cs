using System.Collections.Immutable;
using BuckGen.Cutting.Drilling;
using BuckGen.Design.Venting;
using BuckGen.Geometry;
using BuckGen.Physics.Air;

namespace BuckGen.Jobs;

/// <summary>Reads the tables of a job file about vents, vacuum and drilling.</summary>
internal static class VentTables
{
    /// <summary>The table [vents]; null when the job has none.</summary>
    public static VentSpec? Vents(JobTable? table, JobTable vacuum, ImmutableArray<IVentPattern> patterns)
    {
        var air = Air(vacuum);
        if (table is null) return null;
        return new()
        {
            Pattern = table.OneOf(VentSettings.Pattern, patterns, p => p.Name) ?? new VentSpec().Pattern,
            Spacing = table.Number(VentSettings.Spacing),
            GridPitch = table.Number(VentSettings.GridPitch),
            WallDistance = table.Number(VentSettings.WallDistance),
            Diameter = table.Optional(VentSettings.Diameter),
            Drills = table.Choice(VentSettings.Drills),
            MinDrill = table.Number(VentSettings.MinDrill),
            BoreDiameter = table.Number(VentSettings.Bore),
            FaceThickness = table.Number(VentSettings.FaceThickness),
            Land = table.Number(VentSettings.Land),
            Air = air,
            Points = [.. table.Rows(VentSettings.Points, 2).Select(p => new Vec2(p[0], p[1]))],
            KeepOut = [.. table.Rows(VentSettings.KeepOut, 4).Select(k => Bounds.FromCorners(new(k[0], k[1]), new(k[2], k[3])))],
        };
    }

    /// <summary>The table [vacuum].</summary>
    private static AirFlowSpec Air(JobTable table)
    {
        var usual = new AirFlowSpec();
        return usual with
        {
            ReservoirPressure = table.Optional(VentSettings.Vacuum) is { } below ? usual.AmbientPressure - below
                : usual.ReservoirPressure,
            PumpDisplacement = table.Optional(VentSettings.Pump),
            ReservoirVolume = table.Optional(VentSettings.Tank),
            WantedTime = table.Number(VentSettings.Seconds),
        };
    }

    /// <summary>The table [drilling]; null when the job has none.</summary>
    public static DrillProgramSpec? Drilling(JobTable? table)
    {
        if (table is null) return null;
        var spec = new DrillProgramSpec(
            table.Number(DrillSettings.SafeHeight), table.Number(DrillSettings.RetractHeight), table.Number(DrillSettings.Feed),
            table.Number(DrillSettings.Spindle), table.Optional(DrillSettings.Peck), table.Flag(DrillSettings.Cycles));
        table.Check(DrillSettings.RetractHeight, spec.Validate);
        return spec;
    }

    /// <summary>The table [plenum]; null when the job has none.</summary>
    public static PlenumSpec? Plenum(JobTable? table, JobBoards boards) =>
        table is null ? null : new(table.Board(PlenumSettings.Stock, boards), table.Choice(PlenumSettings.Kind))
        {
            Width = table.Number(PlenumSettings.Width),
            PortDiameter = table.Number(PlenumSettings.PortDiameter),
            MaxBow = table.Number(PlenumSettings.MaxBow),
            Port = table.Pair(PlenumSettings.Port) is [var x, var y] ? new Vec2(x, y) : null,
        };
}
