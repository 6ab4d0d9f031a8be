using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Healing;

/// <summary>One fitted line or arc of an open path, before its ends are joined to others.</summary>
/// <param name="Segment">The line or arc.</param>
/// <param name="Path">The path it was drawn in.</param>
internal readonly record struct Piece(Segment Segment, DrawnPath Path);

/// <summary>A closed loop and the path it came from: the one that closes it, or the first of those joined.</summary>
/// <param name="Loop">The loop.</param>
/// <param name="Path">Where it came from, for messages and for the fill rule.</param>
internal sealed record SourcedLoop(Loop Loop, DrawnPath Path);

/// <summary>Pieces in a row that did not close.</summary>
/// <param name="Segments">The pieces in order, each starting where the one before ends.</param>
/// <param name="Path">The path of the first piece, for messages.</param>
internal sealed record OpenChain(ImmutableArray<Segment> Segments, DrawnPath Path)
{
    public Vec2 Start => Segments[0].Start;
    public Vec2 End => Segments[^1].End;
    public double Length => Segments.Sum(s => s.Length);
}

/// <summary>What a step of the healing made, and what it had to repair.</summary>
internal sealed record Healed<T>(T Result, ImmutableArray<Repair> Repairs);
