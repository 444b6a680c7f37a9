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

    // In mm²: a tenth of what tells two readings apart where the deviation is assumed.
    private const double MetInSquares = 0.3;

    // In mm²: by less no sum tells one reading from another.
    private const double Equal = 0.01;

    // In deviations: beyond this readings that have no others to be held against do not agree.
    private const double Disagreeing = 4;

    /// <summary>Looks for one reading that does not fit.</summary>
    /// <param name="solved">The network with all readings that are trusted.</param>
    /// <returns>Readings: none where all fit, one that was found, or several of which one errs, the likeliest first.</returns>
    public static SuspectReading[] Look(SolvedNetwork solved)
    {
        var network = solved.Network;
        if (solved.Spare < 1 || !IsWrong(solved, 0))
        {
            return [];
        }

        var ranked = Ranked(solved);
        var most = network.Readings.Length <= MostTriedOneByOne ? ranked.Length : Math.Min(ranked.Length, MostTriedOfMany);
        if (most == 0)
        {
            return [];
        }

        var without = new SuspectReading[most];
        var best = double.PositiveInfinity;
        for (var index = 0; index < most; index++)
        {
            without[index] = Without(solved, ranked[index], best);
            best = Math.Min(best, without[index].SumOfSquares);
        }

        var alike = best + (Alike * Alike * Variance(solved.Spare - 1, best));
        return IsWrong(solved, best) ? [.. without.Where(one => one.SumOfSquares <= alike).OrderBy(one => one.SumOfSquares - best < Equal ? 0 : one.SumOfSquares).ThenBy(Size).ThenBy(one => one.Reading)] : [];

        // Where the others are met alike the smaller mistake is the likelier; to a hundredth of a millimetre, so that no last digit decides.
        double Size(SuspectReading one) => Math.Round(Math.Abs(network.Readings[one.Reading].Millimetres - one.Fitted), 2);
    }

    /// <summary>Whether the misfits are too large for chance, when those of all readings but one come to a sum. With 0 for it, whether they can be at all.</summary>
    private static bool IsWrong(SolvedNetwork solved, double without)
    {
        var left = solved.Spare - 1;
        var statistic = Math.Sqrt(Math.Max(0, solved.SumOfSquares - without) / Variance(left, without));
        return left >= ReadingPrecision.FewestSpare
            ? StudentProbability.Beyond(statistic, left) * solved.Network.Readings.Length < OnceInSurveys
            : statistic > Disagreeing;
    }

    private static double Variance(int left, double sumOfSquares) => left >= ReadingPrecision.FewestSpare
        ? Math.Max(sumOfSquares / left, Rounding * Rounding)
        : ReadingPrecision.AssumedMillimetres * ReadingPrecision.AssumedMillimetres;

    /// <summary>The sum of squared misfits without a reading, and what it should have read then.</summary>
    private static SuspectReading Without(SolvedNetwork solved, int index, double best)
    {
        var reading = solved.Network.Readings[index];
        var network = solved.Network.Without(one => one.Source == reading.Source);
        double[] places = [.. solved.Places];

        // Far above the best nothing is alike.
        var least = network.Fit(places, solved.Spare > ReadingPrecision.FewestSpare ? Math.Max(best, MetInSquares) : double.PositiveInfinity, isSumAsked: true);
        var fitted = SurveyNetwork.Distance(places, reading.From, reading.To);
        if (solved.Spare > ReadingPrecision.FewestSpare)
        {
            return new(index, least, fitted);
        }

        // With so few readings another shape altogether may meet those that are left, and then nothing speaks against this one being off.
        // Once they are met as well as a tape reads, a better shape would tell no more.
        using var starts = StartPlaces.Of(network, solved.Places).GetEnumerator();
        while (least > MetInSquares && starts.MoveNext())
        {
            var misfit = network.Fit(starts.Current, least, isSumAsked: true);
            if (misfit < least)
            {
                (least, fitted) = (misfit, SurveyNetwork.Distance(starts.Current, reading.From, reading.To));
            }
        }

        return new(index, least, fitted);
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
