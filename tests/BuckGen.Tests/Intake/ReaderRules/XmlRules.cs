using System.Text;
using BuckGen.Intake.Reading;
using Xunit;
using static BuckGen.Tests.Intake.ReaderRules.Files;

namespace BuckGen.Tests.Intake.ReaderRules;

/// <summary>Hostile XML costs little, and nothing outside the file is ever opened.</summary>
public class XmlRules
{
    private const string Disc = "<circle cx='50' cy='50' r='10'/>";

    [Fact]
    public void Entities_of_the_file_itself_are_put_in() =>
        Assert.Equal([45, 45, 10, 10], BoxOf(SvgFile("<circle cx='50' cy='50' r='&r;'/>", "<!DOCTYPE svg [<!ENTITY r '5'>]>")));

    [Fact]
    public void An_entity_from_another_file_is_not_opened()
    {
        // The file is there and could be read; if it were, its line would show in the message of the broken path.
        var secret = typeof(XmlRules).Assembly.Location;
        var svg = SvgFile($"<path d='M0 0H10V10z'/><path d='&x;'/>{Disc}",
            $"<!DOCTYPE svg [<!ENTITY x SYSTEM 'file://{secret}'>]>");

        var message = RefusalOf(svg);

        Assert.StartsWith("test.dxf", message);
        Assert.DoesNotContain("MZ", message);
    }

    [Theory]
    [InlineData("<!DOCTYPE svg SYSTEM 'file:///nowhere/at/all.dtd'>")]
    [InlineData("<!DOCTYPE svg PUBLIC '-//W3C//DTD SVG 1.1//EN' 'http://nowhere.invalid/svg11.dtd'>")]
    [InlineData("<!DOCTYPE svg [<!ENTITY % p SYSTEM 'http://nowhere.invalid/p.ent'> %p;]>")]
    public void An_external_DTD_is_not_asked_for(string doctype) => Assert.Equal([40, 40, 20, 20], BoxOf(SvgFile(Disc, doctype)));

    [Fact]
    public void Entities_that_grow_without_end_are_refused()
    {
        var grow = string
            .Concat(Enumerable.Range(1, 20)
                .Select(i => $"<!ENTITY e{i} '{string.Concat(Enumerable.Repeat($"&e{i - 1};", 10))}'>"));

        Assert.Contains("100000 characters",
            RefusalOf(SvgFile($"<desc>&e20;</desc>{Disc}", $"<!DOCTYPE svg [<!ENTITY e0 'ten letters'>{grow}]>")));
    }

    [Fact]
    public void An_entity_that_holds_itself_is_refused() =>
        Assert.Contains("broken XML",
            RefusalOf(SvgFile($"<desc>&a;</desc>{Disc}", "<!DOCTYPE svg [<!ENTITY a '&b;'><!ENTITY b '&a;'>]>")));

    [Theory]
    [InlineData("<g>", "</g>", "deeper than 200 levels")]
    [InlineData("<a b='", "'/>", "broken XML")]
    [InlineData("<style>a{", "}</style>", "deeper than 200 levels")]
    public void A_hundred_thousand_levels_are_refused_and_not_recursed_into(string open, string close, string words) =>
        Assert.Contains(words,
            RefusalOf(SvgFile(string.Concat(Enumerable.Repeat(open, 100_000)) + Disc
                + string.Concat(Enumerable.Repeat(close, 100_000)))));

    [Theory]
    [InlineData("transform='", "scale(", ")'")]
    [InlineData("style='fill:", "url(", ")'")]
    public void Deep_brackets_in_an_attribute_are_refused(string before, string bracket, string after) =>
        Assert.Contains("line 1",
            RefusalOf(SvgFile($"<g {before}{string.Concat(Enumerable.Repeat(bracket, 100_000))}{after}>{Disc}</g>")));

    [Fact]
    public void Very_many_kinds_of_unknown_elements_cost_little_more_than_one()
    {
        var outline = Read(SvgFile(string.Concat(Enumerable.Range(0, 50_000).Select(i => $"<u{i}/>")) + Disc));

        Assert.Equal(50_000, outline.Notes.Length);
    }

    [Theory]
    [InlineData("windows-1252", 1252)]
    [InlineData("ISO-8859-1", 28591)]
    [InlineData("utf-8", 65001)]
    public void Names_are_read_in_the_encoding_that_the_file_declares(string name, int codePage)
    {
        var text = $"<?xml version='1.0' encoding='{name}'?><svg xmlns='http://www.w3.org/2000/svg' width='100mm' "
            + "height='100mm' viewBox='0 0 100 100'>"
            + "<path id='Größe' d='M0 0H10V10H0L10 10'/></svg>";
        var encoding = CodePagesEncodingProvider.Instance.GetEncoding(codePage) ?? Encoding.GetEncoding(codePage);

        var outline =
            OutlineReader.Read(
                encoding.GetBytes(text.Replace("M0 0H10V10H0L10 10", "M0 0H10V10H0z")
                    .Replace("<path", "<text id='Größe'>a</text><path")), "a.svg");

        Assert.Contains("text #Größe", Assert.Single(outline.Notes).Message);
    }
}
