using System.Text;
using BuckGen.Intake.Outlines;
using BuckGen.Tests.Intake.Outlines;
using Xunit;
using static BuckGen.Tests.Intake.Outlines.DxfText;
using static BuckGen.Tests.Intake.ReaderRules.Files;

namespace BuckGen.Tests.Intake.ReaderRules;

/// <summary>Which parts of a DXF count, and what is reported about the others.</summary>
public class StructureRules
{
    private static readonly string Disc = Circle(0, 0, 5);

    [Theory]
    [InlineData("\n", "\r\n")]
    [InlineData("\n", "\r")]
    [InlineData("\n40\n", "\n \t40 \n")]
    [InlineData("\n40\n", "\n999\na remark\n40\n")]
    [InlineData("0\nEOF\n", "0\nEOF\nwhatever follows\n")]
    [InlineData("0\nEOF\n", "0\nEOF")]
    [InlineData("0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n4\n0\nENDSEC\n", "")]
    public void Harmless_oddities_of_the_text_change_nothing(string usual, string odd) =>
        Assert.Equal(25 * Math.PI,
            Read(Encoding.ASCII.GetBytes(Encoding.ASCII.GetString(DxfText.File(Disc)).Replace(usual, odd))).Region.Area, 1e-9);

    [Fact]
    public void The_order_of_the_groups_in_an_entity_does_not_matter() =>
        Assert.Equal(Read("", Disc).Region.Area, Read("", Tags("0 CIRCLE|40 5|20 0|8 0|10 0")).Region.Area);

    [Fact]
    public void Unknown_entities_are_counted_by_type_and_layer()
    {
        var note = Assert
            .Single(Read("", Disc, Tags("0 ACME|8 A|40 99"), Tags("0 ACME|8 A|10 x"), Tags("0 ACME|8 B"),
                Tags("0 WIPEOUT|8 A")).Notes);

        Assert.Equal("left out: 2 ACME on layer A, 1 ACME on layer B, 1 WIPEOUT on layer A.", note.Message);
    }

    [Fact]
    public void Only_the_entities_count_and_not_what_other_sections_hold()
    {
        var others = Blocks(Block("UNUSED", Circle(90, 0, 9))) + "0\nSECTION\n2\nOBJECTS\n" + Circle(60, 0, 9) + "0\nENDSEC\n";

        Assert.Equal(25 * Math.PI, Read(others, Disc).Region.Area, 1e-9);
    }

    [Theory]
    [InlineData("67 1", "0 (paper space)")]
    [InlineData("60 1", "0 (invisible)")]
    public void Paper_space_and_invisible_entities_are_left_out_and_reported(string flag, string where)
    {
        var outline = Read("", Disc, Circle(0, 0, 20) + Tags(flag));

        AssertHidden(outline, $"1 CIRCLE on layer {where}");
    }

    [Theory]
    [InlineData("OFF", 0, -7, "off")]
    [InlineData("COLD", 1, 7, "frozen")]
    [InlineData("COLD", 65, 7, "frozen")]
    [InlineData("Defpoints", 0, 7, "never plotted")]
    [InlineData("DEFPOINTS", 0, 7, "never plotted")]
    public void Layers_that_do_not_show_are_left_out_and_reported(string layer, int flags, int colour, string why)
    {
        var outline = Read(Layers(("0", 0, 7), (layer, flags, colour)), Disc, Circle(0, 0, 20, layer), Circle(0, 0, 30, layer));

        AssertHidden(outline, $"2 CIRCLE on layer {layer} ({why})");
    }

    [Fact]
    public void The_name_of_a_layer_is_found_without_regard_to_case() =>
        AssertHidden(Read(Layers(("Cold", 1, 7)), Disc, Circle(0, 0, 20, "COLD")), "1 CIRCLE on layer COLD (frozen)");

    [Fact]
    public void A_locked_layer_shows() => Assert.Equal(1, Read(Layers(("0", 4, 7)), Disc).LoopCount);

    [Fact]
    public void What_a_hidden_layer_holds_inside_a_block_is_left_out_as_well() =>
        AssertHidden(
            Read(Layers(("COLD", 1, 7)) + Blocks(Block("A", Disc, Circle(0, 0, 20, "COLD"))), Tags("0 INSERT|8 0|2 A|10 0|20 0")),
            "1 CIRCLE on layer COLD (frozen)");

    private static void AssertHidden(Outline outline, string words)
    {
        Assert.Equal(25 * Math.PI, outline.Region.Area, 1e-9);
        var note = Assert.Single(outline.Notes);
        Assert.Equal("hidden-ignored", note.Kind);
        Assert.Contains(words, note.Message);
    }
}
