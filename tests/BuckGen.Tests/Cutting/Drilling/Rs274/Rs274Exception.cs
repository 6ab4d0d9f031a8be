namespace BuckGen.Tests.Cutting.Drilling.Rs274;

/// <summary>A program that NISTIR 6556 does not allow.</summary>
internal sealed class Rs274Exception(string message) : Exception(message);
