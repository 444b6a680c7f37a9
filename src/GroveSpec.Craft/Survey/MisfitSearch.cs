namespace GroveSpec.Craft.Survey;

/// <summary>
/// Finds what does not fit: the fewest readings, or the known place, without which all else agrees as a tape reads. One
/// reading counts as off when its externally studentized misfit (Baarda 1968 and Pope 1976, data snooping; from memory)
/// would come by chance less than once in a hundred surveys; where readings do not agree as a tape does, also several at
/// once are looked for, since one mistake hides another. What cannot be told from the best explanation is given beside it.
/// </summary>
internal sealed class MisfitSearch
{
    // Readings are read again rather than thrown away by the handful.
    private const int MostLeftOut = 5;

    private const double OnceInSurveys = 0.01;

    // Two that hide each other among readings that agree as a tape does are looked for on top of one, and so at a tenth.
    private const double PairOnceInSurveys = 0.001;

    // A first look without fits is more suspicious than the judgement.
    private const double FirstLook = 10;
    private const double SecondLook = 0.1;

    private const int MostTriedOneByOne = 150;
    private const int MostTriedOfMany = 40;
    private const int MostPairs = 120;
    private const int MostPairsOfMany = 40;
    private const int MostReadingsForPairs = 600;

    // Sets of readings from which larger ones are made, and how many readings are added to each.
    private const int MostFollowed = 10;
    private const int MostAdded = 6;

    // A tape read to the millimetre is off by 1/√12 mm with nothing wrong.
    private const double Rounding = 0.29;

    // In deviations: as little as this tells no explanation from another.
    private const double Alike = 3.5;

    // In mm²: a tenth of what tells two readings apart where the deviation is assumed.
    private const double MetInSquares = 0.3;

    // In mm²: by less no sum tells one from another.
    private const double Equal = 0.01;

    // In deviations: beyond this readings that have no others to be held against do not agree.
    private const double Disagreeing = 4;

    // In millimetres: two deviations that are assumed.
    private const double Loose = 2 * ReadingPrecision.AssumedMillimetres;

    // In deviations, of all others and as they are assumed: by so much on the whole one or two are off that chance need not be asked.
    private const double FarOff = 20;
    private const double FarOffOfAssumed = 10;

    // Networks of so few coordinates are fitted from all starts, which costs little.
    private const int Tiny = 4;

    // Without one reading those of so few are: a mistake can bend all others into a shape of their own, in which the wrong ones look off.
    private const int Small = 21;

    // And where nothing looks wrong those of so few, which are looked at with every change of a text; with more to spare for each no other shape meets them.
    private const int Few = 12;
    private const int MostSpareForEach = 2;

    private readonly SolvedNetwork solved;
    private readonly SurveyNetwork network;
    private readonly NetworkReading[] between;

    private MisfitSearch(SolvedNetwork solved, NetworkReading[] between) => (this.solved, network, this.between) = (solved, solved.Network, between);

    /// <summary>Looks for what does not fit.</summary>
    /// <param name="solved">The network with all its readings.</param>
    /// <param name="between">Readings between its known places, which tell whether these are right.</param>
    /// <returns>What was found.</returns>
    /// <exception cref="OperationCanceledException">The work was ended.</exception>
    public static MisfitVerdict Look(SolvedNetwork solved, NetworkReading[] between) => new MisfitSearch(solved, between).Found();

    private MisfitVerdict Found()
    {
        var isAlarming = solved.Spare > 0 && IsAlarming(solved, FirstLook);
        var misplaced = PlaceSearch.Misplaced(solved, between, isAlarming).Where(one => !IsAlarming(one.Freed, 1)).ToArray();
        if (misplaced.Length > 0 && misplaced[0].OffBetween > 0)
        {
            // Readings would have to be blamed for what the known places say of each other as well as for the rest.
            return Best([.. misplaced.Select(one => one.Explanation)]);
        }

        if (!isAlarming && !MayHide)
        {
            return MisfitVerdict.AllFits;
        }

        var tried = Singles();
        var agrees = ReadingPrecision.Agrees(solved.SumOfSquares, solved.Spare, network.Hand);
        if (tried.Count == 0 || (agrees && !IsWrong(solved, tried[0].SumOfSquares, 1) && !HasWrongPair()))
        {
            return agrees ? MisfitVerdict.AllFits : MisfitVerdict.Unsettled;
        }

        var (loose, fallback, isAnyExplained) = ((MisfitVerdict?)null, (MisfitVerdict?)null, false);
        for (var count = 1; count <= MostLeftOut && tried.Count > 0; count++)
        {
            Explanation[] explained = [.. count == 1 && IsExplained(tried[0], 1) ? tried : tried.Where(one => IsExplained(one, count))];
            if (explained.Length > 0 && (explained[0].Spare == 0 || !IsAlarming(Solve(explained[0]), 1)))
            {
                var verdict = count == 1 ? WithPlaces(Best(explained), misplaced) : WithPlacesOfTwo(Best(explained));
                if (loose is not null)
                {
                    return verdict with { Explanations = [.. loose.Explanations, .. verdict.Explanations] };
                }

                if (!IsLoose(explained[0]))
                {
                    return verdict;
                }

                loose = verdict;
            }
            else if (loose is not null)
            {
                // Where one more mistake would leave nothing that checks, it cannot be told from this one.
                return tried[0].Spare < 1 ? MisfitVerdict.Unsettled : loose;
            }

            // What is left looks a little odd, and nothing explains that: chance gives as much now and then.
            isAnyExplained |= explained.Length > 0;
            fallback ??= explained.Length > 0 && !IsAlarming(Solve(explained[0]), SecondLook) ? Best(explained) : null;
            if (count == 1 && loose is null && misplaced.Length > 0)
            {
                return Best([.. misplaced.Select(one => one.Explanation)]);
            }

            tried = Larger(tried, count + 1);
        }

        return loose ?? fallback ?? (agrees && !isAnyExplained ? MisfitVerdict.AllFits : MisfitVerdict.Unsettled);
    }

    /// <summary>Whether readings that agree as a tape does leave so much that a mistake may have bent them into another shape, which is looked for where that costs little.</summary>
    private bool MayHide => network.Unknowns <= Few && solved.Spare > ReadingPrecision.FewestSpare && solved.Spare <= MostSpareForEach * network.Unknowns && solved.Precision.RootMeanSquare > ReadingPrecision.AssumedMillimetres;

    /// <summary>Whether all else agrees, but so few readings so badly that a mistake more may explain it as well.</summary>
    private static bool IsLoose(Explanation one) => one.Spare is > 0 and < ReadingPrecision.FewestSpare && one.SumOfSquares > Loose * Loose * one.Spare;

    /// <summary>Whether something is wrong, to first order: readings do not agree as a tape does, or the worst is off by more than chance; by how many times the usual level is a matter of suspicion.</summary>
    private static bool IsAlarming(SolvedNetwork fit, double suspicion)
    {
        if (fit.Spare < 1)
        {
            return false;
        }

        if (!ReadingPrecision.Agrees(fit.SumOfSquares, fit.Spare, fit.Network.Hand))
        {
            return true;
        }

        if (fit.Spare <= ReadingPrecision.FewestSpare)
        {
            // Another shape may take all of it away.
            return suspicion > 1 ? IsWrong(fit, 0, 1) : suspicion >= 1 && fit.SumOfSquares > Disagreeing * Disagreeing * Variance(fit.Spare - 1, 0);
        }

        var cofactors = new ResidualCofactors(fit);
        var ranked = cofactors.Ranked();
        return (ranked.Length > 0 && IsWrong(fit, fit.SumOfSquares - cofactors.Gain(ranked[0])!.Value, suspicion))
            || (suspicion > 1 && HasWrongPair(fit, cofactors));
    }

    private bool HasWrongPair() => solved.Spare >= ReadingPrecision.FewestSpare + 2 && HasWrongPair(solved, new(solved));

    private static bool HasWrongPair(SolvedNetwork fit, ResidualCofactors cofactors)
    {
        var left = fit.Spare - 2;
        if (left < ReadingPrecision.FewestSpare || fit.Network.Readings.Length > MostReadingsForPairs || cofactors.RankedPairs(1) is not [var pair])
        {
            return false;
        }

        return AreWrong(fit, 2, left, Math.Max(0, fit.SumOfSquares - pair.Gain), PairOnceInSurveys);
    }

    /// <summary>
    /// Whether several readings are off together by more than chance, when those of all others come to a sum, whichever they
    /// are. F with 2m and ν degrees of freedom is beyond a value with the probability x^(ν/2)·Σ C(ν/2 + j − 1, j)·(1 − x)^j
    /// over j below m, where x is the share of the sum that is left (the incomplete beta function for whole m; Abramowitz and
    /// Stegun 1964, 26.5; from memory); an odd number is taken as the even one above, which is on the safe side.
    /// </summary>
    private static bool AreWrong(SolvedNetwork fit, int count, int left, double without, double level)
    {
        var share = left * Variance(left, without) / fit.SumOfSquares;
        if (left < ReadingPrecision.FewestSpare || share >= 1)
        {
            return false;
        }

        var (term, sum, ways) = (1.0, 1.0, 1.0);
        for (var j = 1; j < (count + 1) / 2; j++)
        {
            term *= ((left / 2.0) + j - 1) / j * (1 - share);
            sum += term;
        }

        for (var one = 0; one < count; one++)
        {
            ways *= (fit.Network.Readings.Length - one) / (one + 1.0);
        }

        return Math.Pow(share, left / 2.0) * sum * ways < level;
    }

    /// <summary>Whether the misfits are too large for chance, when those of all readings but one come to a sum. With 0 for it, whether they can be at all.</summary>
    private static bool IsWrong(SolvedNetwork fit, double without, double suspicion)
    {
        var left = fit.Spare - 1;
        var statistic = Math.Sqrt(Math.Max(0, fit.SumOfSquares - without) / Variance(left, without));
        return left >= ReadingPrecision.FewestSpare
            ? StudentProbability.Beyond(statistic, left) * fit.Network.Readings.Length < OnceInSurveys * suspicion
            : statistic > Disagreeing;
    }

    private static double Variance(int left, double sumOfSquares) => left >= ReadingPrecision.FewestSpare
        ? Math.Max(sumOfSquares / left, Rounding * Rounding)
        : ReadingPrecision.AssumedMillimetres * ReadingPrecision.AssumedMillimetres;

    /// <summary>Whether all else agrees without some readings, there is enough of it to tell, and each of these is off by more than all else.</summary>
    private bool IsExplained(Explanation one, int count)
    {
        // One is named wherever others are met without it, be it beside all that are alike; more need others that check, the more the more there are to choose from.
        var fewest = count == 1 ? 0 : count == 2 ? 1 : ReadingPrecision.FewestSpare;
        if (one.Spare < fewest || !ReadingPrecision.Agrees(one.SumOfSquares, one.Spare, network.Hand))
        {
            return false;
        }

        var agrees = ReadingPrecision.Agrees(solved.SumOfSquares, solved.Spare, network.Hand);
        var deviation = Math.Sqrt(Variance(one.Spare, one.SumOfSquares));
        var isFarOff = !agrees && count <= 2 && solved.SumOfSquares - one.SumOfSquares > count * Math.Pow(deviation * (one.Spare < ReadingPrecision.FewestSpare ? FarOffOfAssumed : FarOff), 2);
        return count == 1
            ? isFarOff || IsWrong(solved, one.SumOfSquares, 1)
            : (isFarOff || AreWrong(solved, count, one.Spare, one.SumOfSquares, agrees ? PairOnceInSurveys : OnceInSurveys)) && IsEachOff();

        bool IsEachOff() => Array.TrueForAll(one.Readings, reading => Math.Abs(network.Readings[reading].Millimetres - Fitted(one, reading)) > Disagreeing * deviation);
    }

    private double Fitted(Explanation one, int reading) => SurveyNetwork.Distance(one.Places, network.Readings[reading].From, network.Readings[reading].To);

    /// <summary>The best explanation and all that cannot be told from it.</summary>
    private MisfitVerdict Best(IReadOnlyList<Explanation> tried)
    {
        var best = tried.MinBy(one => one.SumOfSquares)!;
        var alike = best.SumOfSquares + (Alike * Alike * Variance(best.Spare, best.SumOfSquares));

        // Where all else is met alike the smaller mistake is the likelier; to a hundredth of a millimetre, so that no last digit decides.
        return new(
            [.. tried
                .Where(one => one.SumOfSquares <= alike && ReadingPrecision.Agrees(one.SumOfSquares, one.Spare, network.Hand))
                .OrderBy(one => one.SumOfSquares - best.SumOfSquares < Equal ? 0 : one.SumOfSquares)
                .ThenBy(one => one.Readings.Sum(reading => Math.Round(Math.Abs(network.Readings[reading].Millimetres - Fitted(one, reading)), 2)))
                .ThenBy(one => one.Readings, Comparer<int[]>.Create((left, right) => left.AsSpan().SequenceCompareTo(right)))],
            IsUnsettled: false);
    }

    /// <summary>Places that explain it as well as one reading does; they have one number more to choose freely, which is to be made up for.</summary>
    private static MisfitVerdict WithPlaces(MisfitVerdict verdict, IReadOnlyList<MisplacedTrunk> misplaced)
    {
        var best = verdict.Explanations[0];
        var limit = best.SumOfSquares - (2 * Variance(best.Spare, best.SumOfSquares));
        return verdict with { Explanations = [.. verdict.Explanations, .. misplaced.Select(one => one.Explanation).Where(one => one.SumOfSquares <= limit)] };
    }

    /// <summary>Where the only two readings to a known trunk are off together, its place may be.</summary>
    private MisfitVerdict WithPlacesOfTwo(MisfitVerdict verdict) => verdict with
    {
        Explanations =
        [
            .. verdict.Explanations,
            .. verdict.Explanations
                .Where(one => one.Readings.Length == 2)
                .Select(one => PlaceSearch.OnlyMarkOf(solved, between, one.Readings[0], one.Readings[1]))
                .OfType<int>()
                .Select(trunk => PlaceSearch.Freed(solved, between, trunk).Explanation),
        ],
    };

    private List<Explanation> Singles()
    {
        var ranked = new ResidualCofactors(solved).Ranked();
        return Fit(ranked.Take(network.Readings.Length <= MostTriedOneByOne ? ranked.Length : MostTriedOfMany).Select(reading => (new[] { reading }, solved.Places)));
    }

    /// <summary>Sets of one reading more: all pairs that promise most, and what is added to the best sets so far.</summary>
    private List<Explanation> Larger(List<Explanation> smaller, int count)
    {
        var sets = new List<(int[] Readings, double[] Near)>();
        if (count == 2 && network.Readings.Length <= MostReadingsForPairs)
        {
            var most = network.Unknowns <= Tiny * Tiny ? MostPairs : MostPairsOfMany;
            sets.AddRange(new ResidualCofactors(solved).RankedPairs(most).Select(pair => (new[] { pair.One, pair.Other }, solved.Places)));
        }

        foreach (var one in smaller.Take(MostFollowed))
        {
            var without = Solve(one);
            foreach (var added in new ResidualCofactors(without).Ranked().Take(MostAdded))
            {
                // The network without some numbers its readings anew.
                var source = without.Network.Readings[added].Source;
                int[] set = [.. one.Readings.Append(Array.FindIndex(network.Readings, reading => reading.Source == source)).Order()];
                sets.Add((set, without.Places));
            }
        }

        return Fit(sets);
    }

    private List<Explanation> Fit(IEnumerable<(int[] Readings, double[] Near)> sets)
    {
        var found = new Dictionary<string, Explanation>(StringComparer.Ordinal);
        var best = double.PositiveInfinity;
        foreach (var (readings, near) in sets)
        {
            var one = Without(readings, near, best);
            best = Math.Min(best, one.SumOfSquares);
            var key = string.Join(' ', readings);
            if (one.Spare >= 0 && (!found.TryGetValue(key, out var before) || one.SumOfSquares < before.SumOfSquares))
            {
                found[key] = one;
            }
        }

        return [.. found.Values.OrderBy(one => one.SumOfSquares).ThenBy(one => one.Readings, Comparer<int[]>.Create((left, right) => left.AsSpan().SequenceCompareTo(right)))];
    }

    private SurveyNetwork NetworkWithout(int[] readings)
    {
        var sources = readings.Select(reading => network.Readings[reading].Source).ToHashSet();
        return network.Without(reading => sources.Contains(reading.Source));
    }

    private SolvedNetwork Solve(Explanation one) => SolvedNetwork.From(NetworkWithout(one.Readings), one.Places);

    /// <summary>The sum of squared misfits without some readings, and where all else puts the trunks.</summary>
    private Explanation Without(int[] readings, double[] near, double best)
    {
        var rest = NetworkWithout(readings);
        var spare = solved.Spare - readings.Length;
        var isFew = spare < ReadingPrecision.FewestSpare;
        double[] places = [.. near];

        // Far above the best nothing is alike.
        var least = rest.Fit(places, isFew ? double.PositiveInfinity : Math.Max(best, MetInSquares), isSumAsked: true);
        if (rest.Readings.Length > 0 && (isFew || network.Unknowns <= (readings.Length == 1 ? Small : Tiny)))
        {
            // Another shape altogether may meet those that are left, and where they are few nothing speaks then against these being off.
            // Once they are met as well as a tape reads, a better shape would tell no more.
            using var starts = StartPlaces.Of(rest, solved.Places).GetEnumerator();
            while (least > MetInSquares && starts.MoveNext())
            {
                var misfit = rest.Fit(starts.Current, least, isSumAsked: true);
                if (misfit < least)
                {
                    (least, places) = (misfit, starts.Current);
                }
            }
        }

        return new() { Readings = readings, SumOfSquares = least, Spare = spare, Places = places };
    }
}
