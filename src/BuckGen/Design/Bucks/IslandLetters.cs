using BuckGen.Geometry;

namespace BuckGen.Design.Bucks;

/// <summary>Gives every island a letter that it keeps through all the layers it reaches.</summary>
internal static class IslandLetters
{
    /// <summary>For each layer, lowest first, the letter of each of its islands in their order.</summary>
    public static string[][] Assign(IReadOnlyList<LayerBlank> layers)
    {
        var letters = new string[layers.Count][];
        var used = 0;
        for (var layer = layers.Count - 1; layer >= 0; layer--)
        {
            var islands = layers[layer].Wood.Islands;
            letters[layer] = new string[islands.Length];
            var wood = new RegionInterior(layers[layer].Wood);
            var onto = layer + 1 < layers.Count
                ? Enumerable.Range(0, letters[layer + 1].Length)
                .ToLookup(a => wood.IslandAt(InsidePoint.Find(layers[layer + 1].Wood.Islands[a])))
                : null;
            // New letters run from left to right as one reads the plan.
            foreach (var i in Enumerable.Range(0, islands.Length).OrderBy(i => Math.Round(islands[i].Outer.Bounds.MinX, 6))
                         .ThenBy(i => Math.Round(islands[i].Outer.Bounds.MinY, 6)))
            {
                var above = onto?[i].ToArray() ?? [];
                letters[layer][i] = above.Length == 0
                    ? Letter(used++)
                    : above.Select(a => letters[layer + 1][a]).OrderBy(l => l.Length)
                    .ThenBy(l => l, StringComparer.Ordinal).First();
            }
        }

        return letters;
    }

    /// <summary>A to Z, then AA, AB and so on.</summary>
    public static string Letter(int number) =>
        number < 26 ? ((char)('A' + number)).ToString() : Letter(number / 26 - 1) + Letter(number % 26);
}
