using System.Reflection;
using BuckGen.Catalogs;
using BuckGen.Designs;

namespace BuckGen.Plugins;

/// <summary>Loads one plug-in: reads its assembly, looks whether it fits this library, makes its extensions.</summary>
internal static class PluginLoading
{
    private static readonly AssemblyName Library = typeof(BuckDesign).Assembly.GetName();

    /// <summary>Loads a plug-in, and says what is wrong with it when that fails.</summary>
    public static Plugin Load(string file, TimeSpan patience)
    {
        var plugin = new Plugin(Path.GetFileNameWithoutExtension(file), file, "", [], null);
        if (!File.Exists(file)) return plugin with { Problem = "the file does not exist" };
        Plugin? loaded = null;
        // A thread of its own, so that a plug-in that never comes back can be left behind.
        var work = new Thread(() => loaded = LoadNow(plugin)) { IsBackground = true, Name = $"plug-in {plugin.Name}" };
        work.Start();
        return work.Join(patience) && loaded is not null
            ? loaded
            : plugin with { Problem = FormattableString.Invariant($"it did not start within {patience.TotalSeconds:0.#} s") };
    }

    private static Plugin LoadNow(Plugin plugin)
    {
        try
        {
            var assembly = new PluginContext(plugin.Path).LoadFromAssemblyPath(plugin.Path);
            plugin = plugin with { Version = assembly.GetName().Version?.ToString(3) ?? "" };
            return OtherVersion(assembly) is { } problem ? plugin with { Problem = problem } : WithParts(plugin, assembly);
        }
        catch (Exception failure)
        {
            return plugin with { Problem = Told(failure) };
        }
    }

    /// <summary>Why it does not fit this version of the library; null when it does. Below 1.0 the second number tells them apart.</summary>
    private static string? OtherVersion(Assembly assembly)
    {
        var against = Array.Find(assembly.GetReferencedAssemblies(), a => a.Name == Library.Name);
        if (against is null) return "it is no plug-in: it does not use BuckGen";
        var (built, ours) = (against.Version!, Library.Version!);
        return built.Major == ours.Major && (ours.Major > 0 || built.Minor == ours.Minor) && built <= ours
            ? null
            : $"it was built against BuckGen {built.ToString(3)}, and this is {ours.ToString(3)}; ask its author for one that fits";
    }

    private static Plugin WithParts(Plugin plugin, Assembly assembly)
    {
        var (extensions, parts, problems) = (new List<object>(), new List<PluginPart>(), new List<string>());
        foreach (var type in assembly.GetExportedTypes().Where(t => t is { IsClass: true, IsAbstract: false }).OrderBy(t => t.FullName, StringComparer.Ordinal))
        {
            var kinds = PartKind.Of(type);
            if (kinds.IsEmpty) continue;
            try
            {
                var extension = Made(type);
                PluginPart[] named = [.. kinds.Select(k => new PluginPart(k.Word, Named(k, extension)))];
                // What a catalog brings is looked at now, since a catalog is no catalog while it can't be read.
                if (extension is ICatalogSource catalog) _ = catalog.AddTo(Catalog.BuiltIn);
                extensions.Add(extension);
                parts.AddRange(named);
            }
            catch (Exception failure)
            {
                problems.Add($"{type.Name}: {Told(failure)}");
            }
        }

        if (extensions.Count == 0 && problems.Count == 0) problems.Add("it brings nothing: no public class has one of the interfaces that extend BuckGen");
        return plugin with { Extensions = [.. extensions], Parts = [.. parts], Problem = problems.Count == 0 ? null : string.Join("; ", problems) };
    }

    private static object Made(Type type) => type.GetConstructor(Type.EmptyTypes) is { } make
        ? make.Invoke(null)
        : throw new InvalidOperationException("it has no public constructor without parameters");

    private static string Named(PartKind kind, object extension) =>
        kind.NameOf(extension) is { Length: > 0 } name ? name : throw new InvalidOperationException($"the {kind.Word} has no name");

    private static string Told(Exception failure) => (failure is TargetInvocationException { InnerException: { } inner } ? inner : failure) switch
    {
        BadImageFormatException => "it is no .NET assembly for this machine",
        ReflectionTypeLoadException { LoaderExceptions: [{ } first, ..] } => first.Message.ReplaceLineEndings(" "),
        var other => other.Message.ReplaceLineEndings(" "),
    };
}
