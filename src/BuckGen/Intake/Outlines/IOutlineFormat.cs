namespace BuckGen.Intake.Outlines;

/// <summary>Reads one kind of drawing file.</summary>
public interface IOutlineFormat
{
    /// <summary>Its name, such as "DXF".</summary>
    string Name { get; }

    /// <summary>True when a file looks like one of its kind; what a file is shows in its first bytes, not in its name.</summary>
    /// <param name="content">The whole file.</param>
    bool Recognises(ReadOnlySpan<byte> content);

    /// <summary>Reads what is drawn, in mm; joining ends and finding loops come after.</summary>
    /// <param name="content">The whole file.</param>
    /// <param name="name">Name of the file, for messages.</param>
    /// <param name="options">How to read.</param>
    /// <exception cref="OutlineException">The file can't be used; the message says where and why.</exception>
    Drawing Read(byte[] content, string name, OutlineOptions options);

    /// <summary>
    /// The same for a format that can be stopped on its way; one that leaves this out is stopped before or after its work.
    /// </summary>
    /// <param name="content">The whole file.</param>
    /// <param name="name">Name of the file, for messages.</param>
    /// <param name="options">How to read.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="OutlineException">The file can't be used; the message says where and why.</exception>
    Drawing Read(byte[] content, string name, OutlineOptions options, CancellationToken cancellation) =>
        Read(content, name, options);
}
