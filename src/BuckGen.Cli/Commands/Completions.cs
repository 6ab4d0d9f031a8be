using System.CommandLine;
using System.CommandLine.Completions;

namespace BuckGen.Cli.Commands;

/// <summary>The words that a shell offers for what may be typed.</summary>
internal static class Completions
{
    /// <summary>Offers these words, and no others, for the option's value.</summary>
    public static Option<T> WithCompletions<T>(this Option<T> option, Func<IEnumerable<string>> words)
    {
        SetCompletions(option.CompletionSources, words);
        return option;
    }

    /// <summary>Offers these words, and no others, for the argument.</summary>
    public static Argument<T> WithCompletions<T>(this Argument<T> argument, Func<IEnumerable<string>> words)
    {
        SetCompletions(argument.CompletionSources, words);
        return argument;
    }

    private static void SetCompletions(List<Func<CompletionContext, IEnumerable<CompletionItem>>> sources,
        Func<IEnumerable<string>> words)
    {
        // Otherwise the shell would offer the names of an enumeration's members.
        sources.Clear();
        sources.Add(_ => words().Select(word => new CompletionItem(word)));
    }
}
