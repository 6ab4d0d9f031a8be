using System.Collections.Immutable;

namespace BuckGen.Plugins;

/// <summary>All plug-ins of a run.</summary>
/// <param name="Plugins">The plug-ins in the order in which they were found, those left out included.</param>
public sealed record PluginSet(ImmutableArray<Plugin> Plugins)
{
    /// <summary>No plug-ins.</summary>
    public static PluginSet None { get; } = new([]);

    /// <summary>Loads plug-ins, each in a context of its own, so that they can't get at each other's libraries.</summary>
    /// <param name="files">The assemblies; a file named twice is loaded once.</param>
    /// <param name="run">How they are called; <see cref="PluginRun.Default"/> when left out.</param>
    /// <remarks>
    /// A plug-in that can't be used is listed with what is wrong with it; nothing is thrown. What the parts return is checked
    /// when they are called: a part that fails, takes too long or gives what can't be used gives nothing, and a finding names it.
    /// </remarks>
    /// <exception cref="OperationCanceledException">The run is stopped.</exception>
    public static PluginSet Load(IEnumerable<string> files, PluginRun? run = null)
    {
        ArgumentNullException.ThrowIfNull(files);
        return new([.. files.Select(Path.GetFullPath).Distinct(StringComparer.Ordinal)
            .Select(f => PluginLoading.Load(f, run ?? PluginRun.Default))]);
    }

    /// <summary>
    /// The plug-ins in a folder, in the order of their names: every assembly NAME.dll in it, and NAME/NAME.dll below it, where a
    /// plug-in's own libraries can lie beside it.
    /// </summary>
    /// <param name="folder">The folder; one that does not exist holds none.</param>
    /// <exception cref="IOException">The folder can't be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be read.</exception>
    public static ImmutableArray<string> Find(string folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        if (!Directory.Exists(folder)) return [];
        var below = Directory.GetDirectories(folder).Select(d => Path.Combine(d, Path.GetFileName(d) + ".dll"))
            .Where(File.Exists);
        return [.. Directory.GetFiles(folder, "*.dll").Where(f => !PluginContext.IsShared(Path.GetFileNameWithoutExtension(f)))
            .Concat(below).Order(StringComparer.Ordinal)];
    }

    /// <summary>Extensions with those of the plug-ins added.</summary>
    /// <param name="onto">What to add to.</param>
    public Extensions AddTo(Extensions onto)
    {
        ArgumentNullException.ThrowIfNull(onto);
        return Plugins.SelectMany(p => p.Extensions).Aggregate(onto, (all, part) => all.With(part));
    }
}
