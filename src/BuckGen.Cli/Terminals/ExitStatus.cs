namespace BuckGen.Cli.Terminals;

/// <summary>The exit status of the program.</summary>
internal static class ExitStatus
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>The design has findings of severity error; cut files were not written unless forced.</summary>
    public const int DesignHasErrors = 1;

    /// <summary>Bad input or usage; nothing was written.</summary>
    public const int BadInput = 2;

    /// <summary>The program itself is at fault.</summary>
    public const int Fault = 3;
}
