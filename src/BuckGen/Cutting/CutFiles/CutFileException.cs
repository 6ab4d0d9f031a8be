namespace BuckGen.Cutting.CutFiles;

/// <summary>A cut file that does not hold what was drawn; it is not written.</summary>
/// <param name="message">What differs.</param>
public sealed class CutFileException(string message) : Exception(message);
