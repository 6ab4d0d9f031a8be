namespace BuckGen.Output.Models.Meshing;

/// <summary>Numbers in groups that are joined one by one.</summary>
/// <param name="count">How many numbers, from 0; each starts in a group of its own.</param>
internal sealed class DisjointSets(int count)
{
    private readonly int[] parents = [.. Enumerable.Range(0, count)];

    /// <summary>The number that represents a number's group.</summary>
    public int Find(int number)
    {
        while (parents[number] != number) number = parents[number] = parents[parents[number]];
        return number;
    }

    /// <summary>Makes two groups one; the lower number represents both.</summary>
    public void Join(int one, int other)
    {
        (one, other) = (Find(one), Find(other));
        parents[Math.Max(one, other)] = Math.Min(one, other);
    }
}
