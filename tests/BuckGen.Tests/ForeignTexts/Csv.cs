using System.Text;

namespace BuckGen.Tests.ForeignTexts;

/// <summary>A reader of comma-separated values as RFC 4180 has them.</summary>
internal static class Csv
{
    public static List<string[]> Read(string file)
    {
        var (rows, row, field, quoted) = (new List<string[]>(), new List<string>(), new StringBuilder(), false);
        for (var i = 0; i < file.Length; i++)
        {
            var c = file[i];
            if (quoted && c == '"' && i + 1 < file.Length && file[i + 1] == '"') field.Append(file[i++]);
            else if (c == '"') quoted = !quoted;
            else if (!quoted && c == ',') EndField();
            else if (!quoted && c == '\r' && file[i + 1] == '\n')
            {
                EndField();
                rows.Add([.. row]);
                row.Clear();
                i++;
            }
            else field.Append(c);
        }

        return rows;

        void EndField()
        {
            row.Add(field.ToString());
            field.Clear();
        }
    }
}
