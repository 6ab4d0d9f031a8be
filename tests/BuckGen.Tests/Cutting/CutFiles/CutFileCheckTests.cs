using System.Text;
using BuckGen.Cutting.CutFiles;
using BuckGen.Cutting.CutPaths;
using BuckGen.Dxf;
using BuckGen.Geometry;
using Xunit;

namespace BuckGen.Tests.Cutting.CutFiles;

/// <summary>A DXF that does not hold what was drawn is refused. Each case is a good file with one thing made wrong.</summary>
public class CutFileCheckTests
{
    private static readonly CutDrawing Drawing = new("test", [
        CutPath.FromLoop(CutLayer.CutInner, Loop.Circle(new(30, 30), 10)),
        CutPath.FromLoop(CutLayer.CutOuter, Loop.Rectangle(new(0, 0, 60.5, 80))),
    ], new(0, 0, 60.5, 80));

    private static readonly string Text = Encoding.ASCII.GetString([.. DxfCutFile.Write(Drawing, DxfVersion.R12)]);

    [Fact]
    public void A_file_as_written_passes() => CutFileCheck.Verify(Encoding.ASCII.GetBytes(Text), Drawing);

    [Theory]
    [InlineData("60.5\r\n", "61.5\r\n")]
    [InlineData(" 40\r\n10.0", " 40\r\n10.1")]
    [InlineData("  8\r\nCUT_INNER", "  8\r\nCUT_OUTER")]
    [InlineData(" 70\r\n1\r\n", " 70\r\n0\r\n")]
    public void A_file_that_differs_is_refused(string from, string to)
    {
        var tampered = Replaced(from, to);

        var message = Assert.Throws<CutFileException>(() => CutFileCheck.Verify(tampered, Drawing)).Message;

        Assert.Contains("\"test\"", message);
    }

    [Fact]
    public void A_shift_of_the_whole_part_is_noticed()
    {
        var moved = Drawing with { Paths = [.. Drawing.Paths.Select(p => p.Transformed(Affine.Translation(new(0.5, 0))))] };

        Assert.Throws<CutFileException>(() => CutFileCheck.Verify([.. DxfCutFile.Write(moved, DxfVersion.R12)], Drawing));
    }

    [Fact]
    public void A_path_that_comes_back_to_its_start_without_being_closed_is_noticed()
    {
        var open = Drawing with { Paths = [Drawing.Paths[0], Drawing.Paths[1] with { Closed = false }] };

        Assert.Throws<CutFileException>(() => CutFileCheck.Verify([.. DxfCutFile.Write(open, DxfVersion.R12)], Drawing));
    }

    [Fact]
    public void A_missing_path_is_noticed()
    {
        var fewer = Drawing with { Paths = Drawing.Paths[1..] };

        Assert.Contains("has 2 paths, its DXF reads back 1",
            Assert.Throws<CutFileException>(() =>
                CutFileCheck.Verify([.. DxfCutFile.Write(fewer, DxfVersion.R12)], Drawing)).Message);
    }

    [Fact]
    public void A_truncated_file_is_not_taken_for_a_drawing() =>
        Assert.ThrowsAny<Exception>(() => CutFileCheck.Verify(Encoding.ASCII.GetBytes(Text[..(Text.Length / 2)]), Drawing));

    private static byte[] Replaced(string from, string to)
    {
        // In the entities only; the header may say the same in passing.
        var at = Text.IndexOf("ENTITIES", StringComparison.Ordinal);
        Assert.Contains(from, Text[at..]);
        return Encoding.ASCII.GetBytes(Text[..at] + Text[at..].Replace(from, to, StringComparison.Ordinal));
    }
}
