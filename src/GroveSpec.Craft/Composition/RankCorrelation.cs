namespace GroveSpec.Craft.Composition;

/// <summary>How far two orders of the same things agree.</summary>
public static class RankCorrelation
{
    /// <summary>Spearman's coefficient: the correlation of the ranks, equal values sharing the mean of theirs (Spearman 1904, from memory).</summary>
    /// <param name="one">A value for each thing, finite.</param>
    /// <param name="other">Another value for each, in the same order.</param>
    /// <returns>From −1, each the reverse of the other, to 1, the same order; 0 for fewer than two things or when all values of one are equal.</returns>
    public static double Spearman(IReadOnlyList<double> one, IReadOnlyList<double> other)
    {
        double[] left = Ranks(one), right = Ranks(other);
        var mean = (left.Length + 1) / 2.0;
        double together = 0, leftAlone = 0, rightAlone = 0;
        for (var index = 0; index < left.Length; index++)
        {
            together += (left[index] - mean) * (right[index] - mean);
            leftAlone += (left[index] - mean) * (left[index] - mean);
            rightAlone += (right[index] - mean) * (right[index] - mean);
        }

        return leftAlone > 0 && rightAlone > 0 ? together / Math.Sqrt(leftAlone * rightAlone) : 0;
    }

    private static double[] Ranks(IReadOnlyList<double> values)
    {
        var order = new int[values.Count];
        for (var index = 0; index < order.Length; index++)
        {
            order[index] = index;
        }

        Array.Sort(order, (left, right) => values[left].CompareTo(values[right]));
        var ranks = new double[order.Length];
        for (var start = 0; start < order.Length;)
        {
            var end = start;
            while (end < order.Length && values[order[end]] == values[order[start]])
            {
                end++;
            }

            for (var place = start; place < end; place++)
            {
                ranks[order[place]] = (start + 1 + end) / 2.0;
            }

            start = end;
        }

        return ranks;
    }
}
