namespace GroveSpec.Craft.Survey;

/// <summary>
/// Finds the reading that does not fit, by leaving out each in turn: the one without which the others agree. A misfit counts
/// when its externally studentized value (Baarda 1968 and Pope 1976, data snooping; from memory) would come by chance less
/// than once in a hundred surveys. Where the others do not tell it from another, all that it may be are named.
/// </summary>
internal static class MisfitSearch
{
    private const double OnceInSurveys = 0.01;
    private const int MostTriedOneByOne = 150;
    private const int MostTriedOfMany = 40;

    // A tape read to the millimetre is off by 1/√12 mm with nothing wrong.
    private const double Rounding = 0.29;

    // In deviations: as little as this tells no reading from another.
    private const double Alike = 3.5;

    // In deviations: beyond this readings that have no others to be held against do not agree.
    private const double Disagreeing = 4;

    /// <summary>Looks for one reading that does not fit.</summary>
    /// <param name="solved">The network with all readings that are trusted.</param>
    /// <returns>Numbers in the network's readings: none where all fit, one that was found, or several of which one errs, the likeliest first.</returns>
    public static int[] Look(SolvedNetwork solved)
    {
        var network = solved.Network;
        if (solved.Spare < 1)
        {
            return [];
        }

        var ranked = Ranked(solved);
        var most = network.Readings.Length <= MostTriedOneByOne ? ranked.Length : Math.Min(ranked.Length, MostTriedOfMany);
        if (most == 0)
        {
            return [];
        }

        var without = new (int Reading, double SumOfSquares)[most];
        for (var index = 0; index < most; index++)
        {
            without[index] = (ranked[index], Without(solved, network.Readings[ranked[index]].Source));
        }

        var best = without.MinBy(one => one.SumOfSquares);
        var left = solved.Spare - 1;
        var variance = left >= ReadingPrecision.FewestSpare
            ? Math.Max(best.SumOfSquares / left, Rounding * Rounding)
            : ReadingPrecision.AssumedMillimetres * ReadingPrecision.AssumedMillimetres;
        var statistic = Math.Sqrt(Math.Max(0, solved.SumOfSquares - best.SumOfSquares) / variance);
        var isWrong = left >= ReadingPrecision.FewestSpare
            ? StudentProbability.Beyond(statistic, left) * network.Readings.Length < OnceInSurveys
            : statistic > Disagreeing;
        return isWrong
            ? [.. without.Where(one => one.SumOfSquares - best.SumOfSquares <= Alike * Alike * variance).OrderBy(one => one.SumOfSquares).ThenBy(one => one.Reading).Select(one => one.Reading)]
            : [];
    }

    /// <summary>The sum of squared misfits without a reading.</summary>
    private static double Without(SolvedNetwork solved, int source)
    {
        var network = solved.Network.Without(reading => reading.Source == source);
        double[] places = [.. solved.Places];
        var least = network.Fit(places);
        if (solved.Spare > ReadingPrecision.FewestSpare)
        {
            return least;
        }

        // With so few readings another shape altogether may meet those that are left, and then nothing speaks against this one being off.
        foreach (var start in StartPlaces.Of(network, solved.Places))
        {
            least = Math.Min(least, network.Fit(start));
        }

        return least;
    }

    /// <summary>Readings that others check, those first whose leaving out promises most: misfit² over the share of it that shows.</summary>
    private static int[] Ranked(SolvedNetwork solved)
    {
        var (network, cofactors) = (solved.Network, solved.Cofactors());
        var gains = new List<(int Reading, double Gain)>();
        for (var index = 0; index < network.Readings.Length; index++)
        {
            var reading = network.Readings[index];
            var shown = 1 - NextReadingSearch.Variance(network, solved.Places, cofactors, reading.From, reading.To);
            if (shown > 1e-6)
            {
                var misfit = SurveyNetwork.Distance(solved.Places, reading.From, reading.To) - reading.Millimetres;
                gains.Add((index, misfit * misfit / shown));
            }
        }

        return [.. gains.OrderByDescending(one => one.Gain).ThenBy(one => one.Reading).Select(one => one.Reading)];
    }
}
