using BuckGen.Geometry;

namespace BuckGen.Output.Models.Meshing;

/// <summary>
/// The plan of a solid at a height. Between two levels the wall is ruled; two plans at one height meet in flat faces.
/// </summary>
/// <param name="Height">mm.</param>
/// <param name="Plan">The wood at that height; possibly none.</param>
internal readonly record struct Level(double Height, Region Plan);
