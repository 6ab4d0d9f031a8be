using System.Text.RegularExpressions;
using BuckGen.References.Tests.Support;
using BuckGen.References.Tests.Written;

namespace BuckGen.References.Tests.Signs;

/// <summary>
/// A sign of 900 mm made to the end on a bed of 600 x 400 mm with a frame of 300 x 200 mm, judged by a script from the drawing,
/// the job and the files. It knows nothing of how islands are sorted or seams are chosen.
/// </summary>
public class LongSignTests(MadeSign sign, ITestOutputHelper log) : IClassFixture<MadeSign>
{
    [Fact]
    public void A_sign_longer_than_bed_and_frame_is_made_to_the_end()
    {
        Reference.Python.Need();
        using var scratch = new ScratchFolder();
        sign.WriteTo(scratch);

        var verdict = Judge(scratch);

        log.WriteLine(verdict.ToString());
        Faults.None(GateTests.FaultsOf(verdict));
        Assert.Equal(9, verdict.GetProperty("islands").GetInt32());
        Assert.True(verdict.GetProperty("bucks").GetInt32() >= 4);
    }

    /// <summary>The judge sees what it is for: an opening moved, a buck missing, a seam elsewhere, pieces without play.</summary>
    [Theory]
    [InlineData("jig/register-01.dxf", "(VERTEX\r\n  8\r\nCUT_INNER\r\n 10\r\n)(?=[0-9])", "${1}1", "the opening at")]
    [InlineData("summary.json", "\"upright\": true,\\s+\"at\": [0-9.]+", "\"upright\": true, \"at\": 300", "comes within")]
    [InlineData("summary.json", "\"folder\": \"buck-2\"", "\"folder\": \"buck-1\"", "is in ")]
    public void The_judge_sees_a_fault(string file, string what, string instead, string words)
    {
        Reference.Python.Need();
        using var scratch = new ScratchFolder();
        sign.WriteTo(scratch);
        var path = scratch.File(file);
        var (before, after) = (File.ReadAllText(path), "");
        File.WriteAllText(path, after = new Regex(what).Replace(before, instead, 1));
        Assert.NotEqual(before, after);

        Assert.Contains(GateTests.FaultsOf(Judge(scratch)), f => f.Contains(words, StringComparison.Ordinal));
    }

    private System.Text.Json.JsonElement Judge(ScratchFolder scratch) => GateTests.Json(Reference.Python.Run(
        TimeSpan.FromMinutes(2), "-W", "ignore", RepositoryFolder.Script("long_sign.py"),
        sign.Drawing, sign.Job, scratch.Path)).Single();
}
