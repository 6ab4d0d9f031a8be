using BuckGen.Dxf;
using BuckGen.Geometry;
using BuckGen.Outlines;
using Xunit;

namespace BuckGen.Tests.Outlines.Fuzzing;

/// <summary>
/// Damaged files are read or refused, in bounded time and memory, whatever the damage. Few of them in the usual run;
/// BUCKGEN_FUZZ=200000 tries as many, and then holds each to 2 s of processor time as well.
/// </summary>
[Collection(nameof(Alone))]
public class FuzzTests
{
    [Fact]
    public void A_damaged_DXF_gives_an_outline_or_a_refusal_in_one_line() => FuzzRun.Of("dxf", WholeIntake);

    [Fact]
    public void A_damaged_SVG_gives_an_outline_or_a_refusal_in_one_line() => FuzzRun.Of("svg", WholeIntake);

    [Fact]
    public void A_damaged_DXF_gives_a_drawing_or_a_DxfException() => FuzzRun.Of("dxf", mutant =>
    {
        try
        {
            return DxfReader.Read(mutant.Content) is not null ? null : "no drawing";
        }
        catch (DxfException e)
        {
            return e.Faults.IsEmpty ? "no fault is named" : null;
        }
    });

    private static string? WholeIntake(Mutant mutant)
    {
        try
        {
            var region = OutlineReader.Read(mutant.Content, mutant.File).Region;
            // Below the tolerance an outline may be larger or smaller than what is left of it.
            var (area, room, slack) = (region.Area, region.Bounds.Width * region.Bounds.Height, region.Perimeter * Tolerance.Default.Chord);
            return area > -slack && area <= room + slack ? null : $"the outline has an area of {area} mm² in {room} mm²";
        }
        catch (OutlineException e)
        {
            return e.Message.StartsWith(mutant.File, StringComparison.Ordinal) && !e.Message.Contains('\n') ? null : $"a bad message: {e.Message}";
        }
    }
}

/// <summary>Tests that count the memory and time of the whole process, so nothing may run beside them.</summary>
[CollectionDefinition(nameof(Alone), DisableParallelization = true)]
public sealed class Alone;
