using System.Reflection;
using System.Runtime.CompilerServices;
using BuckGen.Design;
using BuckGen.Dxf.Reading;
using BuckGen.Geometry;
using BuckGen.Physics.Air;
using Xunit;

namespace BuckGen.Tests.Conventions;

/// <summary>Nothing global can be changed, and nothing that is handed out can be changed behind one's back.</summary>
public class ImmutabilityTests
{
    private static readonly Type[] All =
        [.. new[] { typeof(BuckDesign), typeof(Region), typeof(DrawDown), typeof(DxfReader) }
            .SelectMany(t => t.Assembly.GetTypes()).Where(t => !IsGenerated(t))];

    [Fact]
    public void No_static_field_can_be_set_again()
    {
        var fields =
            All.SelectMany(t =>
                t.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly))
            .Where(f => !f.Name.StartsWith("<>", StringComparison.Ordinal)).ToArray();

        Assert.InRange(fields.Length, 50, int.MaxValue);
        Assert.Empty(fields.Where(f => !f.IsInitOnly && !f.IsLiteral).Select(f => $"{f.DeclaringType}.{f.Name}"));
    }

    [Fact]
    public void No_static_property_can_be_set() =>
        Assert.Empty(
            All.SelectMany(t =>
                t.GetProperties(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly))
            .Where(p => p.CanWrite).Select(p => $"{p.DeclaringType}.{p.Name}"));

    [Fact]
    public void Public_properties_are_set_at_birth_or_never()
    {
        var properties = All.Where(t => t.IsPublic)
            .SelectMany(t => t.GetProperties(BindingFlags.Instance | BindingFlags.Public | BindingFlags.DeclaredOnly)).ToArray();

        Assert.InRange(properties.Length, 200, int.MaxValue);
        Assert.Empty(properties.Where(p => p.SetMethod is { IsPublic: true } set
            && !set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit)))
            .Select(p => $"{p.DeclaringType}.{p.Name}"));
    }

    [Fact]
    public void Public_properties_hand_out_no_lists_that_can_be_changed() =>
        Assert.Empty(All.Where(t => t.IsPublic)
            .SelectMany(t =>
                t.GetProperties(BindingFlags.Instance | BindingFlags.Static | BindingFlags.Public | BindingFlags.DeclaredOnly))
            .Where(p => p.PropertyType.IsArray
                || (p.PropertyType.IsGenericType && p.PropertyType.GetGenericTypeDefinition() is var g
                && (g == typeof(List<>) || g == typeof(Dictionary<,>) || g == typeof(HashSet<>))))
            .Select(p => $"{p.DeclaringType}.{p.Name}"));

    private static bool IsGenerated(Type type) =>
        type.Name.StartsWith('<') || type.IsDefined(typeof(CompilerGeneratedAttribute))
            || (type.DeclaringType is { } outer && IsGenerated(outer))
        || type.Namespace?.StartsWith("BuckGen", StringComparison.Ordinal) != true;
}
