using BuckGen.Jobs;
using BuckGen.Output.Files;
using Xunit;

namespace BuckGen.Tests.Output.Files;

/// <summary>The settings of the files as a maker meets them: in the job file to start from, and as options.</summary>
public class OutputSettingsTests
{
    [Fact]
    public void The_job_to_start_from_shows_each_with_its_default_and_its_meaning()
    {
        var template = JobTemplate.Text("outline.svg").ReplaceLineEndings("\n");

        Assert.Contains(
            """

            [output]
            dxf = "r12"                   # version of DXF: r12 or r2000
            svg = false                   # an SVG beside every DXF
            paper = "a4"                  # a4 or letter: what templates at full size are printed on
            # formats = []                # more kinds of cut files; plug-ins give their names
            model = false                 # solid models of the buck: STL to print, glTF to look at

            """.ReplaceLineEndings("\n"), template);
    }

    [Fact]
    public void All_but_the_paper_have_an_option_of_their_own_name() =>
        Assert.Equal(["--dxf", "--svg", null, "--formats", "--model"], OutputSettings.Table.Settings.Select(s => s.Option));
}
