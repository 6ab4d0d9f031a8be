using System.Collections.Immutable;
using BuckGen.Dxf.Entities;

namespace BuckGen.Dxf;

/// <summary>A named group of entities that INSERT places in the drawing.</summary>
/// <param name="Name">Name as in the file; names are compared without regard to case.</param>
/// <param name="BasePoint">The point of the block that comes to lie on the insertion point, in drawing units.</param>
/// <param name="Entities">What the block holds, in file order.</param>
public sealed record DxfBlock(string Name, DxfPoint BasePoint, ImmutableArray<DxfEntity> Entities);
