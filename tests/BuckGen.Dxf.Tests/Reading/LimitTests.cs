using BuckGen.Dxf.Reading;
using BuckGen.Dxf.Tests.Support;

namespace BuckGen.Dxf.Tests.Reading;

public class LimitTests
{
    private static readonly string TwoLines = Sample.Entities($"{Sample.Line}|{Sample.Line}");

    [Fact]
    public void Too_many_bytes_are_refused_from_arrays_and_streams()
    {
        var limits = new DxfReadLimits { MaxBytes = 20 };
        Assert.Contains("20 bytes", Sample.Refused(TwoLines, limits).Message, StringComparison.Ordinal);
        using var stream = new MemoryStream(new byte[21]);
        Assert.Contains("20 bytes", Assert.Throws<DxfException>(() => DxfReader.Read(stream, limits)).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Too_many_entities_are_refused_once()
    {
        var fourLines = Sample.Entities(string.Join('|', Enumerable.Repeat(Sample.Line, 4)));
        var exception = Sample.Refused(fourLines, new() { MaxEntities = 1 });
        Assert.Contains("more than 1 entities", Assert.Single(exception.Faults).Message, StringComparison.Ordinal);
        Assert.Equal(2, Sample.Read(TwoLines, new() { MaxEntities = 2 }).Entities.Length);
    }

    [Theory]
    [InlineData("0 LWPOLYLINE|10 0|20 0|10 1|20 0|10 2|20 0")]
    [InlineData("0 POLYLINE|66 1|0 VERTEX|10 0|20 0|0 VERTEX|10 1|20 0|0 VERTEX|10 2|20 0|0 SEQEND|8 0")]
    [InlineData("0 SPLINE|71 3|11 0|21 0|11 5|21 1|11 6|21 6")]
    public void Too_many_vertices_are_refused(string tags)
    {
        var exception = Sample.Refused(Sample.Entities(tags), new() { MaxVertices = 2 });
        Assert.Contains("more than 2 vertices", exception.Message, StringComparison.Ordinal);
        Assert.Single(Sample.Read(Sample.Entities(tags), new() { MaxVertices = 3 }).Entities);
    }

    [Theory]
    [InlineData("0 LINE|8 A|10 2e11|20 0|11 1|21 0", 10)]
    [InlineData("0 LWPOLYLINE|10 0|20 0|10 1|20 -1e300", 14)]
    [InlineData("0 CIRCLE|10 0|20 0|40 1e12", 12)]
    public void Absurd_coordinates_are_refused_with_value_and_line(string tags, int line)
    {
        var exception = Sample.RefusedEntity(tags);
        Assert.Equal(line, exception.Line);
        Assert.Contains("limit of 100000000000", exception.Message, StringComparison.Ordinal);
    }
}
