using System.Collections.Immutable;
using BuckGen.Cutting.Boards;
using BuckGen.Cutting.Costs;
using BuckGen.Cutting.Drilling;
using BuckGen.Cutting.Seams;
using BuckGen.Design.Bucks;
using BuckGen.Design.Checks;
using BuckGen.Design.Forming;
using BuckGen.Design.Grouping;
using BuckGen.Design.Parts;
using BuckGen.Design.Prediction;
using BuckGen.Design.Specs;
using BuckGen.Design.Trimming;
using BuckGen.Design.Venting;
using BuckGen.Intake.Outlines;
using BuckGen.Output.Files;
using BuckGen.Plugins;
using BuckGen.Settings;

namespace BuckGen.Jobs;

/// <summary>All settings of a job file, in the order of the template.</summary>
internal static class JobSettings
{
    public static readonly TextSetting
        Title = new("title", "\"My first buck\"", "what the job is called") { IsSet = true },
        Catalog = new("catalog", "\"my-catalog.toml\"",
            "boards and plastics of your own, beside this file; 'buckgen catalog --help' shows how")
        {
            Option = "--catalog",
        };

    /// <summary>The keys above the first table.</summary>
    public static readonly SettingTable Root =
        new("", "", [Title, PluginSettings.Files, PluginSettings.Isolate, PluginSettings.Seconds, Catalog]) { IsSet = true };

    public static readonly ImmutableArray<SettingTable> Tables =
    [
        Root, OutlineSettings.Table, BuckSettings.Table, SideSettings.Table, PartSettings.Table, LidSettings.Table,
        StockSettings.Table, StockSettings.FromCatalog, BaseSettings.Table,
        VentSettings.Table,
        VentSettings.VacuumTable, PlenumSettings.Table, DrillSettings.Table, SheetSettings.Table, FormerSettings.Table,
        FormingSettings.Table,
        JigSettings.Table, FlangeSettings.Table, PanelSettings.Table, GroupSettings.Table,
        CheckSettings.Table, DowelSettings.Table,
        CuttingSettings.Table, SeamSettings.Table,
        RateSettings.Table, OutputSettings.Table,
    ];
}
