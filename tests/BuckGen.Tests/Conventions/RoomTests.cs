using System.Reflection;
using System.Text.RegularExpressions;
using BuckGen.Design;
using BuckGen.Dxf.Reading;
using BuckGen.Geometry;
using BuckGen.Physics.Air;
using NetArchTest.Rules;
using Xunit;

namespace BuckGen.Tests.Conventions;

/// <summary>Which room may use which. The order is read from the table in DEVELOPERS.md, so that the table stays true.</summary>
[Trait("Tier", "slow")]
public partial class RoomTests
{
    private static readonly Assembly Library = typeof(BuckDesign).Assembly;

    private static readonly NamespaceGraph Graph = NamespaceGraph.FromAssembly(Library);

    /// <summary>The rooms in the order of the flow.</summary>
    private static readonly string[] Rooms =
        [.. RoomRow().Matches(Repository.Text("DEVELOPERS.md").Split("| room |")[1].Split("| elsewhere |")[0])
        .SelectMany(row => Name().Matches(row.Groups[1].Value).Select(n => $"BuckGen.{n.Groups[1].Value}"))];

    public static TheoryData<Type> Projects => [typeof(BuckDesign), typeof(Region), typeof(DrawDown), typeof(DxfReader)];

    [Fact]
    public void Every_namespace_of_the_library_lies_in_a_room_and_every_room_has_one()
    {
        Assert.InRange(Rooms.Length, 20, 40);
        Assert.DoesNotContain(Graph.Namespaces, n => Room(n) is null);
        Assert.Empty(Rooms.Except(Graph.Namespaces.Select(n => Room(n)!)));
    }

    [Fact]
    public void A_room_uses_only_those_above_it_in_the_table() =>
        Assert.Empty(
            from ns in Graph.Namespaces
            from use in Graph.UsesFrom(ns)
            where Room(use.Namespace) is { } used && Array.IndexOf(Rooms, used) > Array.IndexOf(Rooms, Room(ns))
            select $"{ns} uses {use.Namespace}: {use.Example}");

    [Theory]
    [MemberData(nameof(Projects))]
    public void No_namespaces_use_each_other_in_a_circle(Type one)
    {
        var graph = NamespaceGraph.FromAssembly(one.Assembly);

        Assert.NotEmpty(graph.Namespaces);
        Assert.Empty(graph.Circle());
    }

    [Fact]
    public void Geometry_physics_and_DXF_know_nothing_of_bucks()
    {
        Assert.Equal(["BuckGen.Geometry"], OursIn(typeof(DrawDown)));
        Assert.Empty(OursIn(typeof(Region)));
        Assert.Empty(OursIn(typeof(DxfReader)));
    }

    [Fact]
    public void Only_the_edge_of_the_library_knows_DXF() =>
        Assert.Empty(
            from ns in Graph.Namespaces
            where !EdgeRoom().IsMatch(ns)
            from use in Graph.UsesFrom(ns)
            where use.Namespace.StartsWith("BuckGen.Dxf", StringComparison.Ordinal)
            select use.Example);

    [Fact]
    public void Engine_types_stay_behind_our_own_names()
    {
        var faces = Library.GetExportedTypes()
            .SelectMany(t =>
                t.GetMembers(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly))
                    .ToArray();

        Assert.InRange(faces.Length, 500, int.MaxValue);
        Assert.DoesNotContain(faces.SelectMany(TypesOf), t => t.Namespace?.Split('.')[0] is "NetTopologySuite" or "Tomlyn"
            or "UnitsNet" or "Svg" or "ShimSkiaSharp");
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
        MethodBase method =>
            method.GetParameters().Select(p => p.ParameterType).Append((method as MethodInfo)?.ReturnType ?? typeof(void)),
        PropertyInfo property => [property.PropertyType],
        FieldInfo field => [field.FieldType],
        _ => [],
    };

    /// <summary>The room a namespace lies in: the longest name in the table that it begins with.</summary>
    private static string? Room(string name) =>
        Rooms.Where(r => name == r || name.StartsWith(r + ".", StringComparison.Ordinal)).MaxBy(r => r.Length);

    private static string[] OursIn(Type one) =>
        [.. one.Assembly.GetReferencedAssemblies().Select(a => a.Name!)
            .Where(n => n.StartsWith("BuckGen", StringComparison.OrdinalIgnoreCase))];

    [GeneratedRegex(@"^\| ((?:`[\w.]+`(?:, )?)+) \|", RegexOptions.Multiline)]
    private static partial Regex RoomRow();

    [GeneratedRegex(@"`([\w.]+)`")]
    private static partial Regex Name();

    [GeneratedRegex(@"^BuckGen\.(Intake|Cutting\.CutFiles|Cutting\.Drilling|Output\.Files|Jobs)(\.|$)")]
    private static partial Regex EdgeRoom();
}
