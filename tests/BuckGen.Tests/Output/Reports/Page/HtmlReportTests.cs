using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Prediction;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;
using BuckGen.Output.Files;
using BuckGen.Output.Reports;
using BuckGen.Output.Reports.Page;
using BuckGen.Tests.Design.Forming;
using BuckGen.Tests.Output.Pictures;
using Xunit;

namespace BuckGen.Tests.Output.Reports.Page;

/// <summary>
/// The report as text: well formed, closed to the outside, everything from a file escaped, findings and rings leading to each
/// other.
/// </summary>
[Trait("Tier", "slow")]
public partial class HtmlReportTests
{
    public static TheoryData<string> Names => SampleJobs.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void It_is_well_formed_and_asks_for_nothing(string name)
    {
        var page = Page(SampleJobs.Files(name));

        _ = Parsed(page);
        Assert.DoesNotContain("http", page.Replace("http-equiv", "", StringComparison.Ordinal)
            .Replace("http://www.w3.org", "", StringComparison.Ordinal));
        Assert.DoesNotMatch(@"\s(src|srcset|style|on\w+)=", page.Split("<script")[0]);
        Assert.Contains("default-src 'none'", page);
    }

    [Fact]
    public void The_policy_lets_in_its_own_style_and_script_and_no_other()
    {
        var design =
            BuckDesign.Create(Outline.FromRegion("plate", Formed.Rectangle(100, 60)),
                Formed.Spec(BuckKind.Male, 12, 5) with { Stock = [Formed.Mdf6] });
        var page = Page(OutputFiles.Create(CutPlan.Create(design, new()), new() { Model = true }));

        foreach (var (tag, directive) in (ReadOnlySpan<(string, string)>)[("style", "style-src"), ("script", "script-src")])
        {
            var text = page.Split($"<{tag}>")[1].Split($"</{tag}>")[0];
            Assert.Contains($"{directive} 'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)))}'",
                page);
        }
    }

    [Fact]
    public void What_comes_from_a_file_is_escaped()
    {
        const string Nasty = "<img src=x onerror=alert(1)> & \"quotes\" 'too'";
        var outline = Outline.FromRegion(Nasty, Formed.Rectangle(100, 60));
        var spec = Formed
            .Spec(BuckKind.Male, 12, 5) with
        {
            Stock = [new(Nasty, 6, 600, 400)],
            Checks = new() { Silenced = [new("corner-sharp", Nasty)] }
        };

        var page = Page(OutputFiles.Create(CutPlan.Create(BuckDesign.Create(outline, spec), new(Machine.Router)), new(Nasty)));

        Assert.DoesNotContain("<img", page);
        Assert.Equal(Nasty, Parsed(page).Descendants("h1").Single().Value);
    }

    [Fact]
    public void A_finding_leads_to_its_ring_and_the_ring_back()
    {
        var close = Region.FromLoops([Loop.Rectangle(new(0, 0, 60, 60)), Loop.Rectangle(new(62, 0, 122, 60))]);
        var plan = CutPlan
            .Create(BuckDesign
                .Create(Outline.FromRegion("close", close),
                    Formed.Spec(BuckKind.Male, 36, 5) with { OutlineAt = OutlineAt.Base }), new());

        var page = Parsed(Page(OutputFiles.Create(plan, new(), force: true)));

        var findings = page.Descendants("li")
            .Where(l => ((string?)l.Attribute("id"))?.StartsWith("finding-", StringComparison.Ordinal) == true).ToArray();
        Assert.Equal(plan.AllFindings.Length, findings.Length);
        var placed = findings.Where(f => f.Descendants("a").Any()).ToArray();
        Assert.NotEmpty(placed);
        Assert.All(placed, f =>
        {
            var ring = page.Descendants()
                .Single(e => (string?)e.Attribute("id") == ((string)f.Descendants("a").First().Attribute("href")!)[1..]);
            Assert.Equal("#" + (string)f.Attribute("id")!, (string)ring.Attribute("href")!);
        });
        Assert.Contains("web-between", findings.Single(f => f.Value.Contains("fold", StringComparison.Ordinal)).Value);
    }

    [Fact]
    public void Its_identifiers_are_single_and_its_links_lead_somewhere()
    {
        var files = SampleJobs.Files("with jigs and a panel");
        var page = Parsed(Page(files));

        var ids = page.Descendants().Attributes("id").Select(a => a.Value).ToArray();
        Assert.Equal(ids.Distinct(), ids);
        Assert.All(page.Descendants().Attributes("href").Select(a => a.Value), link =>
            Assert.True(link.StartsWith('#') ? ids.Contains(link[1..]) : files.Any(f => f.Path == link), link));
        Assert.Equal(files.Select(f => f.Path),
            SummaryJson.Read(files.Single(f => f.Path == OutputFiles.SummaryPath).Content).Files);
    }

    [Fact]
    public void Every_layer_jig_and_board_is_drawn()
    {
        var files = SampleJobs.Files("with jigs and a panel");
        var summary = SummaryJson.Read(files.Single(f => f.Path == OutputFiles.SummaryPath).Content);

        var captions = Parsed(Page(files)).Descendants("figcaption").Select(c => c.Value).ToArray();

        Assert.All(summary.Layers,
            l => Assert.Contains(captions, c => c.StartsWith($"Layer {l.Number}:", StringComparison.Ordinal)));
        Assert.All(summary.Accessories,
            a => Assert.Contains(captions, c => c.StartsWith($"{a.Name} {a.Number}:", StringComparison.Ordinal)));
        Assert.Equal(summary.Boards.Length, captions.Count(c => c.StartsWith("Board ", StringComparison.Ordinal)));
    }

    [Fact]
    public void The_jig_lifted_apart_has_its_bed_its_core_and_its_ring()
    {
        var figure = Parsed(Page(SampleJobs.Files("with jigs and a panel"))).Descendants("figure").Single(f =>
            f.Element("figcaption")!.Value.StartsWith("The trim jig lifted apart", StringComparison.Ordinal));

        Assert.Equal(["BED 1", "CORE 1", "RING 1", "RING 2"],
            figure.Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value));
    }

    [Fact]
    public void The_page_says_that_a_design_can_be_cut_when_nothing_was_found_and_only_then()
    {
        var said = SampleJobs.Names.Select(n => (string)n.Data).Select(SampleJobs.Files).Select(files =>
        {
            var none = Page(files).Contains("None: the design can be cut.", StringComparison.Ordinal);
            Assert.Equal(SummaryJson.Read(files.Single(f => f.Path == OutputFiles.SummaryPath).Content).Findings.IsEmpty, none);
            return none;
        }).Distinct();

        Assert.Equal(2, said.Count());
    }

    [Fact]
    public void A_wall_is_shown_when_its_prediction_converged_and_never_else()
    {
        var design = BuckDesign.Create(Outline.FromRegion("plate", Formed.Rectangle(100, 60)), Formed.Spec(BuckKind.Male, 12, 5));
        var part = ThicknessTests.Sheet(p => 0.2 + 0.8 * p.X / 100) with { MeanRange = new(0.9, 1.1) };

        var (done, broken) = (Words(part), Words(part with { IsConverged = false }));

        Assert.Contains("0.9 to 1.1 mm thick on average", done);
        Assert.Contains("Measure the first part.", done);
        Assert.DoesNotContain("did not converge", done);
        Assert.Equal(2, done.Split("<svg").Length - 1);
        Assert.Contains("did not converge; do not use it", broken);
        Assert.DoesNotContain("on average", broken);
        Assert.DoesNotContain("Measure the first part.", broken);
        Assert.DoesNotContain("<svg", broken);

        string Words(FormedPart wall)
        {
            var html = new Html();
            WallSection.Add(html, design with { Formed = wall }, wall);
            return html.ToString();
        }
    }

    [Theory]
    [InlineData("formed", "Formed sheet", "Buck")]
    [InlineData("awkward, with SVG", "Buck")]
    [InlineData("plain")]
    public void What_can_be_turned_is_named_and_its_numbers_are_whole(string name, params string[] models)
    {
        var page = Page(SampleJobs.Files(name));

        var buttons = Parsed(page).Descendants("button").Select(b => b.Value).ToArray();
        Assert.Equal(models, buttons);
        Assert.Equal(models.Length > 0, page.Contains("<canvas", StringComparison.Ordinal));
        Assert.Equal(models.Contains("Formed sheet"), page.Contains("Predicted wall", StringComparison.Ordinal));
        Assert.Equal(models.Contains("Formed sheet"), page.Contains("dark where it is thin", StringComparison.Ordinal));
        if (models.Length == 0)
        {
            Assert.DoesNotContain("id=\"models\"", page);
            return;
        }

        Assert.Contains(string.Join(" and ", models.Select(m => m.ToLowerInvariant())) + " in three dimensions", page);
        using var json = JsonDocument
            .Parse(page.Split("<script id=\"models\" type=\"application/json\">")[1].Split("</script>")[0]);
        Assert.All(json.RootElement.EnumerateArray().Zip(models), m =>
        {
            int Count(string what) => m.First.GetProperty(what).GetBytesFromBase64().Length / 4;
            var corners = m.First.GetProperty("triangles").GetBytesFromBase64().Chunk(4).Select(b => BitConverter.ToUInt32(b));
            Assert.Equal(0, Count("points") % 3);
            Assert.Equal((uint)(Count("points") / 3 - 1), corners.Max());
            Assert.Equal(0, Count("triangles") % 3);
            Assert.Equal(m.Second == "Buck" ? 0 : Count("points") / 3, Count("colours"));
        });
    }

    private static string Page(IEnumerable<OutputFile> files) =>
        Encoding.UTF8.GetString([.. files.Single(f => f.Path == OutputFiles.ReportPath).Content]);

    /// <summary>As XML, once what HTML leaves open is closed and what is no markup is out.</summary>
    private static XElement Parsed(string page)
    {
        var body = ScriptOrStyle().Replace(page, "").Replace("<!DOCTYPE html>", "", StringComparison.Ordinal)
            .Replace("<br>", "<br/>", StringComparison.Ordinal).Replace(" hidden ", " hidden=\"\" ", StringComparison.Ordinal)
            .Replace(" hidden>", " hidden=\"\">", StringComparison.Ordinal);
        return XElement.Parse(Meta().Replace(body, "<$1/>"), LoadOptions.PreserveWhitespace);
    }

    [GeneratedRegex("<(script|style)[^>]*>.*?</\\1>", RegexOptions.Singleline)]
    private static partial Regex ScriptOrStyle();

    [GeneratedRegex("<(meta [^>]*)>")]
    private static partial Regex Meta();
}
