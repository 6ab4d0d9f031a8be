namespace BuckGen.Findings;

/// <summary>
/// Calls code that others added. What it throws becomes a finding and the rest goes on; our own code is called without that
/// guard.
/// </summary>
internal static class ForeignCode
{
    /// <summary>Maximum number of characters that are shown of a foreign exception.</summary>
    private const int MaxReasonLength = 300;

    /// <summary>False for what comes with the library.</summary>
    public static bool IsForeign(object extension) =>
        extension is IForeignPart || extension.GetType().Assembly != typeof(ForeignCode).Assembly;

    /// <summary>Calls an extension.</summary>
    /// <param name="extension">Whose code it is.</param>
    /// <param name="name">What it is called, for the finding.</param>
    /// <param name="call">The call; it also checks its result.</param>
    /// <returns>What it gave, or the finding on why it gave nothing.</returns>
    public static (T? Result, Finding? Failure) Call<T>(object extension, Func<string> name, Func<T> call)
    {
        if (!IsForeign(extension)) return (call(), null);
        try
        {
            return call() is { } result ? (result, null) : (default, Failed(Named(extension, name), "it gave nothing"));
        }
        catch (Exception failure) when (failure is not OperationCanceledException)
        {
            return (default, Failed(Named(extension, name), Reason(failure)));
        }
    }

    /// <summary>The finding on an extension that did not do its work.</summary>
    public static Finding Failed(string name, string why) =>
        new("plugin-failed", Severity.Warning, $"The plug-in part \"{name}\" failed: {why.TrimEnd('.')}.",
            "Leave it out, or ask its author; everything else was done.")
        {
            Source = "the plug-in",
        };

    /// <summary>The message of a foreign exception, on one line; reading it may fail as well.</summary>
    public static string Reason(Exception failure)
    {
        if (failure is OutOfMemoryException) return "it used up the memory";
        try
        {
            var reason = failure.Message.ReplaceLineEndings(" ");
            return reason.Length <= MaxReasonLength ? reason : reason[..MaxReasonLength] + "...";
        }
        catch (Exception)
        {
            return failure.GetType().Name;
        }
    }

    /// <summary>The name of an extension; that of its class when its name fails.</summary>
    public static string Named(object extension, Func<string> name)
    {
        try
        {
            return name() ?? extension.GetType().Name;
        }
        catch (Exception)
        {
            return extension.GetType().Name;
        }
    }
}
