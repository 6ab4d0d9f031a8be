using Xunit;

namespace BuckGen.Tests.Cutting.Drilling.Rs274;

/// <summary>The interpreter itself: it must notice what a machine would trip over.</summary>
public class MachineTests
{
    private const string Start = "G21 G90 G17 G94 G98 G80\nG0 Z10\nS9000 M3\nF300\n";
    private const string End = "G80\nG0 Z10\nM5\nM2\n";

    [Theory]
    [InlineData("G81 X1 Y1 Z-2 R1", 4)]
    [InlineData("G83 X1 Y1 Z-2 R1 Q1.5", 7)]
    [InlineData("G99 G81 X1 Y1 Z-2 R1", 5)]
    public void A_cycle_is_taken_apart_into_straight_moves(string cycle, int count) =>
        Assert.Equal(1 + count, Rs274Machine.Run(Start + cycle + "\n" + End).Count);

    [Theory]
    [InlineData("G0 G1 X1", "second word of its modal group")]
    [InlineData("G80\nX1", "line 6")]
    [InlineData("G81 X1 Y1 Z-2", "without Z or R")]
    [InlineData("G81 X1 Y1 Z2 R1", "Z above R")]
    [InlineData("G81 Z-2 R1", "without X and Y")]
    [InlineData("G83 X1 Y1 Z-2 R1", "without a Q")]
    [InlineData("G80 X1", "without a motion")]
    [InlineData("G0 X1 X2", "stands twice")]
    [InlineData("G0 X1,5", "not made of words")]
    [InlineData("G0 X1e3", "E is unknown")]
    [InlineData("G0 X#1", "not made of words")]
    [InlineData("O100 sub", "not made of words")]
    [InlineData("(one (two)) G0 X1", "not closed")]
    [InlineData("M5\nG1 Z-1", "spindle stands")]
    [InlineData("M6 T1", "not a word we use")]
    public void What_the_report_forbids_is_refused(string lines, string problem) =>
        Assert.Contains(problem, Refusal(Start + lines + "\n" + End), StringComparison.Ordinal);

    [Theory]
    [InlineData("G0 Z10\nM2", "before units")]
    [InlineData("G21 G90 G17 G94\nM3\nM2", "no speed")]
    [InlineData("G21 G90 G17 G94\nS100 M3\nG1 Z-1\nM2", "without a feed")]
    [InlineData("G21 G90 G17 G94\nS100 M3\nM2", "still turns")]
    [InlineData("G21 G90 G17 G94", "no end")]
    public void A_program_must_say_all_it_leans_on(string program, string problem) =>
        Assert.Contains(problem, Refusal(program), StringComparison.Ordinal);

    private static string Refusal(string program) => Assert.Throws<Rs274Exception>(() => Rs274Machine.Run(program)).Message;
}
