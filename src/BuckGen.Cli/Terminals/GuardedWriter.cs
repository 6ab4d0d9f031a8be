using System.Text;

namespace BuckGen.Cli.Terminals;

/// <summary>A writer whose stream may be closed or full at any moment.</summary>
/// <param name="writer">The stream.</param>
/// <param name="failed">Is called when something can't be written.</param>
internal sealed class GuardedWriter(TextWriter writer, Action<Exception> failed) : TextWriter
{
    /// <summary>
    /// For answers: what can't be printed is a <see cref="PrintException"/>, never mistaken for a failure of the work.
    /// </summary>
    public static GuardedWriter ForOutput(TextWriter writer) => new(writer, failure => throw new PrintException(failure));

    /// <summary>For error lines and progress: when they can't be written, the work goes on.</summary>
    public static GuardedWriter ForErrors(TextWriter writer) => new(writer, _ => { });

    /// <inheritdoc/>
    public override Encoding Encoding => writer.Encoding;

    /// <inheritdoc/>
    public override IFormatProvider FormatProvider => writer.FormatProvider;

    /// <inheritdoc/>
    [System.Diagnostics.CodeAnalysis.AllowNull]
    public override string NewLine
    {
        get => writer.NewLine;
        set => writer.NewLine = value;
    }

    /// <inheritdoc/>
    public override void Write(char value) => Guard(() => writer.Write(value));

    /// <inheritdoc/>
    public override void Write(string? value) => Guard(() => writer.Write(value));

    /// <inheritdoc/>
    public override void Write(char[] buffer, int index, int count) => Guard(() => writer.Write(buffer, index, count));

    /// <inheritdoc/>
    public override void WriteLine() => Guard(writer.WriteLine);

    /// <inheritdoc/>
    public override void WriteLine(string? value) => Guard(() => writer.WriteLine(value));

    /// <inheritdoc/>
    public override void Flush() => Guard(writer.Flush);

    private void Guard(Action write)
    {
        try
        {
            write();
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or ObjectDisposedException)
        {
            failed(failure);
        }
    }
}
