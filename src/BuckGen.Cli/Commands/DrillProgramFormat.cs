namespace BuckGen.Cli.Commands;

/// <summary>The drill programs to choose from.</summary>
internal enum DrillProgramFormat
{
    /// <summary>None.</summary>
    None,

    /// <summary>NIST RS274/NGC.</summary>
    Ngc,
}
