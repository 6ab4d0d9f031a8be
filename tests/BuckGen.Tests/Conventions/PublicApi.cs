using System.Reflection;
using System.Text.RegularExpressions;
using PublicApiGenerator;

namespace BuckGen.Tests.Conventions;

/// <summary>
/// The public face of an assembly in two texts a person can read: what one calls and what one implements, a line each, and the
/// data that is handed over, a line for each type.
/// </summary>
/// <param name="Calls">Methods and interfaces.</param>
/// <param name="Data">Types with what they hold.</param>
internal sealed partial record PublicApi(string Calls, string Data)
{
    public static PublicApi FromAssembly(Assembly assembly)
    {
        var text = assembly.GeneratePublicApi(new() { IncludeAssemblyAttributes = false }).ReplaceLineEndings("\n");
        var (calls, data) = (new List<string>(), new List<string>());
        foreach (var (room, types) in Rooms(WithoutAttributes(text)))
        {
            var faces = types.Select(ApiType.FromLines).ToList();
            Add(calls, room, faces.SelectMany(f => f.Calls));
            Add(data, room, faces.Select(f => f.Data).OfType<string>());
        }
        return new(Text(calls), Text(data));
    }

    private static string Text(List<string> lines) => string.Concat(lines.Select(l => l + "\n"));

    private static void Add(List<string> lines, string room, IEnumerable<string> further)
    {
        var all = further.ToList();
        if (all.Count > 0) lines.AddRange([room, .. all.Select(l => "  " + l)]);
    }

    /// <summary>Each room with its types, a type as its head and its members.</summary>
    private static List<(string Room, List<List<string>> Types)> Rooms(string[] lines)
    {
        var rooms = new List<(string Room, List<List<string>> Types)>();
        foreach (var line in lines)
        {
            if (line.StartsWith("namespace ", StringComparison.Ordinal)) rooms.Add((line["namespace ".Length..], []));
            else if (line.StartsWith("        ", StringComparison.Ordinal)) rooms[^1].Types[^1].Add(Short(line));
            else if (line.StartsWith("    ", StringComparison.Ordinal) && line.Trim() is not ("{" or "}"))
                rooms[^1].Types.Add([Short(line)]);
        }
        return rooms;
    }

    /// <summary>Attributes say nothing about calling, but for the names in a tuple, which no public member has.</summary>
    private static string[] WithoutAttributes(string text)
    {
        if (text.Contains("TupleElementNames", StringComparison.Ordinal))
            throw new InvalidOperationException("A public member has a tuple; make it a record.");
        return Attribute().Replace(text, "").Split('\n');
    }

    /// <summary>Without namespaces and what goes without saying.</summary>
    private static string Short(string line)
    {
        var shorter = Namespaces().Replace(Equatable().Replace(line, ""), "").Trim();
        return shorter.Replace(" { }", "", StringComparison.Ordinal).Replace("public ", "", StringComparison.Ordinal)
            .TrimEnd(';', ',');
    }

    [GeneratedRegex(@"\[[A-Z][\w.]*(?:\([^\n]*?\))?\](?:\n +(?=[a-z\[A-Z])| )")]
    private static partial Regex Attribute();

    [GeneratedRegex(@"(, | : )System\.IEquatable<[\w.]+>")]
    private static partial Regex Equatable();

    [GeneratedRegex(@"\b(?:System|BuckGen)(?:\.[A-Z]\w*)*\.(?=[A-Z])")]
    private static partial Regex Namespaces();
}
