namespace BuckGen.Cli.Commands;

/// <summary>Drill programs that can be asked for.</summary>
internal enum DrillProgramFormat
{
    /// <summary>None.</summary>
    None,

    /// <summary>The words of NIST RS274/NGC.</summary>
    Ngc,
}
