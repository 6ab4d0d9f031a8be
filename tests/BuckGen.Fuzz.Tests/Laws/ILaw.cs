using BuckGen.Fuzz.Tests.Runs;

namespace BuckGen.Fuzz.Tests.Laws;

/// <summary>Something that is true of every design that is made.</summary>
internal interface ILaw
{
    /// <summary>What is broken, each in a line with place and amount; nothing when the law is kept.</summary>
    IEnumerable<string> Broken(DesignRun run);
}
