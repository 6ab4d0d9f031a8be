using System.Collections.Immutable;
using BuckGen.Design.Forming;
using BuckGen.Design.Grouping;
using BuckGen.Geometry;
using Xunit;

namespace BuckGen.Tests.Design.Grouping;

public class IslandGroupsTests
{
    private static readonly Func<Bounds, bool> Frame = b => b is { Width: <= 250, Height: <= 150 };

    [Fact]
    public void Neighbours_go_together_in_the_fewest_groups()
    {
        // Five letters of 100 mm with 20 mm between them: two of them fit 250 mm, three do not.
        var groups = IslandGroups.Create(Row(5, 100, 120, 20), Frame);

        Assert.Equal(3, groups.Length);
        Assert.Equal([0, 1, 2, 3, 4], groups.SelectMany(g => g));
    }

    [Fact]
    public void Of_ways_with_the_same_number_the_most_even_is_taken() =>
        // Four letters of 70 mm: three would fit, but two and two are even.
        Assert.Equal([2, 2], IslandGroups.Create(Row(4, 70, 120, 10), Frame).Select(g => g.Length));

    [Fact]
    public void A_dot_stays_with_its_letter()
    {
        Bounds[] units = [new(0, 0, 110, 120), new(130, 0, 240, 120), new(260, 0, 290, 80), new(262, 95, 288, 120)];

        var groups = IslandGroups.Create(units, Frame);

        Assert.Equal(2, groups.Length);
        Assert.Contains(groups, g => g.Contains(2) && g.Contains(3));
    }

    [Fact]
    public void Two_lines_of_letters_are_read_from_the_upper_left()
    {
        // Two lines, 400 mm high together: no frame of 150 mm holds letters of both.
        Bounds[] units = [.. Row(4, 100, 120, 20).Select(b => new Bounds(b.MinX, 0, b.MaxX, 120)),
            .. Row(4, 100, 120, 20).Select(b => new Bounds(b.MinX, 280, b.MaxX, 400))];

        var groups = IslandGroups.Create(units, Frame);

        Assert.Equal(["4 5", "6 7", "0 1", "2 3"], groups.Select(g => string.Join(' ', g)));
    }

    [Fact]
    public void What_fits_no_frame_stands_alone()
    {
        Bounds[] units = [new(0, 0, 60, 120), new(80, 0, 400, 120), new(420, 0, 480, 120)];

        Assert.Equal([[0], [1], [2]], IslandGroups.Create(units, Frame).Select(g => g.ToArray()));
    }

    [Fact]
    public void Every_unit_is_in_one_group_that_fits_and_no_way_has_fewer()
    {
        var random = new Random(3);
        for (var run = 0; run < 200; run++)
        {
            var (x, units) = (0.0, new List<Bounds>());
            for (var i = 0; i < 1 + run % 9; i++)
            {
                var width = 20 + random.NextDouble() * 150;
                units.Add(new(x, 0, x + width, 50 + random.NextDouble() * 90));
                x += width + 5 + random.NextDouble() * 40;
            }

            var groups = IslandGroups.Create(units, Frame);

            Assert.Equal(Enumerable.Range(0, units.Count), groups.SelectMany(g => g).Order());
            Assert.All(groups, g => Assert.True(Frame(Around(g, units))));
            Assert.Equal(Fewest(units), groups.Length);
        }
    }

    [Theory]
    [InlineData(250, 150, 0)]
    [InlineData(260, 150, 10)]
    [InlineData(150, 250, 0)]
    [InlineData(250, 175, 25)]
    public void The_room_in_a_frame_is_what_the_gaps_leave(double width, double height, double missing)
    {
        // 300 x 200 mm with 25 mm on every side of what is formed.
        var room = new FrameRoom(new FormerSpec { Opening = new(300, 200) }, true, 10, 25, 3);

        Assert.Equal(missing, Math.Max(0, room.Missing(new(0, 0, width, height))), 1e-9);
    }

    [Fact]
    public void A_wide_base_needs_room_of_its_own() =>
        // 250 + 2 · 24 + 2 · 3 mm in 300 mm.
        Assert.Equal(4, new FrameRoom(new FormerSpec { Opening = new(300, 200) }, true, 24, 25, 3).Missing(new(0, 0, 250, 100)),
            1e-9);

    [Fact]
    public void A_platen_counts_too() =>
        Assert.Equal(20, new FrameRoom(new FormerSpec { Opening = new(300, 200), Platen = new(250, 190) }, true, 10, 25, 3)
            .Missing(new(0, 0, 250, 100)), 1e-9);

    private static Bounds[] Row(int count, double width, double height, double gap) =>
        [.. Enumerable.Range(0, count).Select(i => new Bounds(i * (width + gap), 0, i * (width + gap) + width, height))];

    private static Bounds Around(ImmutableArray<int> members, List<Bounds> units) =>
        members.Select(m => units[m]).Aggregate((a, b) => Bounds.FromCorners(
            new(Math.Min(a.MinX, b.MinX), Math.Min(a.MinY, b.MinY)), new(Math.Max(a.MaxX, b.MaxX), Math.Max(a.MaxY, b.MaxY))));

    /// <summary>Filling one frame after the other from the left takes the fewest for things in a row.</summary>
    private static int Fewest(List<Bounds> units)
    {
        var (count, start) = (0, double.NegativeInfinity);
        foreach (var unit in units)
            if (unit.MaxX - start > 250) (count, start) = (count + 1, unit.MinX);
        return count;
    }
}
