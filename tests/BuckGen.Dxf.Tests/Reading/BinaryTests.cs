using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading;
using BuckGen.Dxf.Tests.Support;

namespace BuckGen.Dxf.Tests.Reading;

public class BinaryTests
{
    private const string Tags =
        "0 SECTION|2 HEADER|9 $INSUNITS|70 4|0 ENDSEC|0 SECTION|2 ENTITIES|"
        + "0 CIRCLE|8 A|999 note|10 0.1|20 -2|40 3|1001 ACME|1040 7|0 ENDSEC|0 EOF";

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Both_binary_forms_are_read_like_text(bool wideCodes)
    {
        var drawing = DxfReader.Read(BinarySample.FromTags(Tags, wideCodes));
        Assert.Equal(4, drawing.InsertionUnits);
        Assert.Equal(new DxfCircle(new(0.1, -2), 3) { Layer = "A", Line = 15 }, Assert.Single(drawing.Entities));
        Assert.Equal(Sample.Read(Sample.Text(Tags)).Entities, drawing.Entities);
    }

    [Fact]
    public void Pictures_inside_are_skipped() =>
        Assert.Single(
            DxfReader.Read(BinarySample.FromTags(Tags.Replace("8 A", "310 xyz|8 A", StringComparison.Ordinal), true)).Entities);

    [Fact]
    public void A_number_that_is_not_finite_is_refused() =>
        Assert.Equal("CIRCLE",
            Refused(BinarySample.FromTags(Tags.Replace("40 3", "40 NaN", StringComparison.Ordinal), true)).EntityType);

    [Theory]
    [InlineData(1)]
    [InlineData(20)]
    [InlineData(40)]
    [InlineData(62)]
    public void A_binary_file_that_is_cut_off_is_refused(int missing) =>
        Assert.Contains("cut off", Refused(BinarySample.FromTags(Tags, true)[..^missing]).Message, StringComparison.Ordinal);

    [Fact]
    public void A_group_code_that_does_not_exist_is_refused() =>
        Assert.Contains(
            "group code 600",
            Refused(BinarySample.FromTags(Tags.Replace("8 A", "600 A", StringComparison.Ordinal), true)).Message,
            StringComparison.Ordinal);

    private static DxfException Refused(byte[] bytes) => Assert.Throws<DxfException>(() => DxfReader.Read(bytes));
}
