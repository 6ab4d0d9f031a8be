using System.Collections.Immutable;
using BuckGen.Cutting.Drilling;
using BuckGen.Design.Bucks;
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
        var defaults = new VentSpec();
        return new()
        {
            Pattern = table.OneOf("pattern", patterns, p => p.Name) ?? defaults.Pattern,
            Spacing = table.Length("spacing", defaults.Spacing),
            GridPitch = table.Length("grid-pitch", defaults.GridPitch),
            WallDistance = table.Length("wall-distance", defaults.WallDistance),
            Diameter = table.OptionalLength("diameter"),
            BoreDiameter = table.Length("bore", defaults.BoreDiameter),
            FaceThickness = table.Length("face-thickness", defaults.FaceThickness),
            Land = table.Length("land", defaults.Land),
            Air = air,
            Points = [.. table.LengthLists("points", 2, "[[\"10mm\", \"20mm\"]]").Select(p => new Vec2(p[0], p[1]))],
            KeepOut = [.. table.LengthLists("keep-out", 4, "[[\"0mm\", \"0mm\", \"30mm\", \"20mm\"]]")
                .Select(k => Bounds.FromCorners(new(k[0], k[1]), new(k[2], k[3])))],
        };
    }

    /// <summary>The table [vacuum].</summary>
    private static AirFlowSpec Air(JobTable table)
    {
        var defaults = new AirFlowSpec();
        return defaults with
        {
            ReservoirPressure = table.OptionalPressure("vacuum") is { } below ? defaults.AmbientPressure - below : defaults.ReservoirPressure,
            PumpDisplacement = table.OptionalNumber("pump-litres-per-second"),
            ReservoirVolume = table.OptionalNumber("tank-litres"),
            WantedTime = table.Number("seconds", defaults.WantedTime),
        };
    }

    /// <summary>The table [drilling]; null when the job has none.</summary>
    public static DrillProgramSpec? Drilling(JobTable? table)
    {
        if (table is null) return null;
        var defaults = new DrillProgramSpec();
        var spec = new DrillProgramSpec(
            table.Length("safe-height", defaults.SafeHeight), table.Length("retract-height", defaults.RetractHeight),
            table.Number("feed", defaults.Feed), table.Number("spindle", defaults.SpindleSpeed), table.OptionalLength("peck"),
            table.Flag("cycles", defaults.Cycles));
        try
        {
            spec.Validate();
        }
        catch (DrillException fault)
        {
            throw table.Fault(table.Line, fault.Message.TrimEnd('.'));
        }

        return spec;
    }

    /// <summary>The table [plenum]; null when the job has none.</summary>
    public static PlenumSpec? Plenum(JobTable? table, ImmutableArray<Stock> stock)
    {
        if (table is null) return null;
        var defaults = new PlenumSpec(stock[0]);
        return new(table.Stock("stock", stock), table.Choice("kind", defaults.Kind))
        {
            Width = table.Length("width", defaults.Width),
            PortDiameter = table.Length("port-diameter", defaults.PortDiameter),
            MaxBow = table.Length("max-bow", defaults.MaxBow),
            Port = table.Size("port") is { } port ? new Vec2(port.Width, port.Height) : null,
        };
    }
}
