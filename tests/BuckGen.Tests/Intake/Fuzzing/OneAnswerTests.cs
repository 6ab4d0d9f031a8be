using System.Text;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Geometry.Offsetting;
using BuckGen.Intake.Reading;
using BuckGen.Tests.Intake.Outlines;
using Xunit;

namespace BuckGen.Tests.Intake.Fuzzing;

/// <summary>
/// Drawings that the reader took and the designer refused, found among the mutants; their numbers change with the corpus, so
/// they stand here.
/// </summary>
[Trait("Tier", "slow")]
public class OneAnswerTests
{
    /// <summary>
    /// A curve whose end was moved by 0.2 mm makes the path cross itself by a hair; a female buck could not be offset by 0.05
    /// mm.
    /// </summary>
    [Theory]
    [InlineData(BuckKind.Male, OutlineAt.Face, Corners.Round)]
    [InlineData(BuckKind.Male, OutlineAt.Base, Corners.Round)]
    [InlineData(BuckKind.Female, OutlineAt.Face, Corners.Round)]
    [InlineData(BuckKind.Female, OutlineAt.Base, Corners.Round)]
    [InlineData(BuckKind.Male, OutlineAt.Face, Corners.Mitre)]
    [InlineData(BuckKind.Male, OutlineAt.Base, Corners.Mitre)]
    [InlineData(BuckKind.Female, OutlineAt.Face, Corners.Mitre)]
    [InlineData(BuckKind.Female, OutlineAt.Base, Corners.Mitre)]
    public void An_ampersand_that_crosses_itself_where_it_closes(BuckKind kind, OutlineAt at, Corners corners)
    {
        var drawn = Encoding.UTF8.GetString(Corpus.File("svg/ff_ampersand.svg").Content);
        var moved = drawn.Replace("c20 -82 90 -141 193 -141", "c20 -82 90 -141 192 -141", StringComparison.Ordinal);
        Assert.NotEqual(drawn, moved);

        var read = OutlineReader.Read(Encoding.UTF8.GetBytes(moved), "ampersand.svg");
        var spec = new BuckSpec
        {
            Depth = 3,
            Draft = 1,
            Stock = [new("thin", 3)],
            Kind = kind,
            OutlineAt = at,
            Corners = new(corners)
        };

        Assert.False(BuckDesign.Create(read, spec).Footprint.IsEmpty);
    }

    /// <summary>
    /// A corner of a letter moved by 5 mm: on the way to where its parts change, the word could not be shrunk by 0.0008 mm.
    /// </summary>
    [Theory]
    [InlineData(1)]
    [InlineData(0.1)]
    public void A_word_whose_letter_is_torn(double draft)
    {
        var drawn = Encoding.UTF8.GetString(Corpus.File("svg/ink_word_plain.svg").Content);
        var moved = drawn
            .Replace("29.548828 l -1.7871,-0.351562", "29.548828 l -1.7871,5.003139469351864", StringComparison.Ordinal);
        Assert.NotEqual(drawn, moved);

        var read = OutlineReader.Read(Encoding.UTF8.GetBytes(moved), "word.svg");

        Assert.False(
            BuckDesign.Create(read,
                new BuckSpec
                {
                    Depth = 3,
                    Draft = draft,
                    Stock = [new("thin", 3)],
                    OutlineAt = OutlineAt.Base,
                    Corners = CornerJoin.Mitre
                }).Footprint.IsEmpty);
    }

    /// <summary>
    /// A panel drawn twice, one corner a unit apart: the walls between the two have no width and reach into each other by less
    /// than the tolerance, so that their area is known no better; nothing could be shrunk by 0.003 mm.
    /// </summary>
    [Theory]
    [InlineData(BuckKind.Male, OutlineAt.Base)]
    [InlineData(BuckKind.Female, OutlineAt.Face)]
    public void A_panel_drawn_twice_with_one_corner_aside(BuckKind kind, OutlineAt at)
    {
        var read = OutlineReader.Read(
            [.. "<svg xmlns='http://www.w3.org/2000/svg' width='4in' height='2.5in' viewBox='0 0 400 250'>"u8,
                .. "<path d='M20 20L300 30 260 180 40 190z'/><path d='M19 20L300 30 260 180 40 190z'/></svg>"u8],
            "panel.svg");

        Assert.False(
            BuckDesign.Create(read,
                new BuckSpec { Depth = 3, Draft = 1, Stock = [new("thin", 3)], Kind = kind, OutlineAt = at }).Layers.IsEmpty);
    }
}
