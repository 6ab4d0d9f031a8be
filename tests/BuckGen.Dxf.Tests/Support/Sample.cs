using System.Text;
using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading;

namespace BuckGen.Dxf.Tests.Support;

/// <summary>Small DXF texts, written as "code value" words so that a test shows what matters and nothing else.</summary>
internal static class Sample
{
    public const string Line = "0 LINE|8 A|10 1|20 2|11 3|21 4";

    /// <summary>A file with an ENTITIES section that holds the given tags, separated by bars.</summary>
    public static string Entities(string tags) => Text($"0 SECTION|2 ENTITIES|{tags}|0 ENDSEC|0 EOF");

    /// <summary>A file with a header of the given tags and one line as its drawing.</summary>
    public static string Header(string tags, string entities = Line) =>
        Text($"0 SECTION|2 HEADER|{tags}|0 ENDSEC|0 SECTION|2 ENTITIES|{entities}|0 ENDSEC|0 EOF");

    /// <summary>Turns "10 2.5|20 3" into lines of code and value.</summary>
    public static string Text(string tags)
    {
        var text = new StringBuilder();
        foreach (var tag in tags.Split('|'))
        {
            var blank = tag.IndexOf(' ', tag.Length - tag.TrimStart().Length);
            text.Append(tag[..blank]).Append('\n').Append(tag[(blank + 1)..]).Append('\n');
        }

        return text.ToString();
    }

    public static DxfDrawing Read(string text, DxfReadLimits? limits = null) =>
        DxfReader.Read(Encoding.UTF8.GetBytes(text), limits);

    /// <summary>Reads the one entity that the tags describe.</summary>
    public static T ReadOne<T>(string tags)
        where T : DxfEntity => Assert.IsType<T>(Assert.Single(Read(Entities(tags)).Entities));

    public static DxfException Refused(string text, DxfReadLimits? limits = null) =>
        Assert.Throws<DxfException>(() => Read(text, limits));

    public static DxfException RefusedEntity(string tags) => Refused(Entities(tags));
}
