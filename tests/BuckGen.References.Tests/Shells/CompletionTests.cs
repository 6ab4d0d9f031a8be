using BuckGen.References.Tests.Support;

namespace BuckGen.References.Tests.Shells;

/// <summary>Real shells, each with the script that "buckgen completion" prints for it, complete what is typed.</summary>
public class CompletionTests
{
    private static readonly Reference Terminal = new("/usr/bin/python3", ["-c", "import pty"], "apt-get install python3");
    private static readonly Reference Bash = new("bash", ["--version"], "apt-get install bash");
    private static readonly Reference Zsh = new("zsh", ["--version"], "apt-get install zsh");
    private static readonly Reference PowerShell =
        new("pwsh", ["-NoProfile", "-Command", "exit"], "dotnet tool install --global PowerShell --version 7.6.9");

    /// <summary>Where the program lies that these tests were built with.</summary>
    private static readonly string Programs = AppContext.BaseDirectory;

    public static TheoryData<string, string> Lines => new()
    {
        { "buckgen ma", "buckgen make" },
        { "buckgen buck sign.svg --ki", "buckgen buck sign.svg --kind" },
        { "buckgen buck sign.svg --kind m", "buckgen buck sign.svg --kind male" },
        // No word of the program: a file.
        { "buckgen buck s", "buckgen buck sign.svg" },
    };

    [Theory]
    [MemberData(nameof(Lines))]
    public void Bash_completes(string typed, string completed)
    {
        Bash.Need();
        using var home = Home();
        var settings = home.File(".settings");
        File.WriteAllText(settings,
            $"cd '{home.Path}'; PATH='{Programs}':$PATH; source <(buckgen completion bash); {Show}; PS1='ready> '\n");
        AssertCompletes(typed, completed, "bash", "--noprofile", "--rcfile", settings, "-i");
    }

    [Theory]
    [MemberData(nameof(Lines))]
    public void Zsh_completes(string typed, string completed)
    {
        Zsh.Need();
        using var home = Home();
        File.WriteAllText(
            home.File(".zshrc"),
            $"cd '{home.Path}'; PATH='{Programs}':$PATH; autoload -Uz compinit && compinit -D -u; source <(buckgen "
            + $"completion zsh); {Show}; PS1='ready> '\n");
        AssertCompletes(typed, completed, "env", $"ZDOTDIR={home.Path}", "zsh", "-i");
    }

    /// <summary>In one go, since PowerShell is slow to start.</summary>
    [Fact]
    public void PowerShell_completes()
    {
        using var home = Home();
        var rows = Lines.Select(l => l.Data).ToArray();
        var script = $$"""
            Set-Location '{{home.Path}}'
            $env:PATH = '{{Programs}}' + [IO.Path]::PathSeparator + $env:PATH
            buckgen completion powershell | Out-String | Invoke-Expression
            foreach ($typed in {{string.Join(", ", rows.Select(r => $"'{r.Item1}'"))}}) {
                $offered = [Management.Automation.CommandCompletion]::CompleteInput($typed, $typed.Length, $null)
                $typed.Substring(0, $offered.ReplacementIndex) + ($offered.CompletionMatches.CompletionText -join '|').Replace('./', '')
            }
            """;
        var run = PowerShell.Run(TimeSpan.FromSeconds(60), "-NoProfile", "-Command", script);
        Assert.Equal("", run.Error);
        Assert.Equal(rows.Select(r => r.Item2), run.Output.Split(['\r', '\n'], StringSplitOptions.RemoveEmptyEntries));
    }

    /// <summary>A function of the shell that shows what it is given, each word apart.</summary>
    private const string Show = """show() { printf '<%s>' "$@"; printf ' shown\n'; }""";

    /// <summary>A folder with one drawing in it.</summary>
    private static ScratchFolder Home()
    {
        var home = new ScratchFolder();
        File.WriteAllText(home.File("sign.svg"), "");
        return home;
    }

    /// <summary>Types the line and TAB; then goes to its beginning and has the words shown instead of run.</summary>
    private static void AssertCompletes(string typed, string completed, params string[] shell)
    {
        var run = Terminal.Run(
            TimeSpan.FromSeconds(60),
            [RepositoryFolder.Script("type_in_shell.py"), $"{typed}\t\u0001show \r", "> shown", .. shell]);
        Assert.Contains($"<{completed.Replace(" ", "><", StringComparison.Ordinal)}> shown", run.All, StringComparison.Ordinal);
    }
}
