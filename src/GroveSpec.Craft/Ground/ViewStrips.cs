namespace GroveSpec.Craft.Ground;

/// <summary>Where across the picture a newcomer's foot would make gaps even that follow each other in the view: strips that may be far narrower than the gaps.</summary>
internal sealed class ViewStrips
{
    private readonly (double Left, double Right)[] strips;

    /// <summary>Lays out the strips.</summary>
    /// <param name="others">Where across the picture the feet of the others are, in millimetres, in any order.</param>
    /// <param name="percent">From what difference on gaps are not even, in percent of the longer.</param>
    public ViewStrips(IEnumerable<double> others, double percent)
    {
        var rest = 1 - (percent / 100);
        double[] feet = [.. others.Where(double.IsFinite).Order()];
        var found = new List<(double Left, double Right)>();
        for (var after = 0; after <= feet.Length && rest > 0; after++)
        {
            double left = after > 0 ? feet[after - 1] : double.NegativeInfinity, right = after < feet.Length ? feet[after] : double.PositiveInfinity;
            if (after > 0 && after < feet.Length)
            {
                // Halfway, u and g − u are even from g·rest / (1 + rest) on.
                var gap = right - left;
                found.Add((left + (gap * rest / (1 + rest)), right - (gap * rest / (1 + rest))));
            }

            if (after > 1)
            {
                var gap = left - feet[after - 2];
                found.Add((left + (gap * rest), Math.Min(left + (gap / rest), right)));
            }

            if (after < feet.Length - 1)
            {
                var gap = feet[after + 1] - right;
                found.Add((Math.Max(right - (gap / rest), left), right - (gap * rest)));
            }
        }

        strips = [.. Joined(found.Where(strip => strip.Left < strip.Right).OrderBy(strip => strip.Left))];
    }

    /// <summary>How far on the way between two places of the picture strips lie that are narrower than the way, and what lies between them.</summary>
    /// <param name="from">A place across the picture in millimetres.</param>
    /// <param name="to">Another.</param>
    /// <returns>Shares of the way, from 0 to 1, in rising order.</returns>
    public IReadOnlyList<double> Between(double from, double to)
    {
        List<double>? shares = null;
        double least = Math.Min(from, to), most = Math.Max(from, to);
        var strip = FirstFrom(least);
        var upTo = strip > 0 ? Math.Max(least, strips[strip - 1].Right) : least;
        var start = upTo;
        for (; strip < strips.Length && strips[strip].Right <= most; strip++)
        {
            (shares ??= []).Add((upTo + strips[strip].Left) / 2);
            shares.Add((strips[strip].Left + strips[strip].Right) / 2);
            upTo = strips[strip].Right;
        }

        var end = strip < strips.Length ? Math.Min(strips[strip].Left, most) : most;
        if ((upTo > start || start > least || end < most) && upTo < end)
        {
            (shares ??= []).Add((upTo + end) / 2);
        }

        // Between most places there is none, and they are asked for every side of a lattice.
        if (shares is null)
        {
            return [];
        }

        for (var index = 0; index < shares.Count; index++)
        {
            shares[index] = (shares[index] - from) / (to - from);
        }

        if (from > to)
        {
            shares.Reverse();
        }

        return shares;
    }

    /// <summary>A strip that begins where the way begins lies within it, since the borders of a strip are no part of it.</summary>
    private int FirstFrom(double least)
    {
        var (low, high) = (0, strips.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = strips[middle].Left >= least ? (low, middle) : (middle + 1, high);
        }

        return low;
    }

    private static List<(double Left, double Right)> Joined(IEnumerable<(double Left, double Right)> strips)
    {
        var joined = new List<(double Left, double Right)>();
        foreach (var strip in strips)
        {
            if (joined.Count > 0 && strip.Left <= joined[^1].Right)
            {
                joined[^1] = (joined[^1].Left, Math.Max(joined[^1].Right, strip.Right));
            }
            else
            {
                joined.Add(strip);
            }
        }

        return joined;
    }
}
