using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading;
using BuckGen.Dxf.Tags;
using BuckGen.Dxf.Tests.Support;
using BuckGen.Dxf.Writing;

namespace BuckGen.Dxf.Tests.Writing;

public class RefusalTests
{
    private static readonly DxfCircle Circle = new(new(1, 2), 3);

    public static TheoryData<DxfEntity, string> Unwritable { get; } = new()
    {
        { Circle with { Invisible = true }, "hidden" },
        { Circle with { PaperSpace = true }, "paper sheet" },
        { Circle with { Extrusion = new(0, 0, -1) }, "face straight up" },
        { Circle with { Colour = 257 }, "colour is 257; it must be from 0 to 256" },
        { Circle with { Colour = -1 }, "colour is -1; it must be from 0 to 256" },
        { Circle with { Radius = 0 }, "radius is 0" },
        { Circle with { Radius = -1 }, "radius is -1" },
        { Circle with { Radius = double.NaN }, "finite" },
        { Circle with { Centre = new(1e10, 0) }, "10000000000" },
        { Circle with { Centre = new(0, 0, 1.5) }, "height is 1.5" },
        { Circle with { Radius = Math.BitDecrement(0.000001) }, "it must be at least 0.000001" },
        { Circle with { Centre = new(0, Math.BitDecrement(-1e9)) }, "at most 1000000000" },
        { new DxfLine(new(1, 2), new(1, 2)), "no length" },
        { new DxfLine(new(1.4999996, 2), new(1.5000004, 2)), "no length" }, // Both are written as 1.5.
        { new DxfLine(new(1, 2, 3), new(2, 2)), "height is 3" },
        { new DxfLine(new(1, 2), new(2, 2, 3)), "height is 3" },
        { new DxfArc(new(0, 0), 5, 0, 360), "use a circle" },
        { new DxfArc(new(0, 0), 5, 30.0000001, 29.9999999), "use a circle" }, // Both are written as 30.
        { new DxfArc(new(0, 0), 5, 359.9999999, 0), "use a circle" },
        { new DxfArc(new(0, double.NaN), 5, 0, 90), "finite" },
        { new DxfArc(new(0, 0), 0, 0, 90), "radius is 0" },
        { new DxfArc(new(0, 0), 5, double.NaN, 90), "finite" },
        { new DxfArc(new(0, 0), 5, 0, double.PositiveInfinity), "finite" },
        { new DxfPointEntity(new(double.NegativeInfinity, 0)), "finite" },
        { new DxfPolyline([new(0, 0, double.NaN), new(1, 1)], false), "finite" },
        { new DxfPolyline([new(0, 0), new(1, double.PositiveInfinity)], false), "finite" },
        { new DxfPolyline([new(0, 0), new(1, 1)], false) { Kind = DxfPolylineKind.Spatial }, "three-dimensional" },
        { new DxfPolyline([new(0, 0), new(1, 1)], false) { HasWidth = true }, "width" },
        { new DxfEllipse(new(0, 0), new(1, 0), 0.5, 0, 1), "not written" },
        { new DxfOther("ACME_WIDGET"), "not written" },
    };

    [Theory]
    [MemberData(nameof(Unwritable), DisableDiscoveryEnumeration = true)]
    public void What_cannot_be_written_is_refused_with_type_and_layer(DxfEntity entity, string why)
    {
        var exception = Drawings.Refused(entity with { Layer = "CUT" });
        Assert.Equal(entity.Type, exception.EntityType);
        Assert.Contains(why, exception.Message, StringComparison.Ordinal);
        Assert.Contains("layer CUT", exception.Message, StringComparison.Ordinal);
    }

    public static TheoryData<DxfEntity> JustWritable { get; } =
    [
        Circle with { Colour = 0 },
        Circle with { Colour = 256 },
        Circle with { Radius = 0.000001 },
        Circle with { Centre = new(1e9, -1e9), Radius = 1e9 },
        new DxfLine(new(0, 0), new(0.000001, 0)),
        new DxfLine(new(0, 0), new(0, 5)),
        new DxfArc(new(0, 0), 5, 30, 30.000001),
        new DxfArc(new(0, 0), 5, 30, 29.999999),
    ];

    [Theory]
    [MemberData(nameof(JustWritable), DisableDiscoveryEnumeration = true)]
    public void What_lies_at_a_limit_is_written_and_read_back(DxfEntity entity)
    {
        foreach (var version in Enum.GetValues<DxfVersion>())
        {
            var back = Assert.Single(DxfReader.Read(Drawings.Bytes(Drawings.Create(entity), version)).Entities);
            Assert.Equal(entity with { Colour = null }, back with { Colour = null, Line = 0 }); // 256 is read as "the layer's".
        }
    }

    [Theory]
    [InlineData("cut")]
    [InlineData("")]
    [InlineData("A B")]
    [InlineData("FRÄSEN")]
    [InlineData("A2345678901234567890123456789012")]
    public void A_layer_name_that_is_not_safe_everywhere_is_refused(string name)
    {
        Assert.Contains($"\"{name}\"", Drawings.Refused(Circle with { Layer = name }).Message, StringComparison.Ordinal);
        Assert.Throws<DxfException>(() => Drawings.Tags(Drawings.Create(Circle) with { Layers = [new(name)] }, DxfVersion.R12));
    }

    [Theory]
    [InlineData("A")]
    [InlineData("CUT_2-$B")]
    [InlineData("A234567890123456789012345678901")]
    public void A_safe_layer_name_is_written(string name) =>
        Assert.Contains($"8={name}", Drawings.EntityTags(Drawings.Create(Circle with { Layer = name }), DxfVersion.R12),
            StringComparison.Ordinal);

    [Theory]
    [InlineData(0)]
    [InlineData(256)]
    public void A_layer_colour_outside_the_table_is_refused(int colour) =>
        Assert.Contains(
            $"the colour of layer A is {colour}; it must be from 1 to 255",
            Assert.Throws<DxfException>(() =>
                Drawings.Tags(Drawings.Create(Circle) with { Layers = [new("A", colour)] }, DxfVersion.R12)).Message,
            StringComparison.Ordinal);

    [Fact]
    public void Nothing_is_written_without_a_drawing_a_place_to_write_to_or_a_form()
    {
        var drawing = Drawings.Create(Circle);
        Assert.Equal("drawing", Assert.Throws<ArgumentNullException>(() => Drawings.Tags(null!, DxfVersion.R12)).ParamName);
        Assert.Equal("sink",
            Assert.Throws<ArgumentNullException>(() => DxfWriter.Write(drawing, DxfVersion.R12, (IDxfTagSink)null!)).ParamName);
        Assert.Equal("stream",
            Assert.Throws<ArgumentNullException>(() => DxfWriter.Write(drawing, DxfVersion.R12, (Stream)null!)).ParamName);
        Assert.Contains(
            "R12 or R2000", Assert.Throws<ArgumentOutOfRangeException>(() => Drawings.Tags(drawing, (DxfVersion)7)).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_drawing_is_refused() =>
        Assert.Contains("empty", Assert.Throws<DxfException>(() => Drawings.Tags(new(), DxfVersion.R12)).Message,
            StringComparison.Ordinal);

    [Fact]
    public void A_placed_block_is_refused_and_an_unplaced_one_shows_nothing()
    {
        Assert.Equal("INSERT", Drawings.Refused(new DxfInsert("B", new(0, 0))).EntityType);
        var drawing = Drawings.Create(Circle);
        Assert.Equal(
            Drawings.Tags(drawing, DxfVersion.R12),
            Drawings.Tags(drawing with { Blocks = [new("B", default, [])] }, DxfVersion.R12));
    }

    [Fact]
    public void A_refused_drawing_leaves_the_stream_untouched()
    {
        using var stream = new MemoryStream();
        Assert.Throws<DxfException>(() =>
            DxfWriter.Write(Drawings.Create(Circle, Circle with { Radius = 0 }), DxfVersion.R12, stream));
        Assert.Equal(0, stream.Length);
    }
}
