using System.Collections.Immutable;

namespace BuckGen.Dxf.Reading.Groups;

/// <summary>What one reading run keeps count of: notes, faults and how much was read. Lives for one call.</summary>
internal sealed class ReadContext(DxfReadLimits limits, CancellationToken cancellation)
{
    private const int MaxFaults = 20;

    /// <summary>At most this many notes of a kind are given one by one; the rest are counted.</summary>
    private const int MaxNotesPerKind = 20;
    private readonly ImmutableArray<DxfNote>.Builder notes = ImmutableArray.CreateBuilder<DxfNote>();
    private readonly ImmutableArray<DxfFault>.Builder faults = ImmutableArray.CreateBuilder<DxfFault>();
    private readonly Dictionary<DxfNoteKind, int> counts = [];
    private int entities;
    private int vertices;

    public DxfReadLimits Limits => limits;

    public ImmutableArray<DxfNote> Notes =>
        [.. notes, .. counts.Where(t => t.Value > MaxNotesPerKind)
            .Select(t =>
                new DxfNote(t.Key,
                    $"there are {t.Value - MaxNotesPerKind} more places like the {MaxNotesPerKind} before noted with {t.Key}",
                    0))];

    public void Note(DxfNoteKind kind, string message, int line)
    {
        counts[kind] = counts.GetValueOrDefault(kind) + 1;
        if (counts[kind] <= MaxNotesPerKind)
            notes.Add(new(kind, message, line));
    }

    /// <summary>How often a kind was noted so far.</summary>
    public int CountOf(DxfNoteKind kind) => counts.GetValueOrDefault(kind);

    /// <summary>Notes of a kind that can come with every line are given once.</summary>
    public void NoteOnce(DxfNoteKind kind, string message, int line)
    {
        if (!counts.ContainsKey(kind))
            Note(kind, message, line);
    }

    /// <summary>An entity is bad: go on to the next, so that one run names all that must be repaired.</summary>
    public void Fault(DxfException exception)
    {
        faults.AddRange(exception.Faults);
        if (faults.Count >= MaxFaults)
            ThrowIfFaulty();
    }

    public void ThrowIfFaulty()
    {
        if (faults.Count > 0)
            throw new DxfException(faults.ToImmutable());
    }

    public void ThrowIfCancelled() => cancellation.ThrowIfCancellationRequested();

    /// <summary>True once a limit is passed: then there is no going on to the next entity.</summary>
    public bool LimitReached => entities > limits.MaxEntities || vertices > limits.MaxVertices;

    public void CountEntity(TagGroup group)
    {
        ThrowIfCancelled();
        entities++;
        if (LimitReached)
            throw group.Fault($"the drawing holds more than {limits.MaxEntities} entities, the limit; simplify it");
    }

    public void CountVertices(int count, TagGroup group)
    {
        ThrowIfCancelled();
        vertices += count;
        if (LimitReached)
            throw group.Fault($"the drawing holds more than {limits.MaxVertices} vertices, the limit; simplify it");
    }
}
