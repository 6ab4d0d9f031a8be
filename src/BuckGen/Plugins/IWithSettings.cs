namespace BuckGen.Plugins;

/// <summary>An extension that takes settings from the table [settings.NAME] of a job file, NAME being its own name.</summary>
public interface IWithSettings
{
    /// <summary>A copy of the extension with these settings; it refuses what it does not know.</summary>
    /// <param name="settings">The keys and values of the table; numbers and flags as text in invariant form.</param>
    /// <exception cref="ArgumentException">A key is not known or a value not understood; the message says which.</exception>
    object With(IReadOnlyDictionary<string, string> settings);
}
