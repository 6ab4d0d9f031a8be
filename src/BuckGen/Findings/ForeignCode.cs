namespace BuckGen.Findings;

/// <summary>Calls code that others added. What it throws becomes a finding and the rest goes on; our own code is called without a net.</summary>
internal static class ForeignCode
{
    /// <summary>Calls an extension.</summary>
    /// <param name="extension">Whose code it is.</param>
    /// <param name="name">What it is called, for the finding.</param>
    /// <param name="call">The call; a sequence must be walked to its end inside it.</param>
    /// <returns>What it gave, or the finding on why it gave nothing.</returns>
    public static (T? Result, Finding? Failure) Call<T>(object extension, string name, Func<T> call) where T : class
    {
        if (extension.GetType().Assembly == typeof(ForeignCode).Assembly) return (call(), null);
        try
        {
            return call() is { } result ? (result, null) : (null, Failed(name, "it gave nothing"));
        }
        catch (Exception failure) when (failure is not OperationCanceledException)
        {
            return (null, Failed(name, failure.Message));
        }
    }

    /// <summary>The finding on an extension that did not do its work.</summary>
    public static Finding Failed(string name, string why) =>
        new("plugin-failed", Severity.Warning, $"The plug-in part \"{name}\" failed: {why.ReplaceLineEndings(" ").TrimEnd('.')}.",
            "Leave it out, or ask its author; everything else was done.")
        {
            Source = "the plug-in",
        };
}
