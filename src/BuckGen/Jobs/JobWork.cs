namespace BuckGen.Jobs;

/// <summary>The kinds of work that a short job file is written for.</summary>
public enum JobWork
{
    /// <summary>Raised letters or shapes on one plate.</summary>
    Sign,

    /// <summary>A box over a male buck, trimmed by a ring.</summary>
    Box,

    /// <summary>A tray in a cavity, trimmed by a ring.</summary>
    Tray,

    /// <summary>A sign, and the panel that it shows through.</summary>
    Panel,
}
