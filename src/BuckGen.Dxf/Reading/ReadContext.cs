using System.Collections.Immutable;

namespace BuckGen.Dxf.Reading;

/// <summary>What one reading run keeps count of: notes, faults and how much was read. Lives for one call.</summary>
internal sealed class ReadContext(DxfReadLimits limits)
{
    private const int MostFaults = 20;
    private readonly ImmutableArray<DxfNote>.Builder notes = ImmutableArray.CreateBuilder<DxfNote>();
    private readonly ImmutableArray<DxfFault>.Builder faults = ImmutableArray.CreateBuilder<DxfFault>();
    private readonly HashSet<DxfNoteKind> told = [];
    private int entities;
    private int vertices;

    public DxfReadLimits Limits => limits;

    public ImmutableArray<DxfNote> Notes => notes.ToImmutable();

    public void Note(DxfNoteKind kind, string message, int line) => notes.Add(new(kind, message, line));

    /// <summary>Notes of a kind that can come with every line are told once.</summary>
    public void NoteOnce(DxfNoteKind kind, string message, int line)
    {
        if (told.Add(kind))
            Note(kind, message, line);
    }

    /// <summary>An entity is bad: go on to the next, so that one run names all that must be repaired.</summary>
    public void Fault(DxfException exception)
    {
        faults.AddRange(exception.Faults);
        if (faults.Count >= MostFaults)
            ThrowIfFaulty();
    }

    public void ThrowIfFaulty()
    {
        if (faults.Count > 0)
            throw new DxfException(faults.ToImmutable());
    }

    /// <summary>True once a limit is passed: then there is no going on to the next entity.</summary>
    public bool LimitReached => entities > limits.MaxEntities || vertices > limits.MaxVertices;

    public void CountEntity(TagGroup group)
    {
        entities++;
        if (LimitReached)
            throw group.Fault($"the drawing holds more than {limits.MaxEntities} entities; simplify it or raise the limit");
    }

    public void CountVertices(int count, TagGroup group)
    {
        vertices += count;
        if (LimitReached)
            throw group.Fault($"the drawing holds more than {limits.MaxVertices} vertices; simplify it or raise the limit");
    }
}
