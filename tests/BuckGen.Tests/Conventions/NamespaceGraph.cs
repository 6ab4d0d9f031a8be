using System.Reflection;
using Mono.Cecil;
using Mono.Cecil.Rocks;

namespace BuckGen.Tests.Conventions;

/// <summary>Which namespace of an assembly uses which, read from its compiled code.</summary>
internal sealed class NamespaceGraph
{
    private readonly Dictionary<string, Dictionary<string, string>> uses = [];

    private NamespaceGraph()
    {
    }

    /// <summary>All namespaces with our own types.</summary>
    public IEnumerable<string> Namespaces => uses.Keys;

    /// <summary>The uses from one namespace to others, each with an example.</summary>
    public IEnumerable<(string Namespace, string Example)> UsesFrom(string from) => uses[from].Select(u => (u.Key, u.Value));

    /// <summary>The graph of an assembly.</summary>
    public static NamespaceGraph FromAssembly(Assembly assembly)
    {
        var graph = new NamespaceGraph();
        using var module = ModuleDefinition.ReadModule(assembly.Location);
        foreach (var type in module.GetAllTypes())
        {
            if (Home(type) is not { } from) continue;
            graph.uses.TryAdd(from, []);
            foreach (var used in TypesUsed(type))
                if (Home(used) is { } to && to != from) graph.uses[from].TryAdd(to, $"{type.Name} uses {used.Name}");
        }

        return graph;
    }

    /// <summary>A circle of namespaces that use each other; empty when there is none.</summary>
    public IReadOnlyList<string> Circle()
    {
        var (done, path) = (new HashSet<string>(), new List<string>());
        return uses.Keys.Order(StringComparer.Ordinal).Select(From).FirstOrDefault(c => c.Count > 0) ?? [];

        IReadOnlyList<string> From(string name)
        {
            if (path.IndexOf(name) is >= 0 and var start) return [.. path[start..], name];
            if (!uses.TryGetValue(name, out var next) || !done.Add(name)) return [];
            path.Add(name);
            var circle = next.Keys.Select(From).FirstOrDefault(c => c.Count > 0) ?? [];
            path.RemoveAt(path.Count - 1);
            return circle;
        }
    }

    private static string? Home(TypeReference type)
    {
        while (type.DeclaringType is { } outer) type = outer;
        return type.Namespace.StartsWith("BuckGen", StringComparison.Ordinal) ? type.Namespace : null;
    }

    private static IEnumerable<TypeReference> TypesUsed(TypeDefinition type) =>
        new[] { type.BaseType }
            .Concat(type.Interfaces.Select(i => i.InterfaceType))
            .Concat(type.Fields.Select(f => f.FieldType))
            .Concat(type.Properties.Select(p => p.PropertyType))
            .Concat(type.Methods.SelectMany(m => m.Parameters.Select(p => p.ParameterType).Append(m.ReturnType)))
            .Concat(type.Methods.Where(m => m.HasBody).SelectMany(m => m.Body.Variables.Select(v => v.VariableType)))
            .Concat(type.Methods.Where(m => m.HasBody).SelectMany(m => m.Body.Instructions.SelectMany(i => Named(i.Operand))))
            .OfType<TypeReference>()
            .SelectMany(Parts);

    private static IEnumerable<TypeReference?> Named(object? operand) => operand switch
    {
        TypeReference type => [type],
        GenericInstanceMethod method => [method.DeclaringType, .. method.GenericArguments],
        MemberReference member => [member.DeclaringType],
        _ => [],
    };

    private static IEnumerable<TypeReference> Parts(TypeReference type) => type switch
    {
        GenericInstanceType generic => generic.GenericArguments.SelectMany(Parts).Prepend(generic.ElementType),
        TypeSpecification of => Parts(of.ElementType),
        _ => [type],
    };
}
