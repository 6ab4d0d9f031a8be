namespace BuckGen.Geometry.Offsetting;

/// <summary>An offset that could not be made; the message says what failed and where.</summary>
/// <param name="message">What failed, with the distance and the place.</param>
public sealed class OffsetFailedException(string message) : Exception(message);
