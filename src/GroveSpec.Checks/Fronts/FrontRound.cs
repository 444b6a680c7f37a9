using System.Collections.Immutable;
using GroveSpec.Craft.Fronts;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Fronts;

/// <summary>
/// The score all round. What is found is looked at once between each two critical bearings, and at every hundredth of a degree
/// that comes as near to one as rounding reaches; the rest of the score only where it can still decide.
/// </summary>
internal sealed class FrontRound
{
    /// <summary>What changes within so few degrees, a tenth of a step, changes at a point, and no front holds there.</summary>
    private const double PointWidth = 1e-3;

    private readonly FrontScore score;
    private readonly double[] weights = new double[FrontScore.Steps];
    private readonly double[] least = new double[FrontScore.Steps];
    private readonly double[] scores = new double[FrontScore.Steps];
    private readonly int[] rising = [.. Enumerable.Range(0, FrontScore.Steps)];
    private readonly List<FoundRange> ranges = [];
    private readonly FrontTurning turning;

    /// <summary>Looks all round.</summary>
    /// <param name="score">The score.</param>
    /// <param name="cancellation">Ends the work.</param>
    /// <exception cref="OperationCanceledException">The work was ended.</exception>
    public FrontRound(FrontScore score, CancellationToken cancellation)
    {
        this.score = score;
        var end = 0.0;
        foreach (var critical in score.Findings.Critical(cancellation).Append(new BearingRange(360, 360)))
        {
            cancellation.ThrowIfCancellationRequested();
            if (critical.From > end)
            {
                Fill(end, critical.From);
            }

            Follow(Math.Max(end, critical.From), critical.To);
            end = Math.Max(end, critical.To);
        }

        turning = new(weights);
        for (var step = 0; step < FrontScore.Steps; step++)
        {
            least[step] = weights[step] + turning.At(step, weights[step]);
        }

        Array.Fill(scores, double.NaN);
        Array.Sort([.. least], rising);
        Ranges = Joined(ranges);
    }

    /// <summary>What is found, with a border wherever its weight changes.</summary>
    public ImmutableArray<FoundRange> Ranges { get; }

    /// <summary>The score of any bearing.</summary>
    /// <param name="from">The bearing at which the viewer stands; one between two steps is turned from the step nearest to it.</param>
    /// <returns>Its parts.</returns>
    public FrontScoreParts Of(Bearing from)
    {
        var found = score.Findings.At(from);
        var (covered, sameness, narrowness) = score.Look(from);
        return new(found, turning.At((int)Math.Round(from.Degrees * FrontScore.StepsOfADegree) % FrontScore.Steps, found), covered, sameness, narrowness);
    }

    /// <summary>The score of a step.</summary>
    /// <param name="step">The step.</param>
    /// <returns>The score.</returns>
    public double At(int step)
    {
        if (double.IsNaN(scores[step]))
        {
            var from = FrontScore.BearingOf(step);
            score.Findings.Table.Turn(from);
            var (covered, sameness, narrowness) = score.Look(from);
            scores[step] = least[step] + covered + sameness + narrowness;
        }

        return scores[step];
    }

    /// <summary>The best step of those that are wanted; of equals the one nearest to a bearing, then the first.</summary>
    /// <param name="isWanted">Whether a step is.</param>
    /// <param name="near">The bearing.</param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>The step; null when none is wanted.</returns>
    public int? Best(Func<int, bool> isWanted, Bearing near, CancellationToken cancellation)
    {
        int? best = null;
        foreach (var step in rising)
        {
            cancellation.ThrowIfCancellationRequested();
            if (best is { } found && least[step] > scores[found])
            {
                break;
            }

            if (isWanted(step) && (best is not { } other || Compare(step, other, near) < 0))
            {
                _ = At(step);
                best = step;
            }
        }

        return best;
    }

    /// <summary>The range about a bearing in which no more is found.</summary>
    /// <param name="from">The bearing.</param>
    /// <param name="weight">The weight of what is found there.</param>
    /// <returns>The range; of no width where more is found to both sides at once.</returns>
    public FrontSpan Span(Bearing from, double weight)
    {
        var all = Ranges;
        if (all.All(range => range.Weight <= weight))
        {
            return new(from, from, new Angle(360));
        }

        // A point between two ranges belongs to the better one.
        var place = Enumerable.Range(0, all.Length)
            .Where(index => all[index].Weight <= weight && Holds(all[index].Range, from.Degrees))
            .DefaultIfEmpty(-1)
            .First();
        if (place < 0)
        {
            return new(from, from, new Angle(0));
        }

        var (first, last) = (place, place);
        while (all[(first + all.Length - 1) % all.Length].Weight <= weight)
        {
            first = (first + all.Length - 1) % all.Length;
        }

        while (all[(last + 1) % all.Length].Weight <= weight)
        {
            last = (last + 1) % all.Length;
        }

        Bearing begin = new(all[first].Range.From), end = new(all[last].Range.To);
        return new(begin, end, new Angle(new Bearing(end.Degrees - begin.Degrees).Degrees));
    }

    private int Compare(int step, int other, Bearing near)
    {
        var compared = At(step).CompareTo(At(other));
        compared = compared != 0 ? compared : Apart(FrontScore.BearingOf(step), near).CompareTo(Apart(FrontScore.BearingOf(other), near));
        return compared != 0 ? compared : step.CompareTo(other);
    }

    /// <summary>How far apart two bearings are.</summary>
    /// <param name="one">The one.</param>
    /// <param name="other">The other.</param>
    /// <returns>Degrees, from 0 to 180.</returns>
    public static double Apart(Bearing one, Bearing other) => 180 - Math.Abs(180 - Math.Abs(one.Degrees - other.Degrees));

    private static bool Holds(BearingRange range, double degrees) =>
        (degrees >= range.From - PointWidth && degrees <= range.To + PointWidth)
        || degrees + 360 <= range.To + PointWidth
        || degrees - 360 >= range.From - PointWidth;

    private static ImmutableArray<FoundRange> Joined(List<FoundRange> ranges)
    {
        var joined = ImmutableArray.CreateBuilder<FoundRange>();
        foreach (var next in ranges)
        {
            if (joined.Count > 0 && joined[^1].Weight == next.Weight)
            {
                joined[^1] = joined[^1] with { Range = new(joined[^1].Range.From, next.Range.To) };
            }
            else
            {
                joined.Add(next);
            }
        }

        return joined.ToImmutable();
    }

    /// <summary>Nothing changes in here.</summary>
    private void Fill(double from, double to)
    {
        var weight = score.Findings.At(new Bearing((from + to) / 2));
        ranges.Add(new(new(from, to), weight));
        var (first, end) = Between(from, to);
        weights.AsSpan(first, Math.Max(0, end - first)).Fill(weight);
    }

    /// <summary>In here anything may change, so each step is looked at.</summary>
    private void Follow(double from, double to)
    {
        var (first, end) = Between(from, to);
        for (var step = first; step < end; step++)
        {
            weights[step] = score.Findings.At(FrontScore.BearingOf(step));
        }

        if (to - from > PointWidth)
        {
            for (var (step, begin) = (first, from); begin < to; step++)
            {
                var stop = Math.Min(to, (step + 0.5) / FrontScore.StepsOfADegree);
                ranges.Add(new(new(begin, stop), step < end ? weights[step] : score.Findings.At(new Bearing((begin + stop) / 2))));
                begin = stop;
            }
        }
    }

    /// <summary>The steps of a range, its ends included.</summary>
    private static (int First, int End) Between(double from, double to)
    {
        var first = Math.Clamp((int)Math.Ceiling(from * FrontScore.StepsOfADegree) - 1, 0, FrontScore.Steps);
        while (first < FrontScore.Steps && FrontScore.BearingOf(first).Degrees < from)
        {
            first++;
        }

        var end = first;
        end = Math.Max(first, Math.Min(FrontScore.Steps, (int)Math.Floor(to * FrontScore.StepsOfADegree) - 1));
        while (end < FrontScore.Steps && FrontScore.BearingOf(end).Degrees <= to)
        {
            end++;
        }

        return (first, end);
    }
}
