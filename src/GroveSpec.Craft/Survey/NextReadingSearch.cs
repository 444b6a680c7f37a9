namespace GroveSpec.Craft.Survey;

/// <summary>Finds the reading that would tell most.</summary>
internal static class NextReadingSearch
{
    private const int MostPairs = 4000;

    /// <summary>The variance of the distance between two trunks, per squared deviation of a reading.</summary>
    public static double Variance(SurveyNetwork network, double[] places, double[] cofactors, int one, int other)
    {
        Span<(int Column, double Slope)> slopes = stackalloc (int, double)[4];
        network.Slopes(places, one, other, slopes);
        var sum = 0.0;
        foreach (var (row, slope) in slopes)
        {
            foreach (var (column, across) in slopes)
            {
                sum += row >= 0 && column >= 0 ? slope * across * cofactors[(row * network.Unknowns) + column] : 0;
            }
        }

        return sum;
    }

    /// <summary>The pair whose distance changes most with what is free.</summary>
    /// <param name="solved">A network with free motions.</param>
    /// <returns>The pair, the free trunk first; null where none would change.</returns>
    public static (int From, int To)? ForFree(SolvedNetwork solved)
    {
        var network = solved.Network;
        var (best, most) = (((int, int)?)null, 1e-3);
        var slopes = new (int Column, double Slope)[4];
        foreach (var (one, other) in Pairs(network, (one, other) => solved.IsFree[one] || solved.IsFree[other]))
        {
            network.Slopes(solved.Places, one, other, slopes);
            var change = 0.0;
            foreach (var (_, vector) in solved.Motions)
            {
                var along = slopes.Where(slope => slope.Column >= 0).Sum(slope => slope.Slope * vector[slope.Column]);
                change += along * along / vector.Sum(value => value * value);
            }

            if (change > most + 1e-9)
            {
                (best, most) = (solved.IsFree[one] ? (one, other) : (other, one), change);
            }
        }

        return best;
    }

    /// <summary>The reading that tells a place from its other place best: to the trunk whose distance from both differs most.</summary>
    /// <param name="solved">The network.</param>
    /// <param name="others">The other places.</param>
    /// <returns>The pair, the trunk with two places first, and by how many millimetres the distances differ; null where none does by much.</returns>
    public static (int From, int To, double Difference)? ForMirror(SolvedNetwork solved, (double X, double Y)?[] others)
    {
        var network = solved.Network;
        var (best, most) = (((int, int, double)?)null, 2.0);
        for (var one = 0; one < network.Count; one++)
        {
            for (var to = 0; to < network.Count; to++)
            {
                if (others[one] is not { } place || others[to] is not null || solved.IsFree[to] || one == to)
                {
                    continue;
                }

                double dx = place.X - solved.Places[2 * to], dy = place.Y - solved.Places[(2 * to) + 1];
                var difference = Math.Abs(Math.Sqrt((dx * dx) + (dy * dy)) - SurveyNetwork.Distance(solved.Places, one, to));
                if (difference > most + 1e-9)
                {
                    (best, most) = ((one, to, difference), difference);
                }
            }
        }

        return best;
    }

    /// <summary>Of trunks that may each stand on either side, the two between which a reading tells best whether both stand on the same one. Two between which one was read turn over together already.</summary>
    /// <param name="solved">The network.</param>
    /// <param name="others">The other places.</param>
    /// <returns>The pair, and by how many millimetres the distances differ; null where none does by much.</returns>
    public static (int From, int To, double Difference)? ForSameSide(SolvedNetwork solved, (double X, double Y)?[] others)
    {
        var (best, most) = (((int, int, double)?)null, 2.0);
        foreach (var (one, other) in Unread(solved.Network))
        {
            if (others[one] is not null && others[other] is { } across)
            {
                double dx = across.X - solved.Places[2 * one], dy = across.Y - solved.Places[(2 * one) + 1];
                var difference = Math.Abs(Math.Sqrt((dx * dx) + (dy * dy)) - SurveyNetwork.Distance(solved.Places, one, other));
                if (difference > most + 1e-9)
                {
                    (best, most) = ((one, other, difference), difference);
                }
            }
        }

        return best;
    }

    /// <summary>The reading that would narrow the widest ellipse most; of several that do so alike, the one that narrows all together most.</summary>
    /// <param name="solved">A network without free motions.</param>
    /// <param name="isUnreadAsked">Whether only pairs are looked at between which nothing was read.</param>
    /// <returns>The pair, and half the long axis of the widest ellipse before and after, per deviation of a reading; null where nothing is sought, or no such pair is left.</returns>
    public static (int From, int To, double Before, double After)? ForNarrowing(SolvedNetwork solved, bool isUnreadAsked)
    {
        var (network, size) = (solved.Network, solved.Network.Unknowns);
        if (size == 0)
        {
            return null;
        }

        var cofactors = solved.Cofactors();
        var before = Widest(network, cofactors, null, 0);
        var (best, least, leastSum) = (((int, int)?)null, double.PositiveInfinity, double.PositiveInfinity);
        var gain = new double[size];
        var slopes = new (int Column, double Slope)[4];
        foreach (var (one, other) in isUnreadAsked ? Unread(network) : Pairs(network, (_, _) => true))
        {
            network.Slopes(solved.Places, one, other, slopes);
            Array.Clear(gain);
            foreach (var (column, slope) in slopes)
            {
                for (var row = 0; column >= 0 && row < size; row++)
                {
                    gain[row] += slope * cofactors[(row * size) + column];
                }
            }

            // Another reading takes g·gᵀ/(1 + aᵀg) off the covariance.
            var scale = 1 / (1 + slopes.Where(slope => slope.Column >= 0).Sum(slope => slope.Slope * gain[slope.Column]));
            var (widest, sum) = Widest(network, cofactors, gain, scale);
            if (widest < least - 1e-9 || (widest < least + 1e-9 && sum < leastSum - 1e-9))
            {
                (best, least, leastSum) = ((one, other), widest, sum);
            }
        }

        return best is { } pair ? (pair.Item1, pair.Item2, before.Widest, least) : null;
    }

    private static (double Widest, double Sum) Widest(SurveyNetwork network, double[] cofactors, double[]? gain, double scale)
    {
        double widest = 0, sum = 0;
        for (var trunk = 0; trunk < network.Count; trunk++)
        {
            var (x, y) = (network.Column(trunk, 0), network.Column(trunk, 1));
            double xx = At(x, x), xy = At(x, y), yy = At(y, y);
            var middle = (xx + yy) / 2;
            widest = Math.Max(widest, Math.Sqrt(Math.Max(0, middle + Math.Sqrt(((xx - yy) * (xx - yy) / 4) + (xy * xy)))));
            sum += xx + yy;
        }

        return (widest, sum);

        double At(int row, int column) => row < 0 || column < 0 ? 0
            : cofactors[(row * network.Unknowns) + column] - (gain is null ? 0 : scale * gain[row] * gain[column]);
    }

    /// <summary>Pairs that are not both known; first those that were not read, since a distance is better read another way than again.</summary>
    private static IEnumerable<(int One, int Other)> Pairs(SurveyNetwork network, Func<int, int, bool> isAsked)
    {
        var read = Read(network);
        var all = All(network).Where(pair => isAsked(pair.One, pair.Other));
        return all.Where(pair => !read.Contains(pair)).Concat(all.Where(read.Contains)).Take(MostPairs);
    }

    private static IEnumerable<(int One, int Other)> Unread(SurveyNetwork network)
    {
        var read = Read(network);
        return All(network).Where(pair => !read.Contains(pair)).Take(MostPairs);
    }

    private static HashSet<(int One, int Other)> Read(SurveyNetwork network) =>
        network.Readings.Select(reading => (Math.Min(reading.From, reading.To), Math.Max(reading.From, reading.To))).ToHashSet();

    private static IEnumerable<(int One, int Other)> All(SurveyNetwork network) =>
        from one in Enumerable.Range(0, network.Count)
        from other in Enumerable.Range(one + 1, network.Count - one - 1)
        where !(network.IsKnown[one] && network.IsKnown[other])
        select (one, other);
}
