using GroveSpec.Drawing.Scene;
using Xunit;

namespace GroveSpec.Drawing.Tests.Scene;

public sealed class ObstacleMapTests
{
    // A page of one cell holds every obstacle in that cell, so nothing can be overlooked there.
    [Fact]
    public void What_a_place_costs_does_not_hang_on_how_the_page_is_cut_into_cells()
    {
        var random = new Random(20);
        for (var planting = 0; planting < 200; planting++)
        {
            var cut = new ObstacleMap(new CellGrid(new Box(10, 20, 810, 620)));
            var whole = new ObstacleMap(new CellGrid(new Box(0, 0, 1, 1)));
            for (var i = 0; i < 40; i++)
            {
                double Across() => random.Next(4) == 0 ? 10 + (CellGrid.Side * random.Next(-2, 28)) : random.Next(-100, 900) + random.NextDouble();
                double Down() => random.Next(4) == 0 ? 20 + (CellGrid.Side * random.Next(-2, 22)) : random.Next(-100, 720) + random.NextDouble();
                var (x, y, toX, toY) = (Across(), Down(), Across(), Down());
                (toX, toY) = random.Next(5) switch { 0 => (x, toY), 1 => (toX, y), 2 => (x + random.Next(-9, 9), y + random.Next(-9, 9)), _ => (toX, toY) };
                foreach (var map in (ObstacleMap[])[cut, whole])
                {
                    switch (i % 4)
                    {
                        case 0:
                            map.Avoid(new Box(Math.Min(x, toX), Math.Min(y, toY), Math.Max(x, toX), Math.Max(y, toY)), 3);
                            break;
                        case 1:
                            map.AvoidDisc(x, y, i, 5);
                            break;
                        default:
                            map.AvoidLine(x, y, toX, toY, 7);
                            break;
                    }
                }
            }

            for (var i = 0; i < 200; i++)
            {
                var place = Box.About(random.Next(30, 780), random.Next(40, 600), 1 + random.Next(30), 1 + random.Next(20));
                Assert.Equal(whole.CostOf(place, double.PositiveInfinity).Least, cut.CostOf(place, double.PositiveInfinity).Least, 9);
            }
        }
    }

    [Fact]
    public void Counting_stops_at_a_bound_and_says_so()
    {
        var map = new ObstacleMap(new CellGrid(new Box(0, 0, 100, 100)));
        map.Avoid(new Box(0, 0, 50, 50), 10);
        map.Avoid(new Box(0, 0, 50, 50), 10);

        Assert.Equal(new ObstacleCost(20, IsWhole: true), map.CostOf(new Box(10, 10, 20, 20), 20));
        var stopped = map.CostOf(new Box(10, 10, 20, 20), 9);
        Assert.Equal(new ObstacleCost(10, IsWhole: false), stopped);
        Assert.True(stopped.Answers(9));
        Assert.False(stopped.Answers(10));
    }
}
