using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using BuckGen.Cutting.Boards;
using BuckGen.Geometry.Tests;
using BuckGen.Output.Reports;
using BuckGen.Tests.Design.Bucks;
using Xunit;

namespace BuckGen.Tests.Output.Reports;

[Trait("Tier", "slow")]
public class SummaryTests
{
    public static TheoryData<string> Names => SampleJobs.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_listed_file_is_made_and_every_made_file_is_listed(string name)
    {
        var files = SampleJobs.Files(name);
        var summary = JsonNode.Parse(SampleJobs.Summary(name))!;

        Assert.Equal(files.Select(f => f.Path), summary["files"]!.AsArray().Select(f => f!.GetValue<string>()));
        var named = summary["layers"]!.AsArray().Concat(summary["boards"]!.AsArray()).Select(r => r!["file"]?.GetValue<string>())
            .Where(f => f is not null);
        Assert.All(named, f => Assert.Contains(f, files.Select(o => o.Path)));
        Assert.All(files, f => Assert.NotEmpty(f.Content));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_number_is_finite_and_has_at_most_four_decimals(string name)
    {
        using var summary = JsonDocument.Parse(SampleJobs.Summary(name));

        var numbers = Numbers(summary.RootElement).ToArray();
        Assert.NotEmpty(numbers);
        Assert.All(numbers, text =>
        {
            Assert.Matches(@"^-?\d+(\.\d{1,4})?$", text);
            Assert.NotEqual("-0", text);
        });
    }

    [Theory]
    [InlineData("withheld")]
    [InlineData("nothing left at all")]
    public void With_errors_only_the_summary_is_made(string name)
    {
        Assert.Equal(["report.html", "report.png", "summary.json"], SampleJobs.Files(name).Select(f => f.Path));
        var summary = JsonNode.Parse(SampleJobs.Summary(name))!;
        Assert.Contains("error", summary["findings"]!.AsArray().Select(f => f!["severity"]!.GetValue<string>()));
        Assert.All(summary["layers"]!.AsArray(), l => Assert.Null(l!["file"]));
    }

    [Fact]
    public void Forced_cut_files_are_made_in_spite_of_errors() =>
        Assert.Contains(SampleJobs.Files("forced"), f => f.Path == "layers/layer-01.dxf");

    [Fact]
    public void The_files_of_a_plain_buck_have_their_promised_names() =>
        Assert.Equal(
            ["layers/layer-01.dxf", "layers/layer-02.dxf", "layers/layer-03.dxf", "cut/board-01-mdf-12.dxf", "report.html",
                "report.png", "summary.json"],
            SampleJobs.Files("plain").Select(f => f.Path));

    [Fact]
    public void An_SVG_lies_beside_every_DXF()
    {
        var paths = SampleJobs.Files("awkward, with SVG").Select(f => f.Path).ToArray();

        var drawings = paths.Where(p => p.EndsWith(".dxf", StringComparison.Ordinal)).ToArray();
        Assert.NotEmpty(drawings);
        Assert.All(drawings, d => Assert.Contains(Path.ChangeExtension(d, ".svg"), paths));
    }

    [Fact]
    public void The_numbers_of_a_plain_buck_are_those_of_arithmetic()
    {
        var summary = JsonNode.Parse(SampleJobs.Summary("plain"))!;

        Assert.Equal(36, Number(summary["buck"]!["depth"]));
        Assert.Equal(0, Number(summary["buck"]!["depthMiss"]));
        Assert.Equal(6000, Number(summary["outline"]!["area"]));
        Assert.Equal(320, Number(summary["outline"]!["perimeter"]));
        var foot = 36 * PlainBuck.Tan5;
        Assert.Equal(100 + 2 * foot, Number(summary["footprint"]!["width"]), 1e-4);
        var lowest = summary["layers"]![0]!;
        Assert.Equal(6000 + 320 * foot + Math.PI * foot * foot, Number(lowest["area"]), 1e-3);
        Assert.Equal(320 + 2 * Math.PI * foot + 3 * Math.PI * 6.15, Number(lowest["cutLength"]), 1e-3);
        // The third layer is the top one, which has no dowel holes.
        Assert.Equal([(1, 2), (1, 2), (1, 2)],
            summary["dowels"]!.AsArray().Select(d => ((int)Number(d!["fromLayer"]), (int)Number(d["toLayer"]))));
    }

    [Fact]
    public void The_text_is_UTF_8_with_LF_and_ends_with_a_line_end()
    {
        var bytes = SampleJobs.Summary("awkward, with SVG");
        var text = Encoding.UTF8.GetString(bytes);

        Assert.EndsWith("}\n", text);
        Assert.DoesNotContain('\r', text);
        Assert.NotEqual(0xEF, bytes[0]);
        Assert.StartsWith("{\n  \"schema\": \"buckgen-summary/1\",\n  \"title\": \"An awkward one\"", text);
    }

    [Fact]
    public void A_rounded_edge_has_its_radius_and_a_sharp_one_none()
    {
        static JsonNode? Radius(double radius) => JsonNode.Parse(SummaryJson.Write(Summary.Create(
            CutPlan.Create(PlainBuck.Create(Shapes.Rectangle(100, 60), PlainBuck.Spec with { EdgeRadius = radius }), new()),
            "", [])).AsSpan())!["buck"]!["edgeRadius"];

        Assert.Equal(2.5, Number(Radius(2.5)));
        Assert.Null(Radius(0));
    }

    [Fact]
    public void What_is_no_summary_is_refused() =>
        Assert.All((string[])["null", "", "[]"],
            t => Assert.ThrowsAny<JsonException>(() => SummaryJson.Read([.. Encoding.UTF8.GetBytes(t)])));

    private static double Number(JsonNode? node) => node!.GetValue<double>();

    private static IEnumerable<string> Numbers(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(p => Numbers(p.Value)),
        JsonValueKind.Array => element.EnumerateArray().SelectMany(Numbers),
        JsonValueKind.Number => [element.GetRawText()],
        _ => [],
    };
}
