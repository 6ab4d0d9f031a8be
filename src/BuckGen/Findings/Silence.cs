namespace BuckGen.Findings;

/// <summary>A finding that the maker knows and accepts.</summary>
/// <param name="Id">The finding's id, such as "web-between".</param>
/// <param name="Reason">Why it is accepted; shown with the finding.</param>
public sealed record Silence(string Id, string Reason);
