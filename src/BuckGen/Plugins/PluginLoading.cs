using System.Reflection;
using BuckGen.Design;
using BuckGen.Findings;

namespace BuckGen.Plugins;

/// <summary>Loads one plug-in: reads its assembly, looks whether it fits this library, makes its extensions.</summary>
internal static class PluginLoading
{
    private static readonly AssemblyName Library = typeof(BuckDesign).Assembly.GetName();

    /// <summary>Loads a plug-in, and says what is wrong with it when that fails.</summary>
    public static Plugin Load(string file, PluginRun run)
    {
        var plugin = new Plugin(Path.GetFileNameWithoutExtension(file), file, "", [], null);
        if (!File.Exists(file)) return plugin with { Problem = "the file does not exist" };
        try
        {
            return new PluginGuard(file, "", run).Call(() => LoadNow(plugin, part => new(file, part, run)));
        }
        catch (PluginException failure)
        {
            return plugin with { Problem = failure.Message };
        }
    }

    private static Plugin LoadNow(Plugin plugin, Func<string, PluginGuard> guardOf)
    {
        try
        {
            var assembly = new PluginContext(plugin.Path).LoadFromAssemblyPath(plugin.Path);
            plugin = plugin with { Version = assembly.GetName().Version?.ToString(3) ?? "" };
            return OtherVersion(assembly) is { } problem ? plugin with { Problem = problem }
                : WithParts(plugin, assembly, guardOf);
        }
        catch (Exception failure)
        {
            return plugin with { Problem = Describe(failure) };
        }
    }

    /// <summary>
    /// Why it does not fit this version of the library; null when it does. Below 1.0 the second number distinguishes versions.
    /// </summary>
    private static string? OtherVersion(Assembly assembly)
    {
        var against = Array.Find(assembly.GetReferencedAssemblies(), a => a.Name == Library.Name);
        if (against is null) return "it is not a plug-in: it does not use BuckGen";
        var (built, ours) = (against.Version!, Library.Version!);
        return built.Major == ours.Major && (ours.Major > 0 || built.Minor == ours.Minor) && built <= ours
            ? null
            : $"it was built against BuckGen {built.ToString(3)}, and this is {ours.ToString(3)}; ask its author for one "
                + "that fits";
    }

    private static Plugin WithParts(Plugin plugin, Assembly assembly, Func<string, PluginGuard> guardOf)
    {
        var (parts, problems) = (new List<GuardedPart>(), new List<string>());
        foreach (var type in assembly.GetExportedTypes().Where(t => t is { IsClass: true, IsAbstract: false })
            .OrderBy(t => t.FullName, StringComparer.Ordinal))
        {
            if (PartKind.ForType(type).IsEmpty) continue;
            try
            {
                parts.AddRange(GuardedPart.AllOf(Made(type), guardOf));
            }
            catch (Exception failure)
            {
                problems.Add($"{type.Name}: {Describe(failure)}");
            }
        }

        if (parts.Count == 0 && problems.Count == 0)
            problems.Add("it provides nothing: no public class implements one of the interfaces that extend BuckGen");
        return plugin with
        {
            Extensions = [.. parts],
            Parts = [.. parts.SelectMany(p => PartKind.ForType(p.GetType()).Select(k => new PluginPart(k.Word, p.Name)))],
            Problem = problems.Count == 0 ? null : string.Join("; ", problems),
        };
    }

    private static object Made(Type type) => type.GetConstructor(Type.EmptyTypes) is { } make
        ? make.Invoke(null)
        : throw new InvalidOperationException("it has no public constructor without parameters");

    private static string Describe(Exception failure) =>
        (failure is TargetInvocationException { InnerException: { } inner } ? inner : failure) switch
        {
            BadImageFormatException => "it is not a .NET assembly for this machine",
            ReflectionTypeLoadException { LoaderExceptions: [{ } first, ..] } => ForeignCode.Reason(first),
            var other => ForeignCode.Reason(other),
        };
}
