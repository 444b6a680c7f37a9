namespace GroveSpec.Craft.Survey;

/// <summary>Trunks that hang together by readings, solved, with the readings that do not fit set apart.</summary>
internal sealed class SurveyPart
{
    // Readings are read again rather than thrown away by the handful.
    private const int MostLeftOut = 5;

    private readonly double[] known;
    private readonly bool isTurnedOver;

    private SurveyPart(int[] trunks, double[] known, SurveyNetwork network, bool isTurnedOver)
    {
        this.isTurnedOver = isTurnedOver;
        (Trunks, this.known, KnownCount) = (trunks, known, network.IsKnown.Count(one => one));
        Solved = Solve(network);
        while (true)
        {
            var suspects = MisfitSearch.Look(Solved);

            // A reading is blamed only where no other shape meets all of them better.
            if (suspects.Length > 0 && Solved.Better() is { } better)
            {
                Solved = better;
                continue;
            }

            if (suspects.Length > 0 && LeftOut.Count >= MostLeftOut)
            {
                // So many are not slips of the tape: either the search missed the shape or nothing fits, and no reading is to be blamed.
                IsUnsettled = true;
                LeftOut.Clear();
                Solved = Solve(network);
                MayBeOff = [];
                break;
            }

            if (suspects.Length != 1)
            {
                MayBeOff = [.. suspects.Select(suspect => (Solved.Network.Readings[suspect.Reading], suspect.Fitted))];
                break;
            }

            var off = Solved.Network.Readings[suspects[0].Reading];
            LeftOut.Add(off);
            Solved = Solve(network.Without(reading => LeftOut.Contains(reading)));
        }
    }

    /// <summary>The trunks' numbers in the planting, in the order of the file.</summary>
    public int[] Trunks { get; }

    /// <summary>How many of them stand at known places.</summary>
    public int KnownCount { get; }

    /// <summary>The fit without the readings left out.</summary>
    public SolvedNetwork Solved { get; private set; }

    /// <summary>The readings that were found to be off.</summary>
    public List<NetworkReading> LeftOut { get; } = [];

    /// <summary>The readings of which one is off, the likeliest first, each with what it should have read if it is the one, in millimetres.</summary>
    public (NetworkReading Reading, double Fitted)[] MayBeOff { get; }

    /// <summary>Whether no shape was found that all but a few readings meet.</summary>
    public bool IsUnsettled { get; }

    /// <summary>For each trunk its other place.</summary>
    public (double X, double Y)?[] OtherPlaces => field ??= Solved.OtherPlaces();

    /// <summary>Which trunks' places depend on which reading is off.</summary>
    public bool[] IsDoubtful => field ??= IsUnsettled ? [.. Solved.Network.IsKnown.Select(one => !one)] : Doubts();

    /// <summary>Solves one.</summary>
    /// <param name="trunks">The trunks' numbers in the planting.</param>
    /// <param name="known">Two numbers for each of them, in millimetres.</param>
    /// <param name="network">The readings between them.</param>
    /// <param name="isTurnedOver">Whether chosen axes are chosen the other way round.</param>
    /// <returns>The part.</returns>
    /// <exception cref="OperationCanceledException">The work was ended.</exception>
    public static SurveyPart Of(int[] trunks, double[] known, SurveyNetwork network, bool isTurnedOver) => new(trunks, known, network, isTurnedOver);

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

    private bool[] Doubts()
    {
        const double Millimetres = 1;
        const int MostTried = 12;
        var network = Solved.Network;
        var isDoubtful = new bool[network.Count];
        foreach (var (suspect, _) in MayBeOff.Take(MostTried))
        {
            double[] places = [.. Solved.Places];
            network.Without(reading => reading.Source == suspect.Source).Fit(places);
            for (var trunk = 0; trunk < network.Count; trunk++)
            {
                double dx = places[2 * trunk] - Solved.Places[2 * trunk], dy = places[(2 * trunk) + 1] - Solved.Places[(2 * trunk) + 1];
                isDoubtful[trunk] |= Math.Sqrt((dx * dx) + (dy * dy)) > Millimetres;
            }
        }

        return isDoubtful;
    }
}
