using System.Text;

namespace BuckGen.Cli.Isolation;

/// <summary>The output of a process, up to a limit.</summary>
internal sealed class CapturedText
{
    /// <summary>Maximum number of characters: far above the longest summary.</summary>
    private const int MaxLength = 50_000_000;

    private readonly StringBuilder text = new();

    public CapturedText(StreamReader reader) => Reading = Task.Run(() => ReadAsync(reader));

    /// <summary>Ends when the process has written everything.</summary>
    public Task Reading { get; }

    /// <summary>True when it wrote more than is kept.</summary>
    public bool IsFlooded { get; private set; }

    /// <summary>What was written, once all is read.</summary>
    public string Text
    {
        get
        {
            lock (text) return text.ToString();
        }
    }

    private async Task ReadAsync(StreamReader reader)
    {
        var block = new char[8192];
        int count;
        while ((count = await reader.ReadAsync(block)) > 0)
            lock (text)
                if (text.Length + count <= MaxLength) text.Append(block, 0, count);
                else IsFlooded = true;
    }
}
