using BuckGen.Cutting.Drilling;
using Snapshooter.Xunit3;
using Xunit;

namespace BuckGen.Tests.Cutting.Drilling;

public class CsvTests
{
    [Fact]
    public void The_table_stays_as_it_was() =>
        Snapshot.Match(DrillCsv.Write(Holes.Few).Text().Replace("\r\n", "\n", StringComparison.Ordinal));

    [Fact]
    public void Lines_end_as_RFC_4180_says()
    {
        var text = DrillCsv.Write(Holes.Few).Text();
        Assert.Equal(Holes.Few.Length + 1, text.Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Length);
        Assert.DoesNotContain('\n', text.Replace("\r\n", "", StringComparison.Ordinal));
        Assert.EndsWith("\r\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_reason_over_two_lines_stays_in_one_line() =>
        Assert.EndsWith(
            ",1,3.0 mm,one\\ntwo\r\n", DrillCsv.Write([new(new(1, 2), 3, 4, 1, "one\ntwo")]).Text(), StringComparison.Ordinal);

    [Fact]
    public void The_header_stands_without_holes() =>
        Assert.Equal("x,y,diameter,depth,layer,drill,reason\r\n", DrillCsv.Write([]).Text());

    [Fact]
    public void Order_of_holes_and_culture_do_not_matter() =>
        Assert.Equal(DrillCsv.Write(Holes.Few), Holes.Under("de-DE", () => DrillCsv.Write([.. Holes.Few.Reverse()])));
}
