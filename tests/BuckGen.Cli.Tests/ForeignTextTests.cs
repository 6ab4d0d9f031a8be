using System.Text;
using System.Text.RegularExpressions;
using BuckGen.Tests.ForeignTexts;
using Xunit;

namespace BuckGen.Cli.Tests;

/// <summary>
/// Text of others on the console: it is printed, whole and visible, and can neither steer the terminal nor be taken for markup.
/// </summary>
[Trait("Tier", "slow")]
public sealed partial class ForeignTextTests : Workshop
{
    private const int MaxMessageLength = 300;

    public static TheoryData<string> Names => ForeignText.Names;

    /// <summary>The texts that a file in UTF-8 can hold.</summary>
    public static TheoryData<string> Writable =>
        [.. ForeignText.All.Where(t => string.Concat(t.Text.EnumerateRunes()) == t.Text).Select(t => t.Name)];

    [Theory]
    [MemberData(nameof(Writable))]
    public void Every_name_in_a_job(string name)
    {
        var text = ForeignText.Find(name);
        Write("plate.svg", Plate);
        Write("job.toml", $"""
            title = {Toml($"title {text.Text}")}
            [outline]
            file = "plate.svg"
            [buck]
            depth = "24mm"
            [[stock]]
            name = {Toml(text.Text)}
            thickness = "12mm"
            price = 10
            [rates]
            currency = {Toml($"money {text.Text}")}
            [cutting]
            machine = "router"
            [checks]
            silence = [["board-size-assumed", {Toml($"reason {text.Text}")}]]
            """);

        var run = Cli.Run("make", At("job.toml"), "--out", At("out"));

        Assert.Equal("", run.Error);
        Assert.Equal(0, run.Status);
        AssertVisible(run, $"title {text.Shown}", $"money {text.Shown}", text.Shown);
        AssertVisible(Cli.Run("make", At("job.toml"), "--out", At("out"), "--json"));
        AssertVisible(Cli.Run("check", At("job.toml")));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_word_on_the_command_line_that_is_not_understood(string name)
    {
        var text = ForeignText.Find(name);
        var drawing = Write("plate.svg", Plate);

        Refused(text.Shown, "catalog", text.Text);
        Refused(text.Shown, "completion", text.Text);
        Refused(text.Shown, "inspect", drawing, "--units", text.Text);
        Refused(text.Shown, "buck", drawing, "--depth", "24", "--stock", "12", "--plastic", text.Text);
        Refused(text.Shown, "buck", drawing, "--depth", "24", "--stock", "12", "--formats", text.Text);
        Refused(text.Shown, "buck", drawing, "--depth", $"x{text.Text}", "--stock", "12");
        Refused(text.Shown.Split(',')[0], "buck", drawing, "--depth", "24", "--stock", $"x{text.Text}");
        Refused(FileName(text.Shown), "inspect", At($"no {FileName(text.Text)}"));

        void Refused(string says, params string[] args)
        {
            var run = Cli.Run(args);
            Assert.Equal(2, run.Status);
            Assert.Equal("", run.Out);
            // What begins with an at sign is a file of arguments.
            AssertVisible(run, says.TrimStart('@'));
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_program_s_own_parser_and_its_directives(string name)
    {
        var text = ForeignText.Find(name);

        foreach (var args in
            (string[][])[[text.Text], ["--", text.Text], [$"--{text.Text}"], ["[diagram]", "catalog", text.Text],
                ["[suggest]", $"buckgen {text.Text} "], ["buck", "a", text.Text], ["buck", "--help", text.Text]])
            AssertVisible(Cli.Run(args));
    }

    [Theory]
    [MemberData(nameof(Writable))]
    public void A_catalog_of_one_s_own(string name)
    {
        var text = ForeignText.Find(name);
        var file = Write("my.toml", $"""
            [[plastic]]
            id = {Toml($"id{text.Text}")}
            like = "petg"
            name = {Toml($"name {text.Text}")}
            source = {Toml($"source {text.Text}")}
            forming-normal = [140, 150]
            """);

        var all = Cli.Run("catalog", "--catalog", file);
        // Not every text may be the word for a plastic.
        if (all.Status == 2)
        {
            AssertVisible(all);
            return;
        }

        AssertVisible(all, $"id{text.Shown}", $"source {text.Shown}");
        AssertVisible(Cli.Run("catalog", $"id{text.Text}", "--catalog", file), $"id{text.Shown}: name {text.Shown}",
            $"source {text.Shown}");
        var json = Cli.Run("catalog", $"id{text.Text}", "--catalog", file, "--json");
        AssertVisible(json);
        Assert.Equal($"name {text.Text}", json.Json.GetProperty("plastic")[0].GetProperty("name").GetString());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Layers_and_ids_of_a_drawing(string name)
    {
        var text = ForeignText.Find(name);
        // A DXF has a line for a text: what breaks lines can't be in it.
        var layer = text.Text.Replace("\r", "", StringComparison.Ordinal).Replace("\n", "", StringComparison.Ordinal);
        var dxf = Write("plate.dxf", Encoding.UTF8.GetBytes(
            $"  0\nSECTION\n  2\nENTITIES\n  0\nCIRCLE\n  8\nA\n 10\n0\n 20\n0\n 40\n20\n  "
            + $"0\n{(layer.Trim().Length == 0 ? "X" : layer.Trim())}\n  8\n{layer}\n  0\nLINE\n  8\n{layer}\n 10\n50\n "
            + "20\n0\n 11\n60\n 21\n0\n  0\nENDSEC\n  0\nEOF\n"));
        AssertVisible(Cli.Run("inspect", dxf));
        AssertVisible(Cli.Run("inspect", dxf, "--json"));
        AssertVisible(Cli.Run("inspect", dxf, "--layers", $"no {text.Text}"));

        var id = string
            .Concat(text.Text.EnumerateRunes().Where(r => r.Value is 9 or 10 or 13 or >= 32 and <= 0xFFFD or >= 0x10000))
            .Replace("\uFFFD", "", StringComparison.Ordinal);
        var svg = Write("plate.svg",
            Plate.Replace("<circle",
                $"<text id=\"{System.Security.SecurityElement.Escape(id)}\" "
                + $"class=\"{System.Security.SecurityElement.Escape(id)}\" x=\"5\" "
                + $"y=\"5\">{System.Security.SecurityElement.Escape(id)}</text><image "
                + $"id=\"{System.Security.SecurityElement.Escape(id)}\" "
                + $"href=\"{System.Security.SecurityElement.Escape(id)}\" width=\"9\" height=\"9\"/><circle",
                StringComparison.Ordinal));
        AssertVisible(Cli.Run("inspect", svg));
        AssertVisible(Cli.Run("buck", svg, "--depth", "12", "--stock", "12", "--out", At("out")));
    }

    [Theory]
    [MemberData(nameof(Writable))]
    public void Names_of_files_and_folders(string name)
    {
        var text = ForeignText.Find(name);
        var (part, shown) = (FileName(text.Text), FileName(text.Shown));
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows takes few of these names");
        var drawing = Write($"x{part}.svg", Plate);

        AssertVisible(Cli.Run("inspect", drawing), $"x{shown}.svg");
        AssertVisible(Cli.Run("buck", drawing, "--depth", "24", "--stock", "12", "--out", At($"out{part}")), $"out{shown}");
        AssertVisible(Cli.Run("new", At($"y{part}.toml"), "--outline", $"x{part}.svg"), $"y{shown}.toml");
        AssertVisible(Cli.Run("make", At($"y{part}.toml"), "--out", At($"made{part}")), $"made{shown}");
        AssertVisible(Cli.Run("new", At($"y{part}.toml")), $"y{shown}.toml");
    }

    [Theory]
    [InlineData(200)]
    [InlineData(100_000)]
    public void A_long_name_is_cut_in_its_middle_and_the_remedy_stays(int length)
    {
        var run = Cli.Run("buck", Write("plate.svg", Plate), "--depth", "24", "--stock", new string('x', length));

        run.AssertRefused("buckgen: The stock 'xxx", "see 'buckgen catalog'.");
        Assert.InRange(run.Error.Length, 0, MaxMessageLength + 1);
        Assert.Equal(length > 250, run.Error.Contains(" [...] ", StringComparison.Ordinal));
    }

    [Fact]
    public void A_person_s_terminal_gets_colours_but_no_codes_of_others()
    {
        Write("plate.svg", Plate);
        Write("job.toml", PlateJob.Replace("A plate", @"\u001B[2J]", StringComparison.Ordinal));
        using var output = new StringWriter { NewLine = "\n" };

        CommandLine.Run(["make", At("job.toml"), "--out", At("out")], new(output, output, OutRedirected: false));

        Assert.Contains(@"\u001B[2J]", output.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("\e[2J", output.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Only_the_printer_and_the_terminal_know_the_console()
    {
        var sources = Directory.GetFiles(Path.Combine(Repository.Root, "src", "BuckGen.Cli"), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .ToArray();

        Assert.InRange(sources.Length, 30, 1000);
        Assert.Equal(["Printer.cs", "Terminal.cs"], sources.Where(f => ConsoleUse().IsMatch(File.ReadAllText(f)))
            .Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal));
    }

    [GeneratedRegex(@"\bIAnsiConsole\b|\bAnsiConsole\b|\bMarkup|new Table\(|\.Error\.Write|\.Out\.WriteLine")]
    private static partial Regex ConsoleUse();

    /// <summary>Nothing hidden was printed, messages have their length, and these words can be read.</summary>
    private static void AssertVisible(Cli run, params string[] says)
    {
        Assert.NotEqual(3, run.Status);
        Assert.Null(ForeignText.Hidden(run.Out, "\n"));
        Assert.Null(ForeignText.Hidden(run.Error, "\n"));
        Assert.All(run.Error.Split('\n'), line => Assert.InRange(line.Length, 0, MaxMessageLength));
        // Lines are wrapped wherever the console is too narrow.
        var read = Squeezed(run.Out + run.Error);
        Assert.All(says, s => Assert.Contains(Squeezed(s), read, StringComparison.Ordinal));
    }

    /// <summary>A file's name may hold everything but these two.</summary>
    private static string FileName(string text) =>
        text.Replace('/', '_').Replace("\0", "_", StringComparison.Ordinal).Replace(@"\u0000", "_", StringComparison.Ordinal);

    private static string Squeezed(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    /// <summary>The text as a value in TOML.</summary>
    private static string Toml(string text) =>
        $"\"{string.Concat(text.EnumerateRunes().Select(r => Rune.IsLetterOrDigit(r) ? r.ToString() : $"\\U{r.Value:X8}"))}\"";
}
