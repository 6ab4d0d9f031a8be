using Xunit;

namespace BuckGen.Tests.Conventions;

/// <summary>The guides list every setting as it is declared. BUCKGEN_APPROVE=1 writes the page anew.</summary>
public class SettingsPageTests
{
    [Fact]
    public void The_page_of_settings_says_what_the_declarations_say()
    {
        var file = Path.Combine(Repository.Root, "src/docs/guides/settings.md");
        if (Environment.GetEnvironmentVariable("BUCKGEN_APPROVE") == "1") File.WriteAllText(file, SettingsPage.Text());

        var (page, declared) = (File.ReadAllText(file).ReplaceLineEndings("\n").Split('\n'), SettingsPage.Text().Split('\n'));

        Assert.True(page.SequenceEqual(declared), string.Join('\n',
            ["The settings have changed. If that is meant, run the test once with BUCKGEN_APPROVE=1 and commit the page.",
             .. page.Except(declared).Select(l => $"- {l}"), .. declared.Except(page).Select(l => $"+ {l}")]));
    }
}
