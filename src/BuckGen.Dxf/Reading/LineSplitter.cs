namespace BuckGen.Dxf.Reading;

/// <summary>Cuts bytes into lines that end with LF, CR LF, CR or any number of CRs before an LF, and counts them.</summary>
internal sealed class LineSplitter(byte[] bytes, int start)
{
    private int position = start;

    /// <summary>Number of the line last read, from 1.</summary>
    public int Line { get; private set; }

    /// <summary>True when the line last read ran into the end of the file.</summary>
    public bool Unended { get; private set; }

    /// <summary>True when some line ended with more than one CR before its LF.</summary>
    public bool DoubledReturns { get; private set; }

    public bool AtEnd => position >= bytes.Length;

    public ReadOnlySpan<byte> Next()
    {
        var rest = bytes.AsSpan(position);
        var length = rest.IndexOfAny((byte)'\r', (byte)'\n');
        Line++;
        Unended = length < 0;
        if (Unended)
        {
            position = bytes.Length;
            return rest;
        }

        position += length + EndLength(rest[length..]);
        return rest[..length];
    }

    // CR CR LF is one line end; CR CR without LF is two, because then CR alone ends lines.
    private int EndLength(ReadOnlySpan<byte> rest)
    {
        var returns = rest.IndexOfAnyExcept((byte)'\r');
        if (returns < 0 || rest[returns] != '\n')
            return 1;
        DoubledReturns |= returns > 1;
        return returns + 1;
    }
}
