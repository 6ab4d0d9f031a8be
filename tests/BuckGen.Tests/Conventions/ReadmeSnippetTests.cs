using System.Runtime.CompilerServices;
using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Design.Specs;
using BuckGen.Intake.Reading;
using BuckGen.Output.Files;
using BuckGen.Output.Folders;
using Xunit;

namespace BuckGen.Tests.Conventions;

/// <summary>Tests that move to another current folder run alone.</summary>
[CollectionDefinition(nameof(CurrentFolder), DisableParallelization = true)]
public sealed class CurrentFolder;

/// <summary>The program in the README is the one that runs here, line by line.</summary>
[Collection(nameof(CurrentFolder))]
public sealed class ReadmeSnippetTests
{
    [Fact]
    public void The_program_in_the_readme_runs_as_it_stands_there()
    {
        var source = File.ReadAllLines(ThisFile());
        var readme = Path.Combine(Path.GetDirectoryName(ThisFile())!, "..", "..", "..", "README.md");
        var snippet = File.ReadAllText(readme).Split("```csharp")[1].Split("```")[0]
            .Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        Assert.True(snippet.Length > 5);
        Assert.All(snippet, line => Assert.Contains(source, s => s.Trim() == line));

        var folder = Directory.CreateTempSubdirectory("buckgen-readme-").FullName;
        var before = Directory.GetCurrentDirectory();
        try
        {
            File.Copy(Path.Combine(Path.GetDirectoryName(readme)!, "examples", "boathouse-sign", "outline.svg"),
                Path.Combine(folder, "sign.svg"));
            Directory.SetCurrentDirectory(folder);
            Run();
            Assert.True(File.Exists(Path.Combine(folder, "sign", "layers", "layer-02.dxf")));
        }
        finally
        {
            Directory.SetCurrentDirectory(before);
            Directory.Delete(folder, true);
        }
    }

    private static void Run()
    {
        var outline = OutlineReader.Read(File.ReadAllBytes("sign.svg"), "sign.svg");
        var design = BuckDesign.Create(outline, new BuckSpec { Depth = 12, Stock = [new("MDF 6", 6.0)] });
        var plan = CutPlan.Create(design, new CuttingSpec(Kerf: 0.2));
        OutputFolder.Write("sign", OutputFiles.Create(plan, new OutputOptions()));
    }

    private static string ThisFile([CallerFilePath] string path = "") => path;
}
