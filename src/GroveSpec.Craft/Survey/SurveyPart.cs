namespace GroveSpec.Craft.Survey;

/// <summary>Trunks that hang together by readings, solved, with the readings that do not fit set apart.</summary>
internal sealed class SurveyPart
{
    // Places at which a reading would be nearer alike than this, in millimetres, are the same for it.
    private const double Alike = 0.05;

    // A better shape that is found again and again is enough.
    private const int MostShapes = 5;

    private readonly double[] known;
    private readonly bool isTurnedOver;
    private readonly SurveyNetwork network;
    private readonly Explanation[] explanations;
    private readonly SolvedNetwork asRead;

    private SurveyPart(int[] trunks, double[] known, SurveyNetwork network, NetworkReading[] between, bool isTurnedOver)
    {
        (this.isTurnedOver, this.network) = (isTurnedOver, network);
        (Trunks, this.known, KnownCount) = (trunks, known, network.IsKnown.Count(one => one));
        asRead = Solve(network);
        var verdict = MisfitSearch.Look(asRead, between);

        // Something is blamed only where no other shape meets all readings better.
        for (var shape = 0; shape < MostShapes && verdict != MisfitVerdict.AllFits && asRead.Better() is { } better; shape++)
        {
            asRead = better;
            verdict = MisfitSearch.Look(asRead, between);
        }

        (IsUnsettled, explanations) = (verdict.IsUnsettled, verdict.Explanations);
        Solved = asRead;
        MayBeOff = [];
        MayBeMisplaced = [];
        if (explanations.Length == 0)
        {
            return;
        }

        // What all explanations share is off; of the rest some are.
        int[] shared = [.. explanations[0].Readings.Where(reading => Array.TrueForAll(explanations, one => one.Readings.Contains(reading)))];
        LeftOut = [.. shared.Select(reading => asRead.Network.Readings[reading])];
        OffAmong = Array.TrueForAll(explanations, one => one.Place is not null || one.Readings.Length == explanations[0].Readings.Length) ? explanations[0].Readings.Length - shared.Length : null;
        MayBeOff =
        [
            .. explanations.SelectMany(one => one.Readings.Except(shared).Select(reading => (Reading: asRead.Network.Readings[reading], one.Places)))
                .DistinctBy(one => one.Reading.Source)
                .Select(one => (one.Reading, SurveyNetwork.Distance(one.Places, one.Reading.From, one.Reading.To))),
        ];
        var places = explanations.Where(one => one.Place is not null).Select(one => (one.Place!.Value, (one.Places[2 * one.Place.Value], one.Places[(2 * one.Place.Value) + 1]))).ToArray();
        if (places.Length == 1 && explanations.Length == 1)
        {
            Misplaced = places[0];

            // With the place where the readings put it, which is written nowhere: all others are as they would be with it mended.
            Solved = SolvedNetwork.From(asRead.Network, explanations[0].Places);
        }
        else
        {
            MayBeMisplaced = places;
            Solved = LeftOut.Count > 0 ? SolvedWithout(LeftOut) : asRead;
        }
    }

    /// <summary>The trunks' numbers in the planting, in the order of the file.</summary>
    public int[] Trunks { get; }

    /// <summary>How many of them stand at known places.</summary>
    public int KnownCount { get; }

    /// <summary>The fit without the readings left out, and with a known place that was found to be wrong where the readings put it.</summary>
    public SolvedNetwork Solved { get; }

    /// <summary>The readings that were found to be off.</summary>
    public List<NetworkReading> LeftOut { get; } = [];

    /// <summary>The readings of which some are off, the likeliest first, each with what it should have read if it is one of them, in millimetres.</summary>
    public (NetworkReading Reading, double Fitted)[] MayBeOff { get; }

    /// <summary>How many of those are; null where that is not told either.</summary>
    public int? OffAmong { get; }

    /// <summary>The known trunk whose place was found to be wrong, by its number in the network, and where the readings put it, in millimetres; null where there is none.</summary>
    public (int Trunk, (double X, double Y) Place)? Misplaced { get; }

    /// <summary>The known trunks whose place may be wrong instead of readings or of each other, each with where the readings would put it.</summary>
    public (int Trunk, (double X, double Y) Place)[] MayBeMisplaced { get; }

    /// <summary>Whether no shape was found that all but a few readings meet.</summary>
    public bool IsUnsettled { get; }

    /// <summary>For each trunk its other place.</summary>
    public (double X, double Y)?[] OtherPlaces => field ??= Solved.OtherPlaces();

    /// <summary>Which trunks' places depend on which reading is off.</summary>
    public bool[] IsDoubtful => field ??= IsUnsettled ? Disagreeing() : Doubts();

    /// <summary>How far two trunks are apart if they stand at the other of the two places that readings leave them.</summary>
    /// <param name="from">One of the trunks.</param>
    /// <param name="to">The other.</param>
    /// <returns>In millimetres; null where neither has another place, or they are as far apart there.</returns>
    public double? OtherDistance(int from, int to)
    {
        if (OtherPlaces[from] is null && OtherPlaces[to] is null)
        {
            return null;
        }

        var ((fromX, fromY), (toX, toY)) = (OtherPlaces[from] ?? At(from), OtherPlaces[to] ?? At(to));
        var other = Math.Sqrt(((toX - fromX) * (toX - fromX)) + ((toY - fromY) * (toY - fromY)));
        return Math.Abs(other - SurveyNetwork.Distance(Solved.Places, from, to)) > Alike ? other : null;

        (double X, double Y) At(int trunk) => (Solved.Places[2 * trunk], Solved.Places[(2 * trunk) + 1]);
    }

    /// <summary>Solves one.</summary>
    /// <param name="trunks">The trunks' numbers in the planting.</param>
    /// <param name="known">Two numbers for each of them, in millimetres.</param>
    /// <param name="network">The readings between them.</param>
    /// <param name="between">The readings between those whose places are known, which the network does not have.</param>
    /// <param name="isTurnedOver">Whether chosen axes are chosen the other way round.</param>
    /// <returns>The part.</returns>
    /// <exception cref="OperationCanceledException">The work was ended.</exception>
    public static SurveyPart Of(int[] trunks, double[] known, SurveyNetwork network, NetworkReading[] between, bool isTurnedOver) => new(trunks, known, network, between, isTurnedOver);

    private SolvedNetwork Solve(SurveyNetwork network)
    {
        var solved = SolvedNetwork.Best(network, known);
        return KnownCount >= 2 || network.Count < 2 ? solved : InChosenAxes(solved);
    }

    /// <summary>
    /// With no known place the first trunk becomes the origin, the next lies to its right, and the next after that to the back;
    /// with one, it stays, and the next lies to its right. Trunks that hang on one reading only are not chosen.
    /// </summary>
    private SolvedNetwork InChosenAxes(SolvedNetwork solved)
    {
        var network = solved.Network;
        double[] places = [.. solved.Places];
        var core = Core(network);
        var pivot = KnownCount == 1 ? Array.IndexOf(network.IsKnown, true) : core.Length > 0 ? core[0] : 0;
        var second = core.Concat(Enumerable.Range(0, network.Count)).FirstOrDefault(trunk => trunk != pivot && SurveyNetwork.Distance(places, pivot, trunk) > 1, -1);
        if (second < 0)
        {
            return solved;
        }

        double pivotX = places[2 * pivot], pivotY = places[(2 * pivot) + 1];
        var (originX, originY) = KnownCount == 1 ? (pivotX, pivotY) : (0, 0);
        double alongX = places[2 * second] - pivotX, alongY = places[(2 * second) + 1] - pivotY;
        var length = Math.Sqrt((alongX * alongX) + (alongY * alongY));
        (alongX, alongY) = (alongX / length, alongY / length);
        double Aside(int trunk) => ((places[(2 * trunk) + 1] - pivotY) * alongX) - ((places[2 * trunk] - pivotX) * alongY);
        var third = core.Concat(Enumerable.Range(0, network.Count)).FirstOrDefault(trunk => Math.Abs(Aside(trunk)) > 1, -1);
        var side = (third >= 0 && Aside(third) < 0) != isTurnedOver ? -1 : 1;
        var turned = new double[places.Length];
        for (var trunk = 0; trunk < network.Count; trunk++)
        {
            turned[2 * trunk] = originX + ((places[2 * trunk] - pivotX) * alongX) + ((places[(2 * trunk) + 1] - pivotY) * alongY);
            turned[(2 * trunk) + 1] = originY + (side * Aside(trunk));
        }

        var pinned = new bool[places.Length];
        pinned[2 * pivot] = pinned[(2 * pivot) + 1] = pinned[(2 * second) + 1] = true;
        turned[(2 * second) + 1] = originY;
        return SolvedNetwork.From(network.Pin(pinned), turned);
    }

    /// <summary>The trunks that are left when those with readings to one trunk only are taken away, again and again.</summary>
    private static int[] Core(SurveyNetwork network)
    {
        var isLeft = Enumerable.Repeat(true, network.Count).ToArray();
        for (var isChanged = true; isChanged;)
        {
            isChanged = false;
            for (var trunk = 0; trunk < network.Count; trunk++)
            {
                if (isLeft[trunk] && network.Readings
                    .Where(reading => (reading.From == trunk || reading.To == trunk) && isLeft[reading.From] && isLeft[reading.To])
                    .Select(reading => reading.From == trunk ? reading.To : reading.From).Distinct().Count() < 2)
                {
                    isLeft[trunk] = false;
                    isChanged = true;
                }
            }
        }

        return [.. Enumerable.Range(0, network.Count).Where(trunk => isLeft[trunk])];
    }

    /// <summary>The fit without some readings: from all starts, or where the explanation puts the trunks if that is better.</summary>
    private SolvedNetwork SolvedWithout(List<NetworkReading> leftOut)
    {
        var rest = network.Without(leftOut.Contains);
        var solved = Solve(rest);
        if (explanations.Length > 1 || solved.SumOfSquares <= explanations[0].SumOfSquares + ReadingPrecision.AssumedMillimetres)
        {
            return solved;
        }

        var near = SolvedNetwork.From(rest, explanations[0].Places);
        return KnownCount >= 2 ? near : InChosenAxes(near);
    }

    /// <summary>The trunks among whose readings something is off: those that hang together without known ones are looked at by themselves.</summary>
    private bool[] Disagreeing()
    {
        var network = Solved.Network;
        var group = Enumerable.Range(0, network.Count).ToArray();
        foreach (var reading in network.Readings)
        {
            if (!network.IsKnown[reading.From] && !network.IsKnown[reading.To])
            {
                var (from, to) = (group[reading.From], group[reading.To]);
                group = [.. group.Select(one => one == from ? to : one)];
            }
        }

        var isSpread = ReadingPrecision.Agrees(Solved.SumOfSquares, Solved.Spare, network.Hand);
        var isDoubtful = new bool[network.Count];
        foreach (var trunks in Enumerable.Range(0, network.Count).Where(trunk => !network.IsKnown[trunk]).GroupBy(trunk => group[trunk]))
        {
            NetworkReading[] own = [.. network.Readings.Where(reading => trunks.Contains(reading.From) || trunks.Contains(reading.To))];
            var sum = own.Sum(reading => Math.Pow(SurveyNetwork.Distance(Solved.Places, reading.From, reading.To) - reading.Millimetres, 2));

            // Where all agree on the whole too many are off by more than chance, and nothing tells where.
            var isOff = KnownCount < 2 || isSpread || !ReadingPrecision.Agrees(sum, own.Length - (2 * trunks.Count()), network.Hand);
            foreach (var trunk in trunks)
            {
                isDoubtful[trunk] = isOff;
            }
        }

        return isDoubtful;
    }

    private bool[] Doubts()
    {
        const int MostTried = 60;
        const double OtherShape = 0.3;
        var isDoubtful = new bool[Trunks.Length];
        if (Misplaced is not null)
        {
            // What hangs on the place is where it is only because of it.
            Compare(asRead.Places);
        }

        foreach (var one in explanations.Take(explanations.Length > 1 ? MostTried : 0))
        {
            var sources = one.Readings.Select(reading => asRead.Network.Readings[reading].Source).ToHashSet();
            double[] places = [.. Solved.Places];
            if (one.Place is null)
            {
                // From here, so that chosen axes stay as they are.
                var misfit = Solved.Network.Without(reading => sources.Contains(reading.Source)).Fit(places);
                Compare(places);
                if (KnownCount < 2 && misfit > one.SumOfSquares + OtherShape)
                {
                    // The explanation is of another shape altogether.
                    Array.Fill(isDoubtful, true);
                }
            }

            if (KnownCount >= 2)
            {
                Compare(one.Places);
            }
        }

        return isDoubtful;

        void Compare(double[] places)
        {
            const double Millimetres = 1;
            for (var trunk = 0; trunk < isDoubtful.Length; trunk++)
            {
                double dx = places[2 * trunk] - Solved.Places[2 * trunk], dy = places[(2 * trunk) + 1] - Solved.Places[(2 * trunk) + 1];
                isDoubtful[trunk] |= Math.Sqrt((dx * dx) + (dy * dy)) > Millimetres;
            }
        }
    }
}
