namespace BuckGen.Findings;

/// <summary>
/// A class of the library that hands calls on to a plug-in: its results are checked like those of any foreign code.
/// </summary>
internal interface IForeignPart;
