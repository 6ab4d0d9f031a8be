using System.Collections.Immutable;
using BuckGen.Output.Pictures.Drawing;

namespace BuckGen.Output.Pictures.Templates;

/// <summary>Something to be laid on the work: a drawing at full size, and the words that go with it.</summary>
/// <param name="Drawing">The drawing, 1:1.</param>
/// <param name="Words">What its user must know, a paragraph each.</param>
internal sealed record PaperTemplate(Picture Drawing, ImmutableArray<string> Words);
