namespace BuckGen.Intake.Svg;

/// <summary>Text for the XML reader that can be stopped: the reader itself knows no way to.</summary>
internal sealed class CancellableReader(string text, CancellationToken cancellation) : StringReader(text)
{
    public override int Read(Span<char> buffer)
    {
        cancellation.ThrowIfCancellationRequested();
        return base.Read(buffer);
    }

    public override int Read(char[] buffer, int index, int count)
    {
        cancellation.ThrowIfCancellationRequested();
        return base.Read(buffer, index, count);
    }
}
