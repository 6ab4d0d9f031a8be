namespace BuckGen.Dxf;

/// <summary>The kinds of oddity that a reader accepts but reports.</summary>
public enum DxfNoteKind
{
    /// <summary>The last line has no line end.</summary>
    MissingLastLineEnd,

    /// <summary>The file stops after a complete section, or after a complete entity, without the <c>EOF</c> marker.</summary>
    MissingEndOfFile,

    /// <summary>A section is not closed by <c>ENDSEC</c>.</summary>
    MissingSectionEnd,

    /// <summary>A polyline is not closed by <c>SEQEND</c>.</summary>
    MissingSequenceEnd,

    /// <summary>There is text after the <c>EOF</c> marker; it was not read.</summary>
    TextAfterEnd,

    /// <summary>Lines end with CR CR LF, the trace of a text-mode copy.</summary>
    DoubledCarriageReturns,

    /// <summary>A count in the file differs from what is there; what is there was used.</summary>
    CountMismatch,

    /// <summary>An optional value is absent or meaningless and its default was used.</summary>
    DefaultTaken,

    /// <summary>A value belongs to nothing at its place and was left out.</summary>
    ValueIgnored,

    /// <summary>Text does not fit the encoding that the file names.</summary>
    UndecodableText,

    /// <summary>An entity is newer than the version that the header names.</summary>
    NewerThanVersion,
}
