namespace BuckGen.Findings;

/// <summary>Foreign code gave an answer that can't be used, or none.</summary>
/// <param name="message">What is wrong with it, to stand after the name of whose answer it is.</param>
internal sealed class AnswerException(string message) : Exception(message);
