using BuckGen.Quantities;
using Xunit;

namespace BuckGen.Tests.Quantities;

public class WordsTests
{
    private enum Fruit
    {
        Apple,
        Pear,
        Fig,
    }

    [Theory]
    [InlineData("apple")]
    [InlineData("APPLE")]
    [InlineData("Apple")]
    public void A_choice_is_read_in_any_case(string text)
    {
        Assert.True(Words.TryParse<Fruit>(text, out var value));
        Assert.Equal(Fruit.Apple, value);
    }

    [Theory]
    [InlineData("1")]
    [InlineData("apple,pear")]
    [InlineData("plum")]
    [InlineData("")]
    [InlineData(null)]
    [InlineData(" apple")]
    public void Numbers_lists_and_other_words_are_no_choice(string? text) => Assert.False(Words.TryParse<Fruit>(text, out _));

    [Fact]
    public void Choices_are_named_in_lower_case()
    {
        Assert.Equal("fig", Words.Format(Fruit.Fig));
        Assert.Equal("apple, pear or fig", Words.List<Fruit>());
    }
}
