using System.Reflection;
using BuckGen.Designs;
using BuckGen.Dxf;
using PublicApiGenerator;
using Xunit;

namespace BuckGen.Tests.Conventions;

/// <summary>What the outside world may rely on, as a text to be read in a review. BUCKGEN_APPROVE=1 writes it anew.</summary>
public class PublicApiTests
{
    [Fact]
    public void The_public_face_of_the_library_is_the_approved_one() => AssertApproved(typeof(BuckDesign).Assembly);

    [Fact]
    public void The_public_face_of_the_DXF_library_is_the_approved_one() => AssertApproved(typeof(DxfReader).Assembly);

    private static void AssertApproved(Assembly assembly)
    {
        var face = assembly.GeneratePublicApi(new() { IncludeAssemblyAttributes = false }).ReplaceLineEndings("\n") + "\n";
        var file = Path.Combine(Repository.Root, "tests", "BuckGen.Tests", "Conventions", $"{assembly.GetName().Name}.approved.txt");
        if (Environment.GetEnvironmentVariable("BUCKGEN_APPROVE") == "1") File.WriteAllText(file, face);

        var approved = File.ReadAllText(file).ReplaceLineEndings("\n");

        var (old, now) = (approved.Split('\n'), face.Split('\n'));
        Assert.True(approved == face, string.Join('\n',
            ["The public face has changed. If that is meant, run the test once with BUCKGEN_APPROVE=1 and commit the file.",
             .. old.Except(now).Select(l => $"- {l.Trim()}"), .. now.Except(old).Select(l => $"+ {l.Trim()}")]));
    }
}
