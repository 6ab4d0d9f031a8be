namespace BuckGen.Design.Forming;

/// <summary>What a drawing shows.</summary>
public enum Drawn
{
    /// <summary>The buck itself.</summary>
    Buck,

    /// <summary>The inside of the finished part.</summary>
    Inside,

    /// <summary>The outside of the finished part.</summary>
    Outside,
}
