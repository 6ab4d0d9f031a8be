using System.Collections.Immutable;

namespace BuckGen.Dxf;

/// <summary>A drawing cannot be read or written. The only exception that reading and writing raise for bad content.</summary>
public sealed class DxfException : Exception
{
    private const int MaxShown = 3;

    /// <summary>Makes an exception for one fault.</summary>
    /// <param name="fault">What is wrong.</param>
    public DxfException(DxfFault fault)
        : this([fault])
    {
    }

    /// <summary>Makes an exception for several faults found in one pass.</summary>
    /// <param name="faults">At least one fault, in file order.</param>
    public DxfException(ImmutableArray<DxfFault> faults)
        : base(Describe(faults)) => Faults = faults;

    /// <summary>Makes an exception for a fault described in words only.</summary>
    /// <param name="message">What is wrong and what to do about it.</param>
    /// <param name="line">Line in the file, from 1; 0 for none.</param>
    /// <param name="entityType">Type of the entity concerned, or null.</param>
    public DxfException(string message, int line = 0, string? entityType = null)
        : this(new DxfFault(message, line, entityType))
    {
    }

    /// <summary>All faults found, never empty.</summary>
    public ImmutableArray<DxfFault> Faults { get; }

    /// <summary>Line of the first fault, from 1; 0 for none.</summary>
    public int Line => Faults[0].Line;

    /// <summary>Entity type of the first fault, or null.</summary>
    public string? EntityType => Faults[0].EntityType;

    private static string Describe(ImmutableArray<DxfFault> faults)
    {
        var listed = string.Join("; ", faults.Take(MaxShown));
        return faults.Length > MaxShown ? $"{listed}; and {faults.Length - MaxShown} more" : listed;
    }
}
