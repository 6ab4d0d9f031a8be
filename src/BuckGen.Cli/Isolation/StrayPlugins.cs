using System.Diagnostics;
using System.Reflection;
using System.Runtime.ExceptionServices;
using System.Runtime.Loader;

namespace BuckGen.Cli.Isolation;

/// <summary>Exceptions on threads that plug-ins start: they end only those threads.</summary>
internal static class StrayPlugins
{
    /// <summary>Watches the process from now to its end.</summary>
    /// <param name="error">Where the messages go.</param>
    public static void Watch(TextWriter error) => ExceptionHandling.SetUnhandledExceptionHandler(failure =>
    {
        if (PluginOf(failure) is not { } file) return false;
        error.WriteLine(
            $"Plug-in {Path.GetFileNameWithoutExtension(file)} ({file}): a thread of its own failed, and the job goes on: "
            + $"{Reason(failure)}");
        return true;
    });

    /// <summary>The file of the plug-in whose code threw it; null for our own.</summary>
    private static string? PluginOf(Exception failure) =>
        new StackTrace(failure).GetFrames().Select(f => f.GetMethod()?.Module.Assembly).OfType<Assembly>().Select(FileOf)
            .FirstOrDefault(f => f is not null);

    private static string? FileOf(Assembly assembly) =>
        AssemblyLoadContext.GetLoadContext(assembly) is { } context && context != AssemblyLoadContext.Default
            ? context.Assemblies.FirstOrDefault(a => a.GetName().Name == context.Name)?.Location
            : null;

    private static string Reason(Exception failure)
    {
        try
        {
            return failure.Message.ReplaceLineEndings(" ");
        }
        catch (Exception)
        {
            return failure.GetType().Name;
        }
    }
}
