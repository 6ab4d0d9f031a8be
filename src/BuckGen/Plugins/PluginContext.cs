using System.Reflection;
using System.Runtime.Loader;
using BuckGen.Design;

namespace BuckGen.Plugins;

/// <summary>
/// Where one plug-in's libraries live. BuckGen itself is shared with the program, or nothing would fit together.
/// </summary>
internal sealed class PluginContext(string file) : AssemblyLoadContext(Path.GetFileNameWithoutExtension(file))
{
    private static readonly AssemblyLoadContext Ours = GetLoadContext(typeof(BuckDesign).Assembly)!;

    /// <summary>The assemblies that plug-ins and the program have in common.</summary>
    private static readonly string[] Shared =
        [.. typeof(BuckDesign).Assembly.GetReferencedAssemblies().Append(typeof(BuckDesign).Assembly.GetName())
        .Select(a => a.Name!).Where(n => n.StartsWith("BuckGen.", StringComparison.Ordinal))];

    private readonly AssemblyDependencyResolver resolver = new(file);

    /// <summary>True for the name of an assembly of ours.</summary>
    public static bool IsShared(string? name) => Shared.Contains(name);

    protected override Assembly? Load(AssemblyName assemblyName) =>
        IsShared(assemblyName.Name) ? Ours.LoadFromAssemblyName(new AssemblyName(assemblyName.Name!))
        : resolver.ResolveAssemblyToPath(assemblyName) is { } path ? LoadFromAssemblyPath(path) : null;

    protected override nint LoadUnmanagedDll(string unmanagedDllName) =>
        resolver.ResolveUnmanagedDllToPath(unmanagedDllName) is { } path ? LoadUnmanagedDllFromPath(path) : nint.Zero;
}
