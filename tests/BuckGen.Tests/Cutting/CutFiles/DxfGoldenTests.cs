using System.Globalization;
using BuckGen.Cutting.CutFiles;
using BuckGen.Dxf;
using Snapshooter.Xunit3;
using Xunit;

namespace BuckGen.Tests.Cutting.CutFiles;

/// <summary>Whole DXF files as pairs of group code and value, as they were when last checked.</summary>
public class DxfGoldenTests
{
    [Fact]
    public void The_R12_file_of_a_small_design_stays_as_it_was() => Snapshot.Match(Pairs(DxfVersion.R12));

    [Fact]
    public void The_R2000_file_of_a_small_design_stays_as_it_was() => Snapshot.Match(Pairs(DxfVersion.R2000));

    private static string Pairs(DxfVersion version)
    {
        var lines = System.Text.Encoding.ASCII.GetString([.. DxfCutFile.Write(SmallDesign.Drawing, version)]).Split("\r\n");
        var pairs = Enumerable.Range(0, lines.Length / 2)
            .Select(i =>
                $"{int.Parse(lines[2 * i], NumberStyles.AllowLeadingWhite, CultureInfo.InvariantCulture)}, {lines[2 * i + 1]}");
        return string.Join('\n', pairs) + "\n";
    }
}
