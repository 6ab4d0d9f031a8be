using BuckGen.Design.Prediction;
using BuckGen.Output.Reports.Page;
using BuckGen.Tests.Output.Pictures;
using Xunit;

namespace BuckGen.Tests.Output.Reports.Page;

/// <summary>The words of the predicted wall: what was computed, and how far it can be trusted.</summary>
public class WallSectionTests
{
    private static readonly FormedPart Part = ThicknessTests.Sheet(p => 0.2 + 0.8 * p.X / 100);

    [Fact]
    public void A_quick_prediction_over_the_sanded_wall_states_its_net_and_its_model() =>
        Assert.Equal(
            "Computed (quick) with 200 triangles, 10 mm at the walls, over the wall after sanding; The thinnest place is one "
            + "that a ball of 2 mm radius can touch: deeper in a sharp inside corner a wall has no minimum thickness. The model "
            + "assumes an evenly hot sheet that sticks where it touches; real walls are within 5 to 15 % of such predictions, "
            + "corners within 20 to 30 % (from memory, no source). Measure the first part.",
            Method(Part));

    [Fact]
    public void A_fine_one_is_called_fine() =>
        Assert.StartsWith("Computed (fine) with ", Method(Part with { Spec = new() { Detail = FormingDetail.Fine } }));

    [Fact]
    public void One_over_the_steps_names_them() =>
        Assert.Contains(", over the layers with their steps; ", Method(Part with { Spec = new() { Stepped = true } }));

    [Theory]
    [InlineData(0, 3, "assumes a sheet, colder at the frame, that sticks")]
    [InlineData(20, 1, "assumes an evenly hot sheet, sagged as given, that sticks")]
    [InlineData(20, 3, "assumes a sheet, sagged as given and colder at the frame, that sticks")]
    public void A_sag_and_a_colder_edge_are_named(double sag, double edge, string expected) =>
        Assert.Contains(expected, Method(Part with { Spec = new() { Sag = sag, EdgeStiffness = edge } }));

    [Fact]
    public void What_moves_the_wall_is_a_table_of_changes()
    {
        var page = Page(Part with { InputEffects = [new(VariedInput.Sag, 0, 20, 0.5, 0.4)] });

        Assert.Contains("<td>sag before forming</td><td class=\"number\">0 mm</td><td class=\"number\">20 mm</td>"
            + "<td class=\"number\">-20 %</td>", page);
        Assert.DoesNotContain("What moves", Page(Part));
    }

    // From 1 to 1.25 mm with the finer net: the coarser one was thinner by a fifth.
    [Theory]
    [InlineData(0.25, "-20 %")]
    [InlineData(-0.2, "+25 %")]
    [InlineData(0, "0 %")]
    public void What_a_coarser_net_gives_is_a_share_of_the_finer_one(double change, string expected) =>
        Assert.Contains($"; a coarser net gives a thinnest wall {expected} different. The thinnest place",
            Method(Part with { MeshSensitivity = change }));

    [Fact]
    public void A_sheet_that_slides_has_its_friction_in_the_model_and_not_the_words_of_one_that_sticks()
    {
        var page = Page(Part with { Spec = new() { Friction = 0.25 } });

        Assert.Contains("evenly hot sheet that slides with a friction of 0.25; real walls", page);
        Assert.Contains("The sheet along section A-A.</figcaption>", page);
        Assert.DoesNotContain("sticks", page);
        Assert.Contains("The sheet along section A-A. It sticks where it touches: the face keeps the gauge, walls thin as they "
            + "are drawn.</figcaption>", Page(Part));
    }

    [Fact]
    public void Without_a_thinnest_place_only_the_mean_is_given() =>
        Assert.Contains("<p>The part without its skirt is 0.9 to 1.1 mm thick on average.</p>",
            Page(Part with { MeanRange = new(0.9, 1.1) }));

    [Fact]
    public void The_thinnest_place_has_its_range_its_place_and_the_shares_below_it() =>
        Assert.Contains(
            "<p>The part without its skirt is (range not known) thick on average and thinnest, 0.22 to 0.27 mm, at 12.5, 30, "
            + "8 mm up. Thickness that 1 % of it is below: 0.3 to 0.4 mm; 5 %: 0.45 to 0.5 mm. For the minimum wall you want, "
            + "start with a sheet of 1.62 to 1.99 mm.</p>",
            Page(Part with
            {
                Thinnest = new(0.25, new(12.5, 30), 8),
                ThicknessOf1Percent = new(0.3, 0.4),
                ThicknessOf5Percent = new(0.45, 0.5),
                RequiredGauge = 1.75,
                MeshSensitivity = 0,
                MaterialSensitivity = new(1, 1),
            }));

    [Fact]
    public void The_stiffness_of_the_sheet_is_named_with_what_it_does() =>
        Assert.Contains(
            "may be as soft as 0.1 MPa or as stiff as 1 MPa, which makes the thinnest wall 0.5 to 1.75 times as thick.",
            Method(Part with { Modulus = new(0.1, 1), MaterialSensitivity = new(0.5, 1.75) }));

    private static string Method(FormedPart part) =>
        Page(part).Split("<p class=\"small\">Computed")[1].Split("</p>")[0] is var rest ? "Computed" + rest : "";

    private static string Page(FormedPart part)
    {
        var html = new Html();
        WallSection.Add(html, PictureGoldenTests.Raised.Value with { Formed = part }, part);
        return html.ToString();
    }
}
