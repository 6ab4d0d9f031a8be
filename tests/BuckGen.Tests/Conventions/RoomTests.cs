using System.Reflection;
using System.Text.RegularExpressions;
using BuckGen.Design;
using BuckGen.Dxf.Reading;
using NetArchTest.Rules;
using Xunit;

namespace BuckGen.Tests.Conventions;

/// <summary>Which room may use which. The order is read from the table in DEVELOPERS.md, so that the table stays true.</summary>
public partial class RoomTests
{
    private static readonly Assembly Library = typeof(BuckDesign).Assembly;

    /// <summary>The rooms from the ground floor up.</summary>
    private static readonly string[] Rooms = [.. RoomRow().Matches(Repository.Text("DEVELOPERS.md").Split("## The rooms")[1].Split("| elsewhere |")[0])
        .SelectMany(row => Name().Matches(row.Groups[1].Value).Select(n => n.Groups[1].Value))];

    public static TheoryData<string> Names => [.. Rooms];

    [Fact]
    public void Every_room_of_the_library_stands_in_the_table_and_every_row_is_a_room() =>
        Assert.Equal(
            Library.GetTypes().Select(t => t.Namespace).OfType<string>().Where(n => n.StartsWith("BuckGen.", StringComparison.Ordinal))
                .Select(n => n.Split('.')[1]).Distinct().Order(),
            Rooms.Order());

    [Theory]
    [MemberData(nameof(Names))]
    public void A_room_uses_only_those_above_it_in_the_table(string room)
    {
        var later = Rooms.SkipWhile(r => r != room).Skip(1).Select(r => $"BuckGen.{r}").ToArray();
        if (later.Length == 0) return;

        AssertKept(Types.InAssembly(Library).That().ResideInNamespace($"BuckGen.{room}").ShouldNot().HaveDependencyOnAny(later).GetResult());
    }

    [Theory]
    [InlineData("Geometry", "Outlines", "Bucks", "CutFiles", "Reports", "Jobs", "Quantities", "Dxf")]
    [InlineData("Outlines", "Bucks", "Designs", "Sheets", "CutFiles", "Reports", "Jobs")]
    [InlineData("Bucks", "Sheets", "CutFiles", "Reports", "Jobs", "Outlines.Svg", "Outlines.Dxf", "Dxf")]
    public void The_arrows_that_matter_most_hold_whatever_the_table_says(string room, params string[] forbidden) =>
        AssertKept(Types.InAssembly(Library).That().ResideInNamespace($"BuckGen.{room}").ShouldNot()
            .HaveDependencyOnAny([.. forbidden.Select(f => $"BuckGen.{f}")]).GetResult());

    [Fact]
    public void The_DXF_library_uses_nothing_of_bucks() =>
        Assert.DoesNotContain(typeof(DxfReader).Assembly.GetReferencedAssemblies(), a => a.Name!.StartsWith("BuckGen", StringComparison.OrdinalIgnoreCase));

    [Fact]
    public void Only_the_edge_of_the_library_knows_DXF() =>
        AssertKept(Types.InAssembly(Library).That().HaveDependencyOn("BuckGen.Dxf").And().ResideInNamespace("BuckGen")
            .Should().ResideInNamespaceMatching(@"^BuckGen\.(Outlines|CutFiles|Drilling|Output|Jobs)(\.|$)").GetResult());

    [Fact]
    public void Engine_types_stay_behind_our_own_names()
    {
        var faces = Library.GetExportedTypes().SelectMany(t => t.GetMembers(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly)).ToArray();

        Assert.InRange(faces.Length, 500, int.MaxValue);
        Assert.DoesNotContain(faces.SelectMany(TypesOf), t => t.Namespace?.Split('.')[0] is "NetTopologySuite" or "Tomlyn" or "UnitsNet" or "Svg" or "ShimSkiaSharp");
    }

    [Fact]
    public void The_library_never_talks_to_a_console()
    {
        string[] talkers = ["System.Console", "Spectre.Console", "System.CommandLine"];

        AssertKept(Types.InAssembly(Library).ShouldNot().HaveDependencyOnAny(talkers).GetResult());
        AssertKept(Types.InAssembly(typeof(DxfReader).Assembly).ShouldNot().HaveDependencyOnAny(talkers).GetResult());
    }

    private static void AssertKept(NetArchTest.Rules.TestResult result) =>
        Assert.True(result.IsSuccessful, "Breaks the rule: " + string.Join(", ", result.FailingTypeNames ?? []));

    private static IEnumerable<Type> TypesOf(MemberInfo member) => member switch
    {
        MethodBase method => method.GetParameters().Select(p => p.ParameterType).Append((method as MethodInfo)?.ReturnType ?? typeof(void)),
        PropertyInfo property => [property.PropertyType],
        FieldInfo field => [field.FieldType],
        _ => [],
    };

    [GeneratedRegex(@"^\| ((?:`\w+`(?:, )?)+) \|", RegexOptions.Multiline)]
    private static partial Regex RoomRow();

    [GeneratedRegex(@"`(\w+)`")]
    private static partial Regex Name();
}
