namespace BuckGen.Tests.Conventions;

/// <summary>The public face of a type.</summary>
/// <param name="Calls">What can be called or has to be implemented, a line each.</param>
/// <param name="Data">What it holds, on one line; null for what only has methods.</param>
internal sealed record ApiType(IReadOnlyList<string> Calls, string? Data)
{
    public static ApiType FromLines(IReadOnlyList<string> lines)
    {
        var (head, members) = (lines[0], lines.Skip(1).Where(m => m is not ("{" or "}")).ToList());
        var isInterface = head.Contains("interface ", StringComparison.Ordinal);
        var name = NameOf(head);
        if (isInterface) return new([$"{head} {{ {string.Join("; ", members)} }}"], null);
        if (head.Contains("static class ", StringComparison.Ordinal))
        {
            return new([.. members.Where(IsMethod).Select(m => Call(name, m))],
                Held(head, members.Where(m => !IsMethod(m)).ToList(), always: false));
        }
        var calls = members.Where(m => IsMethod(m) && !IsConstructor(m, name)
            && !m.Contains("override ", StringComparison.Ordinal));
        return new([.. calls.Select(m => Call(name, m))],
            Held(head, members.Where(m => !IsMethod(m) || IsConstructor(m, name)).ToList(), always: true));
    }

    private static string? Held(string head, List<string> members, bool always) =>
        members.Count > 0 ? $"{head}: {string.Join("; ", members)}" : always ? head : null;

    private static string NameOf(string head)
    {
        var words = head.Split(' ');
        return words[Array.FindIndex(words, w => w is "class" or "struct" or "interface" or "enum") + 1];
    }

    /// <summary>The method with its type's name before its own.</summary>
    private static string Call(string type, string method)
    {
        var start = method.LastIndexOf(' ', method.IndexOf('(')) + 1;
        return method[..start] + type + "." + method[start..];
    }

    private static bool IsMethod(string member) => member.Contains('(');

    private static bool IsConstructor(string member, string type) =>
        member.StartsWith(type + "(", StringComparison.Ordinal) || member == $"protected {type}()";
}
