using System.Text;
using Xunit;

namespace BuckGen.Tests.Intake.ReaderRules;

/// <summary>Numbers of a DXF are read to their last character or not at all.</summary>
public class NumberRules
{
    private static readonly string Circle = Encoding.ASCII.GetString(Files.Entities("0 CIRCLE|8 CUT|10 1|20 2|40 7.5|70 3|62 5"));

    [Theory]
    [InlineData("0,5")]
    [InlineData("1.250,00")]
    [InlineData("nan")]
    [InlineData("1e400")]
    [InlineData("7.5mm")]
    [InlineData("--7")]
    [InlineData("")]
    public void A_bad_length_is_refused_with_line_entity_and_text(string text)
    {
        var message = Refusal("\n40\n7.5\n", $"\n40\n{text}\n");

        Assert.Contains("line 24, CIRCLE", message);
        Assert.Contains($"\"{text}\"", message);
    }

    [Theory]
    [InlineData("5.0")]
    [InlineData("5x")]
    [InlineData("99999999999")]
    public void A_bad_whole_number_is_refused_with_line_entity_and_text(string text)
    {
        var message = Refusal("\n62\n5\n", $"\n62\n{text}\n");

        Assert.Contains("line 28, CIRCLE", message);
        Assert.Contains($"\"{text}\"", message);
    }

    [Theory]
    [InlineData("60")]
    [InlineData("67")]
    public void A_flag_that_is_no_number_is_refused_and_not_taken_for_none(string code) =>
        Assert.Contains("\"l\"", Refusal("\n62\n5\n", $"\n{code}\nl\n"));

    [Theory]
    [InlineData("4O")]
    [InlineData("40.0")]
    [InlineData("4 0")]
    public void A_bad_group_code_is_refused_with_its_line_and_text(string code)
    {
        var message = Refusal("\n40\n7.5\n", $"\n{code}\n7.5\n");

        Assert.Contains("line 23, CIRCLE", message);
        Assert.Contains($"\"{code}\"", message);
    }

    [Fact]
    public void A_bad_unit_in_the_header_is_refused() => Assert.Contains("\"4,0\"", Refusal("\n70\n4\n", "\n70\n4,0\n"));

    private static string Refusal(string good, string bad)
    {
        Assert.Contains(good, Circle);
        return Files.RefusalOf(Encoding.ASCII.GetBytes(Circle.Replace(good, bad)));
    }
}
