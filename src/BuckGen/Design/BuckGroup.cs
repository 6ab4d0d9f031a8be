namespace BuckGen.Design;

/// <summary>One buck of a sign that is made in several.</summary>
/// <param name="Number">Its number, from 1, in reading order.</param>
/// <param name="Design">Its design, in the coordinates of the whole drawing; its outline holds the islands in it.</param>
public sealed record BuckGroup(int Number, BuckDesign Design);
