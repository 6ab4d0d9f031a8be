using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Dxf;
using BuckGen.Dxf.Reading;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;
using Xunit;

namespace BuckGen.Tests.Intake.Fuzzing;

/// <summary>
/// Damaged files are read or refused, in bounded time and memory, whatever the damage. Few of them in the usual run;
/// BUCKGEN_FUZZ=200000 tries as many, and then holds each to 2 s of processor time as well.
/// </summary>
[Collection(nameof(Alone))]
[Trait("Tier", "slow")]
public class FuzzTests
{
    private const int MaxMessageLength = 600;

    private static readonly double[] Drafts = [1, 0.1, 5, 15, -1];

    /// <summary>How many are designed in the usual run.</summary>
    private const int UsualDesigns = 40;

    [Fact]
    public void A_damaged_DXF_gives_an_outline_or_a_refusal_in_one_line() => FuzzRun.Execute("dxf", WholeIntake);

    [Fact]
    public void A_damaged_SVG_gives_an_outline_or_a_refusal_in_one_line() => FuzzRun.Execute("svg", WholeIntake);

    [Fact]
    public void A_damaged_DXF_gives_a_drawing_or_a_DxfException() => FuzzRun.Execute("dxf", mutant =>
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

    [Theory]
    [InlineData("dxf")]
    [InlineData("svg")]
    public void What_is_read_can_be_made(string folder) => FuzzRun.Execute(folder, OneAnswer, UsualDesigns, bounded: false);

    /// <summary>
    /// A drawing that was accepted once is not refused later: a design has findings then, and no complaint about the drawing.
    /// </summary>
    private static string? OneAnswer(Mutant mutant)
    {
        Outline read;
        try
        {
            read = OutlineReader.Read(mutant.Content, mutant.File);
        }
        catch (OutlineException)
        {
            return null;
        }

        // Larger ones take long and say little more.
        if (read.Region.Segments.Take(3000).Count() == 3000) return null;
        BuckDesign.Create(read, OneOfAll(mutant.Number));
        return null;
    }

    /// <summary>
    /// Every kind, plane, corner and draft in turn; so low that nothing closes that is not nearly closed already.
    /// </summary>
    private static BuckSpec OneOfAll(int number) => new()
    {
        Depth = 3,
        Stock = [new("thin", 3)],
        Kind = number % 2 == 0 ? BuckKind.Male : BuckKind.Female,
        OutlineAt = number / 2 % 2 == 0 ? OutlineAt.Face : OutlineAt.Base,
        Corners = number / 4 % 2 == 0 ? CornerJoin.Round : CornerJoin.Mitre,
        Draft = Drafts[number / 8 % Drafts.Length],
    };

    private static string? WholeIntake(Mutant mutant)
    {
        try
        {
            var outline = OutlineReader.Read(mutant.Content, mutant.File);
            if (outline.Notes.Select(n => n.Message).Concat(outline.Repairs.Select(r => r.Message))
                .FirstOrDefault(m => m.Length > MaxMessageLength) is { } message)
                return $"a long message: {message}";
            var region = outline.Region;
            // Below the tolerance an outline may be larger or smaller than what is left of it.
            var (area, room, slack) = (region.Area, region.Bounds.Width * region.Bounds.Height,
                region.Perimeter * Tolerance.Default.Chord);
            return area > -slack && area <= room + slack ? null : $"the outline has an area of {area} mm² in {room} mm²";
        }
        catch (OutlineException e)
        {
            return e.Message.StartsWith(mutant.File, StringComparison.Ordinal) && !e.Message.Contains('\n')
                && e.Message.Length <= MaxMessageLength ? null : $"a bad message: {e.Message}";
        }
    }
}

/// <summary>Tests that count the memory and time of the whole process, so nothing may run beside them.</summary>
[CollectionDefinition(nameof(Alone), DisableParallelization = true)]
public sealed class Alone;
