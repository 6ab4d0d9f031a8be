using BuckGen.Cutting.Boards;

namespace BuckGen.Output.Reports;

/// <summary>A part of the process card.</summary>
public interface IReportSection
{
    /// <summary>Its heading; capitals on the card.</summary>
    string Title { get; }

    /// <summary>Its lines in plain words; none leaves the section out. Lines longer than the card is wide are wrapped.</summary>
    /// <param name="plan">The design and its parts laid out on boards.</param>
    IEnumerable<string> Lines(CutPlan plan);
}
