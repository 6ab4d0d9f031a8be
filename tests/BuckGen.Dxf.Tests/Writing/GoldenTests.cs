using System.Text;
using BuckGen.Dxf.Tests.Support;
using Snapshooter.Xunit3;

namespace BuckGen.Dxf.Tests.Writing;

public class GoldenTests
{
    [Fact]
    public void The_whole_R12_file_stays_as_it_was() => Snapshot.Match(Text(DxfVersion.R12));

    [Fact]
    public void The_whole_R2000_file_stays_as_it_was() => Snapshot.Match(Text(DxfVersion.R2000));

    [Theory]
    [InlineData(DxfVersion.R12, "tr-TR")]
    [InlineData(DxfVersion.R12, "de-DE")]
    [InlineData(DxfVersion.R2000, "tr-TR")]
    [InlineData(DxfVersion.R2000, "de-DE")]
    public void Bytes_are_the_same_under_every_culture(DxfVersion version, string culture) =>
        Assert.Equal(
            Drawings.Under("en-US", () => Drawings.Bytes(Drawings.Panel, version)),
            Drawings.Under(culture, () => Drawings.Bytes(Drawings.Panel, version)));

    [Theory]
    [InlineData(DxfVersion.R12)]
    [InlineData(DxfVersion.R2000)]
    public void Every_line_ends_with_CRLF_and_is_ASCII(DxfVersion version)
    {
        var text = Encoding.Latin1.GetString(Drawings.Bytes(Drawings.Panel, version));
        Assert.EndsWith("  0\r\nEOF\r\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain("\r\r", text, StringComparison.Ordinal);
        Assert.Equal(text.Count(c => c == '\n'), text.Split("\r\n").Length - 1);
        Assert.All(text, c => Assert.True(c is '\r' or '\n' or (>= ' ' and <= '~')));
    }

    // One tag a line reads better in a snapshot than the file's own two.
    private static string Text(DxfVersion version) => string.Join('\n', Drawings.Tags(Drawings.Panel, version)) + "\n";
}
