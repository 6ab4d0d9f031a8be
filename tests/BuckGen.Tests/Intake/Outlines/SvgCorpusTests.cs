using System.Text.Json;
using BuckGen.Geometry;
using BuckGen.Geometry.Curves;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Svg;
using Xunit;

namespace BuckGen.Tests.Intake.Outlines;

/// <summary>Every SVG file of the corpus against its known loops, area, bounds and centroid.</summary>
public class SvgCorpusTests
{
    private const double ChordError = 0.01;

    // Read rightly, but the truth only appears when duplicates, open ends or crossings are dealt with.
    private static readonly string[] LeftToHealing =
    [
        "svg/gp_flower.svg", "svg/h_dup_fill_stroke.svg", "svg/h_open_strokes.svg", "svg/h_pentagram_nonzero.svg",
    ];

    public static TheoryData<string> ToBeRead =>
        [.. Records().Where(r => !IsRejected(r) && !MayBeRefused(r)).Select(Name).Except(LeftToHealing)];

    public static TheoryData<string> ToBeRefused => [.. Records().Where(IsRejected).Select(Name).Except(LeftToHealing)];

    public static TheoryData<string> ToBeReadOrRefused => [.. Records().Where(MayBeRefused).Select(Name).Except(LeftToHealing)];

    [Theory]
    [MemberData(nameof(ToBeRead))]
    public void A_good_file_gives_the_known_outline(string file) => Compare(file, Read(file));

    [Theory]
    [MemberData(nameof(ToBeRefused))]
    public void A_bad_file_is_refused_in_one_line_that_names_it(string file)
    {
        var error = Assert.Throws<OutlineException>(() => Read(file));
        Assert.StartsWith(Path.GetFileName(file), error.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', error.Message);
    }

    [Theory]
    [MemberData(nameof(ToBeReadOrRefused))]
    public void A_doubtful_file_is_read_rightly_or_refused_in_one_line(string file)
    {
        Drawing drawing;
        try
        {
            drawing = Read(file);
        }
        catch (OutlineException error)
        {
            Assert.StartsWith(Path.GetFileName(file), error.Message, StringComparison.Ordinal);
            Assert.DoesNotContain('\n', error.Message);
            return;
        }

        Compare(file, drawing);
    }

    [Theory]
    [InlineData("svg/b_external_use.svg", "external-ignored", "left out: 4 (")]
    [InlineData("svg/b_singular_transform.svg", "collapsed", "flattened to nothing by their transform left out: 1 (")]
    [InlineData("svg/b_use_self.svg", "reference-loop", "left out: 2 (")]
    [InlineData("svg/ff_ampersand.svg", "units-assumed", "186.267 x 264.583 mm")]
    [InlineData("svg/h_72dpi_px.svg", "units-assumed", "72 px to the inch: then the page is 100 x 50 mm")]
    [InlineData("svg/h_90dpi_inkscape048.svg", "units-assumed", "90 px to the inch: then the page is 100 x 50 mm")]
    [InlineData("svg/h_clip_path.svg", "clip-ignored", "not applied: 1 (")]
    [InlineData("svg/h_no_size_viewbox_only.svg", "units-assumed", "gives no size")]
    [InlineData("svg/h_percent_size.svg", "units-assumed", "gives no size")]
    [InlineData("svg/h_text_live.svg", "text-ignored", "<text> left out: 1 (")]
    [InlineData("svg/lo_layers.svg", "unpainted-ignored", "neither fill nor stroke")]
    public void What_a_person_must_know_is_reported(string file, string kind, string words) =>
        Assert.Contains(Read(file).Notes, n => n.Kind == kind && n.Message.Contains(words, StringComparison.Ordinal));

    [Fact]
    public void The_corpus_is_there_in_full()
    {
        Assert.True(ToBeRead.Count >= 44, $"only {ToBeRead.Count} files to be read");
        Assert.True(ToBeRefused.Count >= 8, $"only {ToBeRefused.Count} files to be refused");
    }

    private static void Compare(string file, Drawing drawing)
    {
        var record = Records().Single(r => Name(r) == file);
        var truth = record.GetProperty("truth");
        Loop[] loops = [.. drawing.Paths.Where(p => p.Closed).Select(AsLoop).OfType<Loop>()];
        var region = Region.FromLoops(loops);
        var area = truth.GetProperty("area_evenodd_mm2").GetDouble();
        var length = truth.GetProperty("perimeter_mm").GetDouble();
        var box = truth.GetProperty("bbox_mm").EnumerateArray().Select(v => v.GetDouble()).ToArray();
        var (areaShare, bound) = (Tolerance(record, "area_rel"), Tolerance(record, "bbox_mm"));

        Assert.Equal(truth.GetProperty("closed_loops").GetInt32(), loops.Length);
        Assert.Equal(truth.GetProperty("outer_loops").GetInt32(), region.Islands.Length);
        Assert.Equal(truth.GetProperty("holes").GetInt32(), region.HoleCount);
        Assert.InRange(region.Area, area * (1 - areaShare), area * (1 + areaShare));
        Assert.Equal(length, region.Perimeter, length * Tolerance(record, "length_rel"));
        // The truth counts y down from the top of the page: sizes and left edges can be compared as they are.
        Assert.Equal(box[0], region.Bounds.MinX, bound);
        Assert.Equal(box[2], region.Bounds.MaxX, bound);
        Assert.Equal(box[3] - box[1], region.Bounds.Height, bound);

        var centroid = truth.GetProperty("centroid_from_lower_left_mm").EnumerateArray().Select(v => v.GetDouble()).ToArray();
        var found = Centroid(region) - region.Bounds.LowerLeft;
        Assert.Equal(centroid[0], found.X, Tolerance(record, "centroid_mm"));
        Assert.Equal(centroid[1], found.Y, Tolerance(record, "centroid_mm"));
        if (PageHeight(file) is { } page) Assert.Equal(page - box[3], region.Bounds.MinY, bound);
    }

    private static Loop? AsLoop(DrawnPath path)
    {
        Segment[] segments = [.. path.Curves.SelectMany(c => ArcFitting.Fit(c, ChordError).Pieces)];
        return segments.Length < 2 ? null : Loop.FromSegments(segments);
    }

    /// <summary>The centre of area, by cutting the arcs into short chords.</summary>
    private static Vec2 Centroid(Region region)
    {
        const int parts = 64;
        var (area, sum) = (0.0, new Vec2(0, 0));
        foreach (var s in region.Segments)
            for (var i = 0; i < (s.IsArc ? parts : 1); i++)
            {
                var n = s.IsArc ? parts : 1.0;
                var (a, b) = (s.PointAt(i / n), s.PointAt((i + 1) / n));
                area += a.Cross(b) / 2;
                sum += (a + b) * (a.Cross(b) / 6);
            }

        return sum * (1 / area);
    }

    private static double? PageHeight(string file) => file switch
    {
        "svg/h_mm_viewbox.svg" or "svg/os_gear.svg" => 60,
        "svg/h_viewbox_origin.svg" => 125,
        "svg/h_use_symbol.svg" or "svg/h_scaled_1e6.svg" => 80,
        "svg/h_transforms.svg" => 75,
        "svg/h_units_in.svg" => 63.5,
        _ => null,
    };

    private static Drawing Read(string file) =>
        SvgReader.Read(File.ReadAllBytes(Path.Combine(Corpus(), file)), Path.GetFileName(file));

    private static bool IsRejected(JsonElement record) => Expect(record) == "reject";

    private static bool MayBeRefused(JsonElement record) =>
        Expect(record) is "accept-or-clear-error" or "accept-with-warning-or-reject" or "repair-or-reject";

    private static string Expect(JsonElement record) => record.GetProperty("expect").GetString()!;

    private static string Name(JsonElement record) => record.GetProperty("file").GetString()!;

    private static double Tolerance(JsonElement record, string of) =>
        record.GetProperty("tolerance") is { ValueKind: JsonValueKind.Object } own && own.TryGetProperty(of, out var value)
            ? value.GetDouble()
            : of switch { "area_rel" => 0.001, "length_rel" => 0.002, _ => 0.05 };

    private static JsonElement[] Records()
    {
        using var manifest = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(Corpus(), "manifest.json")));
        var files = manifest.RootElement.GetProperty("files").Clone();
        return [.. files.EnumerateArray().Where(r => Name(r).StartsWith("svg/", StringComparison.Ordinal))];
    }

    private static string Corpus()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "BuckGen.sln"))) folder = folder.Parent;
        Assert.NotNull(folder);
        return Path.Combine(folder.FullName, "tests", "corpus");
    }
}
