namespace BuckGen.Findings;

/// <summary>Foreign code returned a result that can't be used, or none.</summary>
/// <param name="message">What is wrong with it, phrased to follow the name of the extension.</param>
internal sealed class ForeignResultException(string message) : Exception(message);
