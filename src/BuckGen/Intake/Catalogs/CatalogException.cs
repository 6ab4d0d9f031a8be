namespace BuckGen.Intake.Catalogs;

/// <summary>A catalog file that can't be used: the message names file, line, key and remedy.</summary>
/// <param name="message">One clear line.</param>
public sealed class CatalogException(string message) : Exception(message);
