using System.IO.Compression;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Design.Specs;
using BuckGen.Intake.Reading;
using BuckGen.Output.Files;
using BuckGen.References.Tests.Support;

namespace BuckGen.References.Tests.Packages;

/// <summary>What is packed can be installed on another machine and does there what it does here.</summary>
public sealed partial class PackageTests(PackedFeed feed) : IClassFixture<PackedFeed>
{
    private static readonly string Sign = Path.Combine(RepositoryFolder.Path, "examples", "boathouse-sign");

    [Theory]
    [InlineData("BuckGen", "lib/net10.0/BuckGen.Core")]
    [InlineData("BuckGen.Geometry", "lib/net10.0/BuckGen.Geometry")]
    [InlineData("BuckGen.Physics", "lib/net10.0/BuckGen.Physics")]
    [InlineData("BuckGen.Dxf", "lib/net10.0/BuckGen.Dxf")]
    [InlineData("BuckGen.Cli", "tools/net10.0/any/buckgen")]
    public void A_package_says_what_it_is_and_has_all_that_belongs_to_it(string id, string assembly)
    {
        feed.Need();
        using var package = ZipFile.OpenRead(feed.Package(id));
        string[] wanted = ["README.md", "CHANGELOG.md", "icon.png", $"{assembly}.dll", $"{assembly}.xml"];
        Assert.Empty(wanted.Except(package.Entries.Select(e => e.FullName)));
        // Its letters, in pictures, are the work of others and bring their licence.
        if (id is "BuckGen" or "BuckGen.Cli") Assert.Contains("letters-licence.txt", package.Entries.Select(e => e.FullName));
        var about = Metadata(package, id);
        Assert.Equal("MIT", about("license"));
        Assert.Equal("README.md", about("readme"));
        Assert.Equal("icon.png", about("icon"));
        Assert.All((string[])["description", "tags", "authors", "releaseNotes"], word => Assert.NotEmpty(about(word)));
        using var symbols = ZipFile.OpenRead(feed.Package(id, "snupkg"));
        Assert.Contains($"{assembly}.pdb", symbols.Entries.Select(e => e.FullName));
    }

    [Fact]
    public void Nothing_but_the_libraries_and_the_program_is_packed()
    {
        feed.Need();
        Assert.Equal(5, Directory.GetFiles(Path.GetDirectoryName(feed.Package("BuckGen"))!, "*.nupkg").Length);
    }

    /// <summary>A path of the build machine in an assembly would make it another one on the next machine.</summary>
    [Theory]
    [InlineData("BuckGen", "lib/net10.0/BuckGen.Core.dll")]
    [InlineData("BuckGen.Geometry", "lib/net10.0/BuckGen.Geometry.dll")]
    [InlineData("BuckGen.Physics", "lib/net10.0/BuckGen.Physics.dll")]
    [InlineData("BuckGen.Dxf", "lib/net10.0/BuckGen.Dxf.dll")]
    [InlineData("BuckGen.Cli", "tools/net10.0/any/buckgen.dll")]
    public void No_path_of_this_machine_is_in_an_assembly(string id, string assembly)
    {
        feed.Need();
        using var package = ZipFile.OpenRead(feed.Package(id));
        using var content = new MemoryStream();
        using (var entry = package.GetEntry(assembly)!.Open()) entry.CopyTo(content);
        Assert.Equal(-1, content.ToArray().AsSpan().IndexOf(System.Text.Encoding.UTF8.GetBytes(RepositoryFolder.Path)));
    }

    [Fact]
    public void A_fresh_project_makes_the_same_files_with_the_package_as_these_tests_without_it()
    {
        feed.Need();
        using var project = new ScratchFolder();
        File.Copy(Path.Combine(Sign, "outline.svg"), project.File("sign.svg"));
        RunSnippet(project, "BuckGen");

        var outline = OutlineReader.Read(File.ReadAllBytes(project.File("sign.svg")), "sign.svg");
        var design =
            BuckDesign.Create(outline, new BuckSpec { Depth = 12, Stock = [new("MDF 6", 6.0)] },
                cancellation: TestContext.Current.CancellationToken);
        var files = OutputFiles.Create(CutPlan.Create(design, new CuttingSpec(Kerf: 0.2)), new OutputOptions())
            .Where(f => f.Path.EndsWith(".dxf", StringComparison.Ordinal)).ToArray();
        Assert.NotEmpty(files);
        Assert.All(files, f => Assert.Equal([.. f.Content], File.ReadAllBytes(project.File($"sign/{f.Path}"))));
    }

    [Fact]
    public void A_fresh_project_reads_and_writes_with_the_DXF_package()
    {
        feed.Need();
        using var project = new ScratchFolder();
        Assert.StartsWith("CUT: a circle of radius 20", RunSnippet(project, "BuckGen.Dxf"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_fresh_project_offsets_with_the_geometry_package()
    {
        feed.Need();
        using var project = new ScratchFolder();
        // A disc of 25 mm: pi times 25 squared.
        Assert.StartsWith("1963.5 mm²", RunSnippet(project, "BuckGen.Geometry"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_package_shows_the_same_program_as_the_readme() =>
        Assert.Equal(Snippet("README.md"), Snippet("src/BuckGen/README.md"));

    [Fact]
    public void The_tool_is_installed_and_makes_an_example()
    {
        feed.Need();
        using var place = new ScratchFolder();
        feed.Run(place.Path, "tool", "install", "BuckGen.Cli", "--version", PackedFeed.Version, "--tool-path", place.Path,
            "--configfile", feed.Settings);
        var tool = new Reference(Path.Combine(place.Path, "buckgen"), ["--version"], "see what 'dotnet tool install' said");
        Assert.StartsWith(PackedFeed.Version, tool.Run(TimeSpan.FromSeconds(60), "--version").Output, StringComparison.Ordinal);

        foreach (var file in (string[])["job.toml", "outline.svg"])
            File.Copy(Path.Combine(Sign, file), place.File($"sign/{file}"));
        var made = tool.Run(TimeSpan.FromSeconds(120), "make", place.File("sign/job.toml"));
        Assert.True(made is { ExitCode: 0, Error: "" }, made.All);
        Assert.NotEmpty(Directory.GetFiles(Path.Combine(place.Path, "sign", "out", "cut"), "*.dxf"));
    }

    /// <summary>Makes a project of the C# in the package's README, runs it and returns what it printed.</summary>
    private string RunSnippet(ScratchFolder project, string id)
    {
        File.WriteAllText(project.File("Program.cs"), Snippet($"src/{id}/README.md"));
        File.Copy(feed.Settings, project.File("nuget.config"));
        File.WriteAllText(project.File("Fresh.csproj"), $"""
            <Project Sdk="Microsoft.NET.Sdk">
              <PropertyGroup>
                <OutputType>Exe</OutputType>
                <TargetFramework>net10.0</TargetFramework>
                <ImplicitUsings>enable</ImplicitUsings>
              </PropertyGroup>
              <ItemGroup><PackageReference Include="{id}" Version="{PackedFeed.Version}" /></ItemGroup>
            </Project>
            """);
        return feed.Run(project.Path, "run").Output;
    }

    private static string Snippet(string readme) =>
        Fence().Match(File.ReadAllText(Path.Combine(RepositoryFolder.Path, readme))).Groups[1].Value;

    private static Func<string, string> Metadata(ZipArchive package, string id)
    {
        using var text = package.GetEntry($"{id}.nuspec")!.Open();
        var about = XDocument.Load(text).Root!.Elements().Single();
        return word => about.Elements().Single(e => e.Name.LocalName == word).Value;
    }

    [GeneratedRegex(@"^```csharp\n(.*?)^```", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Fence();
}
