namespace GroveSpec.Craft.Survey;

/// <summary>Finds the known place that does not fit, by seeking each in turn from the readings to it, those to other known places among them.</summary>
internal static class PlaceSearch
{
    // With two readings a place can be had that meets both, which tells nothing.
    private const int FewestReadings = 3;

    private const int MostTried = 12;

    // In coordinates: larger networks are not fitted anew from all starts.
    private const int MostFromAllStarts = 30;

    // In deviations, as for readings.
    private const double Disagreeing = 4;

    /// <summary>The known places without which all agrees.</summary>
    /// <param name="solved">The network.</param>
    /// <param name="between">Readings between its known places.</param>
    /// <param name="isAlarming">Whether its own readings disagree; if not, only places are looked at that two readings between known places disagree with.</param>
    /// <returns>The places, those first without which the misfits are least; those that readings between known places disagree with before all others.</returns>
    public static List<MisplacedTrunk> Misplaced(SolvedNetwork solved, NetworkReading[] between, bool isAlarming)
    {
        var network = solved.Network;
        if (network.IsKnown.Count(known => known) < 2)
        {
            return [];
        }

        var found = Enumerable.Range(0, network.Count)
            .Where(trunk => network.IsKnown[trunk])
            .Select(trunk => (Trunk: trunk, Off: between.Count(reading => Touches(reading, trunk) && IsOff(solved, reading)), Misfit: Misfit(solved, between, trunk)))
            .Where(one => (isAlarming || one.Off > 1) && network.Readings.Concat(between).Count(reading => Touches(reading, one.Trunk)) >= FewestReadings)
            .OrderByDescending(one => one.Misfit)
            .ThenBy(one => one.Trunk)
            .Take(MostTried)
            .Select(one => Freed(solved, between, one.Trunk))
            .Where(one => IsExplained(solved, between, one))
            .OrderBy(one => one.Explanation.SumOfSquares)
            .ThenBy(one => one.Explanation.Place)
            .ToList();

        // Fewer things are blamed where one place is what several readings between known places disagree with.
        var most = found.Count > 0 ? found.Max(one => one.OffBetween) : 0;
        return [.. found.Where(one => one.OffBetween == most)];
    }

    /// <summary>The known trunk that two readings have in common and no other reading is to.</summary>
    /// <returns>Its number; null where there is none.</returns>
    public static int? OnlyMarkOf(SolvedNetwork solved, NetworkReading[] between, int one, int other)
    {
        var network = solved.Network;
        return new[] { network.Readings[one].From, network.Readings[one].To }
            .Where(trunk => network.IsKnown[trunk] && network.IsKnown.Count(known => known) > 2 && Touches(network.Readings[other], trunk)
                && network.Readings.Concat(between).Count(reading => Touches(reading, trunk)) == 2)
            .Select(trunk => (int?)trunk)
            .FirstOrDefault();
    }

    /// <summary>The network with the place of a known trunk sought.</summary>
    public static MisplacedTrunk Freed(SolvedNetwork solved, NetworkReading[] between, int trunk)
    {
        var network = solved.Network;
        bool[] isKnown = [.. network.IsKnown];
        isKnown[trunk] = false;
        NetworkReading[] own = [.. between.Where(reading => Touches(reading, trunk))];
        var freed = new SurveyNetwork(isKnown, [.. network.Readings, .. own], cancellation: network.Cancellation);
        var fit = SolvedNetwork.From(freed, solved.Places);
        if (!ReadingPrecision.Agrees(fit.SumOfSquares, fit.Spare, network.Hand) && freed.Unknowns <= MostFromAllStarts)
        {
            // A place with a wrong sign bends all others out of shape.
            fit = SolvedNetwork.Best(freed, solved.Places);
        }

        return new(
            new() { Readings = [], Place = trunk, SumOfSquares = fit.SumOfSquares, Spare = fit.Spare, Places = TurnedBack(fit, trunk, (solved.Places[2 * trunk], solved.Places[(2 * trunk) + 1])) },
            fit,
            own.Count(reading => IsOff(solved, reading)));
    }

    /// <summary>Where all stand: where they may turn about the only known trunk that is left, so that the one that is sought comes nearest to where the file puts it.</summary>
    private static double[] TurnedBack(SolvedNetwork fit, int trunk, (double X, double Y) stated)
    {
        var network = fit.Network;
        int[] left = [.. network.Readings.SelectMany(reading => new[] { reading.From, reading.To }).Where(one => network.IsKnown[one]).Distinct()];
        if (left is not [var pivot])
        {
            return fit.Places;
        }

        var (aboutX, aboutY) = (fit.Places[2 * pivot], fit.Places[(2 * pivot) + 1]);
        var (fromX, fromY) = (fit.Places[2 * trunk] - aboutX, fit.Places[(2 * trunk) + 1] - aboutY);
        var (toX, toY) = (stated.X - aboutX, stated.Y - aboutY);
        var product = Math.Sqrt(((fromX * fromX) + (fromY * fromY)) * ((toX * toX) + (toY * toY)));
        if (product == 0)
        {
            return fit.Places;
        }

        var (cosine, sine) = (((fromX * toX) + (fromY * toY)) / product, ((fromX * toY) - (fromY * toX)) / product);
        double[] places = [.. fit.Places];
        for (var one = 0; one < network.Count; one++)
        {
            if (!network.IsKnown[one])
            {
                var (x, y) = (places[2 * one] - aboutX, places[(2 * one) + 1] - aboutY);
                (places[2 * one], places[(2 * one) + 1]) = (aboutX + (x * cosine) - (y * sine), aboutY + (x * sine) + (y * cosine));
            }
        }

        return places;
    }

    private static bool IsExplained(SolvedNetwork solved, NetworkReading[] between, MisplacedTrunk one)
    {
        var (fit, trunk) = (one.Explanation, one.Explanation.Place!.Value);
        double dx = fit.Places[2 * trunk] - solved.Places[2 * trunk], dy = fit.Places[(2 * trunk) + 1] - solved.Places[(2 * trunk) + 1];
        var before = solved.SumOfSquares + between.Where(reading => Touches(reading, trunk)).Sum(reading => MisfitOf(solved, reading) * MisfitOf(solved, reading));
        var variance = fit.Spare >= ReadingPrecision.FewestSpare ? fit.SumOfSquares / fit.Spare : 0;
        variance = Math.Max(variance, ReadingPrecision.AssumedMillimetres * ReadingPrecision.AssumedMillimetres);
        return fit.Spare > 0
            && ReadingPrecision.Agrees(fit.SumOfSquares, fit.Spare, solved.Network.Hand)
            && before - fit.SumOfSquares > 2 * Disagreeing * Disagreeing * variance
            && Math.Sqrt((dx * dx) + (dy * dy)) > solved.Network.Hand;
    }

    private static double Misfit(SolvedNetwork solved, NetworkReading[] between, int trunk) =>
        solved.Network.Readings.Concat(between).Where(reading => Touches(reading, trunk)).Sum(reading => MisfitOf(solved, reading) * MisfitOf(solved, reading));

    private static double MisfitOf(SolvedNetwork solved, NetworkReading reading) => SurveyNetwork.Distance(solved.Places, reading.From, reading.To) - reading.Millimetres;

    private static bool IsOff(SolvedNetwork solved, NetworkReading reading) => Math.Abs(MisfitOf(solved, reading)) > solved.Network.Hand;

    private static bool Touches(NetworkReading reading, int trunk) => reading.From == trunk || reading.To == trunk;
}
