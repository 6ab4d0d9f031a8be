using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Cutting.CutPaths;

/// <summary>A drawing for a machine, in mm.</summary>
/// <param name="Title">What it shows; the title of an SVG.</param>
/// <param name="Paths">The paths in the order they are to be cut.</param>
/// <param name="Page">The rectangle shown: a whole board, or the bounds of a part.</param>
public sealed record CutDrawing(string Title, ImmutableArray<CutPath> Paths, Bounds Page);
