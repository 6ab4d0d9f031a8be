using BuckGen.Cancellation;
using Xunit;

namespace BuckGen.Tests.Cancellation;

/// <summary>The same work on several things gives its results in their order, and fails in the same way every time.</summary>
public class ParallelWorkTests
{
    [Fact]
    public void Results_come_in_the_order_of_the_things()
    {
        var things = Enumerable.Range(0, 1000).ToArray();

        Assert.Equal(things.Select(i => i * i), ParallelWork.Select(things, i => i * i, default));
    }

    [Fact]
    public void The_failure_of_the_first_thing_is_thrown_as_it_is()
    {
        var failure = Assert.Throws<InvalidOperationException>(() => ParallelWork.Select([.. Enumerable.Range(0, 100)],
            i => i is 98 or 3 ? throw new InvalidOperationException($"at {i}") : i, default));

        Assert.Equal("at 3", failure.Message);
    }

    [Fact]
    public void It_can_be_stopped() => Assert.Throws<OperationCanceledException>(
        () => ParallelWork.Select([1, 2], i => i, new CancellationToken(true)));
}
