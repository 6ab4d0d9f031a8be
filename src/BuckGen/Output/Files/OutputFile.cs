using System.Collections.Immutable;

namespace BuckGen.Output.Files;

/// <summary>A finished file, not yet on any disk.</summary>
/// <param name="Path">Place below the output folder, with forward slashes: "layers/layer-01.dxf".</param>
/// <param name="Content">Its bytes.</param>
public sealed record OutputFile(string Path, ImmutableArray<byte> Content);
