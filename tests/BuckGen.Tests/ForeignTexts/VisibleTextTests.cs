using BuckGen.Quantities;
using Xunit;

namespace BuckGen.Tests.ForeignTexts;

public class VisibleTextTests
{
    [Theory]
    [MemberData(nameof(ForeignText.Names), MemberType = typeof(ForeignText))]
    public void What_is_seen_of_a_text_is_what_the_list_says(string name) =>
        Assert.Equal(ForeignText.Find(name).Shown, VisibleText.Escape(ForeignText.Find(name).Text));

    [Theory]
    [MemberData(nameof(ForeignText.Names), MemberType = typeof(ForeignText))]
    public void What_is_seen_once_stays_as_it_is(string name) =>
        Assert.Equal(ForeignText.Find(name).Shown, VisibleText.Escape(ForeignText.Find(name).Shown));

    [Fact]
    public void No_character_of_any_plane_passes_that_may_not_be_shown()
    {
        for (var code = 0; code <= 0xFFFF; code++) Assert.Null(ForeignText.Hidden(VisibleText.Escape($"a{(char)code}b")));
        for (var code = 0x10000; code <= 0x10FFFF; code++)
            Assert.Null(ForeignText.Hidden(VisibleText.Escape(char.ConvertFromUtf32(code))));
    }

    [Fact]
    public void Lines_keep_their_breaks_and_nothing_else() =>
        Assert.Equal("one\n\\u001Btwo\\r\n", VisibleText.Lines("one\n\etwo\r\n"));

    [Theory]
    [InlineData(300, 300, 300)]
    [InlineData(301, 300, 300)]
    [InlineData(5000, 300, 300)]
    [InlineData(21, 20, 20)]
    [InlineData(20, 20, 20)]
    public void A_long_text_loses_its_middle_and_says_so(int length, int longest, int shown)
    {
        var text = $"start{new string('x', length - 8)}end";

        var seen = VisibleText.Escape(text, longest);

        Assert.Equal(shown, seen.Length);
        Assert.StartsWith("start", seen);
        Assert.EndsWith(longest > 20 ? "end" : "nd", seen);
        Assert.Equal(length > longest, seen.Contains("[...]", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void A_cut_never_leaves_half_a_character(int shift)
    {
        var seen = VisibleText.Escape(new string('x', shift) + string.Concat(Enumerable.Repeat("🚤", 500)), 300);

        Assert.Null(ForeignText.Hidden(seen));
        Assert.InRange(seen.Length, 298, 300);
    }

    [Fact]
    public void A_limit_too_short_for_the_mark_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => VisibleText.Escape("x", 19));
}
