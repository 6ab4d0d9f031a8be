namespace BuckGen.Dxf;

/// <summary>Something that was tolerated while reading.</summary>
/// <param name="Kind">What sort of oddity it is.</param>
/// <param name="Message">The same in words, with the value and what was done.</param>
/// <param name="Line">Line in the file, counted from 1; 0 for none.</param>
public sealed record DxfNote(DxfNoteKind Kind, string Message, int Line);
