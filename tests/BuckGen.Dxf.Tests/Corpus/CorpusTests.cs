using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading;
using BuckGen.Dxf.Tests.Support;

namespace BuckGen.Dxf.Tests.Corpus;

public class CorpusTests
{
    // Damage that shows in the file itself, and the words that must name it. Other files to be rejected are sound DXF whose
    // drawing is unusable: that is for the reader's caller to see.
    public static TheoryData<string, string> Damaged { get; } = new()
    {
        { "b_decimal_comma", "\"0,5\"" },
        { "b_dwg", "DWG" },
        { "b_empty", "empty" },
        { "b_group_code_letter", "\"1O\"" },
        { "b_header_only", "no ENTITIES section" },
        { "b_huge_coord", "1E+300" },
        { "b_missing_codes", "line 19, LINE: group code 11" },
        { "b_missing_value_line", "line 43, LINE: \"LINE\"" },
        { "b_nan", "\"nan\"" },
        { "b_nul_bytes", "line 47" },
        { "b_overflow", "\"1e400\"" },
        { "b_png", "PNG" },
        { "b_spline_knots", "SPLINE" },
        { "b_truncated_entity", "inside LINE" },
        { "b_truncated_number", "inside VERTEX" },
        { "t_utf16", "UTF-16" },
    };

    private static readonly HashSet<string> Refused = [.. Damaged.Select(row => $"dxf/{row.Data.Item1}.dxf")];

    public static TheoryData<string> Sound { get; } =
        [.. CorpusFiles.Manifest().Select(file => file.File).Where(file => !Refused.Contains(file))];

    [Fact]
    public void The_corpus_is_there() => Assert.True(CorpusFiles.Manifest().Count >= 80);

    [Theory]
    [MemberData(nameof(Damaged))]
    public void A_damaged_file_is_refused_with_the_reason(string file, string reason) =>
        Assert.Contains(
            reason, Assert.Throws<DxfException>(() => DxfReader.Read(CorpusFiles.Bytes($"dxf/{file}.dxf"))).Message,
            StringComparison.Ordinal);

    [Theory]
    [MemberData(nameof(Sound))]
    public void A_sound_file_is_read(string file)
    {
        var drawing = DxfReader.Read(CorpusFiles.Bytes(file));
        Assert.Equal(file is "dxf/b_no_entities.dxf" or "dxf/ink_r12_shapes_lost.dxf", drawing.Entities.IsEmpty);
    }

    [Theory]
    [InlineData("ez_coast_20000", 20000)]
    [InlineData("b_lw_count", 4)]
    public void Polylines_have_all_their_vertices(string file, int count) => Assert.Equal(count, Outline(file).Vertices.Length);

    [Fact]
    public void The_binary_piece_has_the_vertices_of_the_same_piece_in_text() =>
        Assert.Equal(Outline("ez_puzzle_bulge_gt1").Vertices, Outline("ez_binary_r2000").Vertices, Near);

    [Fact]
    public void Names_outside_ASCII_are_read_in_each_encoding()
    {
        Assert.Contains(Read("ez_cp1252_r2000").Entities, entity => entity.Layer == "Außenkontur_é");
        Assert.All(Read("ez_unicode_escape_r2000").Entities, entity => Assert.Equal("контур", entity.Layer));
    }

    [Fact]
    public void A_hatch_has_its_boundaries()
    {
        var hatch = Assert.IsType<DxfHatch>(Assert.Single(Read("gd_hatch").Entities));
        Assert.Equal(2, hatch.Paths.Length);
    }

    private static DxfPolyline Outline(string name) => Assert.IsType<DxfPolyline>(Assert.Single(Read(name).Entities));

    private static bool Near(DxfVertex a, DxfVertex b) =>
        Math.Abs(a.X - b.X) < 1e-9 && Math.Abs(a.Y - b.Y) < 1e-9 && Math.Abs(a.Bulge - b.Bulge) < 1e-9;

    private static DxfDrawing Read(string name) => DxfReader.Read(CorpusFiles.Bytes($"dxf/{name}.dxf"));
}
