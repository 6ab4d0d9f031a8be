namespace BuckGen.References.Tests.Parts;

/// <summary>The play of a lid as the script measures it.</summary>
/// <param name="Job">The job.</param>
/// <param name="MinPlay">The smallest play along the skirt, by the script, mm.</param>
/// <param name="MaxPlay">The largest play along the skirt, by the script, mm.</param>
/// <param name="Faults">What differs by too much.</param>
internal sealed record PlayVerdict(string Job, double MinPlay, double MaxPlay, string[] Faults)
{
    public override string ToString() => FormattableString.Invariant($"{Job,-14} play {MinPlay:0.000} to {MaxPlay:0.000} mm");
}
