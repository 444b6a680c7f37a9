using CsCheck;
using Google.OrTools.LinearSolver;
using GroveSpec.Craft.Calendar;
using GroveSpec.Model.Quantities;
using NodaTime;
using Xunit;

namespace GroveSpec.Craft.Tests.Calendar;

/// <summary>Holds the network against solvers that share nothing with it: all ways of choosing days, and linear programming (Google OR-Tools, GLOP).</summary>
public sealed class TimeNetworkTests
{
    private static readonly int Zero = DayCount.NumberOf(new LocalDate(2027, 1, 20));

    [Fact]
    public void Small_networks_of_days_weeks_and_months_agree_with_trying_all_days_on_8000_of_them()
    {
        const int Nodes = 3;
        const int Days = 44;
        var unit = Gen.Frequency((4, Gen.Const(TimeUnit.Days)), (1, Gen.Const(TimeUnit.Weeks)), (2, Gen.Const(TimeUnit.Months)));
        var link = Gen.Select(Gen.Int[0, Nodes - 1], Gen.Int[1, Nodes - 1], Gen.Int[-12, 12], unit, Gen.Bool, (from, step, count, of, isAtLeast) =>
            new TimeLink(from, (from + step) % Nodes, of == TimeUnit.Days ? count : count / (of == TimeUnit.Weeks ? 4 : 10), of, isAtLeast, 0));
        var window = Gen.Select(Gen.Int[0, Days - 1], Gen.Int[0, 30], (first, length) => (First: first, Last: Math.Min(Days - 1, first + length)));
        var (met, unmet) = (0, 0);
        Gen.Select(window.Array[Nodes], link.Array[1, 6]).Sample(
            (windows, links) =>
            {
                var network = new TimeNetwork(Nodes);
                for (var node = 0; node < Nodes; node++)
                {
                    network.Add(new TimeBound(node, Zero + windows[node].First, IsEarliest: true, (2 * node) + 100));
                    network.Add(new TimeBound(node, Zero + windows[node].Last, IsEarliest: false, (2 * node) + 101));
                }

                foreach (var (one, index) in links.Select((one, index) => (one, index)))
                {
                    network.Add(one with { Clause = index });
                }

                var (earliest, latest) = (new int[Nodes], new int[Nodes]);
                Array.Fill(earliest, int.MaxValue);
                var leads = links.Select(one => Enumerable.Range(0, Days).Select(day => Lead(day, one)).ToArray()).ToArray();
                var isMet = false;
                var chosen = new int[Nodes];
                for (chosen[0] = windows[0].First; chosen[0] <= windows[0].Last; chosen[0]++)
                {
                    for (chosen[1] = windows[1].First; chosen[1] <= windows[1].Last; chosen[1]++)
                    {
                        for (chosen[2] = windows[2].First; chosen[2] <= windows[2].Last; chosen[2]++)
                        {
                            if (Holds(links, leads, chosen))
                            {
                                isMet = true;
                                for (var node = 0; node < Nodes; node++)
                                {
                                    earliest[node] = Math.Min(earliest[node], chosen[node]);
                                    latest[node] = Math.Max(latest[node], chosen[node]);
                                }
                            }
                        }
                    }
                }

                var solution = network.Solve();
                Assert.Equal(isMet, solution.Conflicts.IsEmpty);
                if (isMet)
                {
                    Interlocked.Increment(ref met);
                    Assert.Equal(earliest, solution.Earliest.Select(day => day!.Value - Zero));
                    Assert.Equal(latest, solution.Latest.Select(day => day!.Value - Zero));
                }
                else
                {
                    Interlocked.Increment(ref unmet);
                }
            },
            iter: 8_000);
        Assert.True(met > 1_000 && unmet > 1_000, $"{met} could be met and {unmet} could not: too few of a kind to tell.");
    }

    [Fact]
    public void Larger_networks_agree_with_linear_programming_on_2000_of_them_and_a_conflict_is_minimal()
    {
        var network = Gen.Int[4, 30].SelectMany(nodes => Gen.Select(
            Gen.Const(nodes),
            Gen.Select(Gen.Int[0, nodes - 1], Gen.Int[0, 300], Gen.Bool, (node, day, isEarliest) => (Node: node, Day: isEarliest ? day : day + 120, IsEarliest: isEarliest)).Array[1, nodes],
            Gen.Select(Gen.Int[0, nodes - 1], Gen.Int[1, nodes - 1], Gen.Int[-15, 25], Gen.Bool, (from, step, count, isAtLeast) => new TimeLink(from, (from + step) % nodes, isAtLeast ? count : count + 25, TimeUnit.Days, isAtLeast, 0)).Array[1, 2 * nodes]));
        var (met, unmet) = (0, 0);
        network.Sample(
            given =>
            {
                var (nodes, windows, links) = given;
                var bounds = windows.Select((one, index) => new TimeBound(one.Node, Zero + one.Day, one.IsEarliest, index)).ToArray();
                links = [.. links.Select((one, index) => one with { Clause = bounds.Length + index })];
                var own = new TimeNetwork(nodes);
                Array.ForEach(bounds, own.Add);
                Array.ForEach(links, own.Add);
                var solution = own.Solve();

                var first = Solved(nodes, bounds, links, isEarliest: true);
                Assert.Equal(first is not null, solution.Conflicts.IsEmpty);
                if (first is not null)
                {
                    Interlocked.Increment(ref met);
                    Compare(first, solution.Earliest);
                    Compare(Solved(nodes, bounds, links, isEarliest: false)!, solution.Latest);
                    return;
                }

                Interlocked.Increment(ref unmet);
                foreach (var (conflict, days) in solution.Conflicts)
                {
                    Assert.True(days > 0);
                    Assert.Null(Solved(nodes, Of(bounds, conflict), Of(links, conflict), isEarliest: true));
                    Assert.All(conflict, clause => Assert.NotNull(Solved(nodes, Of(bounds, conflict.Remove(clause)), Of(links, conflict.Remove(clause)), isEarliest: true)));
                }
            },
            iter: 2_000,
            threads: 1);
        Assert.True(met > 300 && unmet > 300, $"{met} could be met and {unmet} could not: too few of a kind to tell.");
    }

    [Fact]
    public void Months_that_drive_each_other_on_come_to_rest_where_they_are_short_enough()
    {
        // B a month or more after A, A 30 days or less before B: no month of 31 days is short enough, the one from 31 January is.
        var network = new TimeNetwork(2);
        network.Add(new TimeBound(0, DayCount.NumberOf(new LocalDate(2027, 1, 2)), IsEarliest: true, 0));
        network.Add(new TimeLink(0, 1, 1, TimeUnit.Months, IsAtLeast: true, 1));
        network.Add(new TimeLink(0, 1, 30, TimeUnit.Days, IsAtLeast: false, 2));

        var solution = network.Solve();

        Assert.Empty(solution.Conflicts);
        Assert.Equal(new LocalDate(2027, 1, 29), DayCount.DayOf(solution.Earliest[0]!.Value));
        Assert.Equal(new LocalDate(2027, 2, 28), DayCount.DayOf(solution.Earliest[1]!.Value));
    }

    [Fact]
    public void Months_that_never_come_to_rest_are_a_conflict()
    {
        var network = new TimeNetwork(2);
        network.Add(new TimeLink(0, 1, 1, TimeUnit.Months, IsAtLeast: true, 7));
        network.Add(new TimeLink(0, 1, 27, TimeUnit.Days, IsAtLeast: false, 9));

        Assert.Equal([7, 9], Assert.Single(network.Solve().Conflicts).Clauses);
    }

    [Fact]
    public void Conflicts_that_have_nothing_in_common_are_found_together()
    {
        var network = new TimeNetwork(1_200);
        for (var index = 0; index < 300; index++)
        {
            network.Add(new TimeLink(2 * index, (2 * index) + 1, 1, TimeUnit.Months, IsAtLeast: true, 4 * index));
            network.Add(new TimeLink(2 * index, (2 * index) + 1, 27, TimeUnit.Days, IsAtLeast: false, (4 * index) + 1));
        }

        Assert.Equal(Enumerable.Range(0, 300).Select(index => (4 * index, (4 * index) + 1)), network.Solve().Conflicts.Select(conflict => (conflict.Clauses[0], conflict.Clauses[1])));
    }

    private static TimeBound[] Of(TimeBound[] bounds, ICollection<int> clauses) => [.. bounds.Where(bound => clauses.Contains(bound.Clause))];

    private static TimeLink[] Of(TimeLink[] links, ICollection<int> clauses) => [.. links.Where(link => clauses.Contains(link.Clause))];

    private static int Lead(int day, TimeLink link)
    {
        var from = new LocalDate(2027, 1, 20).PlusDays(day);
        var to = link.Unit switch
        {
            TimeUnit.Days => from.PlusDays(link.Count),
            TimeUnit.Weeks => from.PlusWeeks(link.Count),
            _ => from.PlusMonths(link.Count),
        };
        return (int)Period.DaysBetween(new LocalDate(2027, 1, 20), to);
    }

    private static bool Holds(TimeLink[] links, int[][] leads, int[] chosen)
    {
        for (var index = 0; index < links.Length; index++)
        {
            var bound = leads[index][chosen[links[index].From]];
            if (links[index].IsAtLeast ? chosen[links[index].To] < bound : chosen[links[index].To] > bound)
            {
                return false;
            }
        }

        return true;
    }

    private static void Compare(double[] expected, int?[] found)
    {
        for (var node = 0; node < expected.Length; node++)
        {
            // A day that reaches the end of the solver's range is bounded by nothing.
            if (Math.Abs(expected[node]) > 50_000)
            {
                Assert.Null(found[node]);
            }
            else
            {
                Assert.Equal(expected[node], found[node]!.Value - Zero, 3);
            }
        }
    }

    /// <summary>The earliest or latest days by linear programming; null when the bounds cannot be met. As the days of either kind can all be reached at once, their sum is what is made small or large.</summary>
    private static double[]? Solved(int nodes, TimeBound[] bounds, TimeLink[] links, bool isEarliest)
    {
        using var solver = Solver.CreateSolver("GLOP");
        var days = Enumerable.Range(0, nodes).Select(node => solver.MakeNumVar(-100_000, 100_000, $"d{node}")).ToArray();
        foreach (var bound in bounds)
        {
            solver.Add(bound.IsEarliest ? days[bound.Node] >= bound.Day - Zero : days[bound.Node] <= bound.Day - Zero);
        }

        foreach (var link in links)
        {
            solver.Add(link.IsAtLeast ? days[link.To] - days[link.From] >= link.Count : days[link.To] - days[link.From] <= link.Count);
        }

        var sum = new LinearExpr();
        foreach (var day in days)
        {
            sum += day;
        }

        if (isEarliest)
        {
            solver.Minimize(sum);
        }
        else
        {
            solver.Maximize(sum);
        }

        return solver.Solve() == Solver.ResultStatus.OPTIMAL ? [.. days.Select(day => day.SolutionValue())] : null;
    }
}
