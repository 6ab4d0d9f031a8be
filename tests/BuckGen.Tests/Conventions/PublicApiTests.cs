using System.Reflection;
using BuckGen.Design;
using BuckGen.Dxf.Reading;
using BuckGen.Geometry;
using BuckGen.Physics.Air;
using Xunit;

namespace BuckGen.Tests.Conventions;

/// <summary>What the outside world may rely on, as texts to be read in a review. BUCKGEN_APPROVE=1 writes them anew.</summary>
public class PublicApiTests
{
    /// <summary>Two screens of sixty lines.</summary>
    private const int TwoScreens = 120;

    public static TheoryData<Type> Libraries => [typeof(BuckDesign), typeof(Region), typeof(DrawDown), typeof(DxfReader)];

    [Theory]
    [MemberData(nameof(Libraries))]
    public void The_public_face_is_the_approved_one(Type one)
    {
        var face = PublicApi.FromAssembly(one.Assembly);
        AssertApproved(one.Assembly, "calls", face.Calls);
        AssertApproved(one.Assembly, "data", face.Data);
    }

    [Theory]
    [MemberData(nameof(Libraries))]
    public void All_that_can_be_called_is_read_on_two_screens(Type one) =>
        Assert.InRange(PublicApi.FromAssembly(one.Assembly).Calls.Split('\n').Length - 1, 10, TwoScreens);

    private static void AssertApproved(Assembly assembly, string part, string face)
    {
        var file = Path
            .Combine(Repository.Root, "tests", "BuckGen.Tests", "Conventions", $"{assembly.GetName().Name}.{part}.approved.txt");
        if (Environment.GetEnvironmentVariable("BUCKGEN_APPROVE") == "1") File.WriteAllText(file, face);

        var approved = File.ReadAllText(file).ReplaceLineEndings("\n");

        var (old, now) = (approved.Split('\n'), face.Split('\n'));
        Assert.True(approved == face, string.Join('\n',
            ["The public face has changed. If that is meant, run the test once with BUCKGEN_APPROVE=1 and commit the file.",
             .. old.Except(now).Select(l => $"- {l.Trim()}"), .. now.Except(old).Select(l => $"+ {l.Trim()}")]));
    }
}
