using System.Collections.Immutable;

namespace BuckGen.Output.Folders;

/// <summary>What writing a result did to its folder.</summary>
/// <param name="Removed">Files of an earlier run that this one did not make, as paths below the folder; they are gone.</param>
/// <param name="Remarks">What else a person should know, a sentence each: files left or kept, an earlier run that was cut
/// off.</param>
public sealed record FolderChange(ImmutableArray<string> Removed, ImmutableArray<string> Remarks);
