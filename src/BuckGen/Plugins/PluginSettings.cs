using BuckGen.Settings;

namespace BuckGen.Plugins;

/// <summary>The settings for plug-ins.</summary>
internal static class PluginSettings
{
    public static readonly TextSetting Files = new("plugins", "[\"my-plugin.dll\"]",
        "plug-ins to load, beside this file; 'buckgen plugins' lists what is loaded");

    public static readonly FlagSetting Isolate = new("isolate-plugins", false,
        "run them in a process of their own, so that one that crashes or never ends is left out")
    {
        Example = true,
        Option = "--isolate-plugins"
    };

    public static readonly NumberSetting Seconds =
        new("plugin-seconds", "time for a call of a plug-in", PluginRun.Default.Call.TotalSeconds, 1, 3600,
        "longest a plug-in may take for one call")
        { Kind = QuantityKind.Number, Unit = "s", Option = "--plugin-seconds" };
}
