namespace BuckGen.Jobs;

/// <summary>Finds the word that was probably meant.</summary>
internal static class NearestWord
{
    /// <summary>
    /// The known word with the fewest letters to change; null when more than half of its letters would have to change.
    /// </summary>
    public static string? Find(string word, IEnumerable<string> known) => known
        .Select(k => (Word: k, Changes: Changes(word, k)))
        .Where(k => 2 * k.Changes <= word.Length)
        .OrderBy(k => k.Changes).ThenBy(k => k.Word, StringComparer.Ordinal)
        .Select(k => k.Word).FirstOrDefault();

    /// <summary>How many letters must be put in, taken out or changed to make one word of the other.</summary>
    private static int Changes(string from, string to)
    {
        var row = Enumerable.Range(0, to.Length + 1).ToArray();
        for (var i = 1; i <= from.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= to.Length; j++)
            {
                var above = row[j];
                row[j] = Math.Min(Math.Min(row[j], row[j - 1]) + 1, diagonal + (from[i - 1] == to[j - 1] ? 0 : 1));
                diagonal = above;
            }
        }

        return row[^1];
    }
}
