using System.Collections.Immutable;

namespace BuckGen.Pictures;

/// <summary>Something to be laid on the work: a drawing in real size, and the words that go with it.</summary>
/// <param name="Drawing">The drawing, 1:1.</param>
/// <param name="Words">What its user must know, a paragraph each.</param>
internal sealed record PaperTemplate(Picture Drawing, ImmutableArray<string> Words);
