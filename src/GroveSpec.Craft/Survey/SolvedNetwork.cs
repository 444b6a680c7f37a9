namespace GroveSpec.Craft.Survey;

/// <summary>A network that was fitted, and what its readings leave free.</summary>
internal sealed class SolvedNetwork
{
    // A trunk that moves by less than this share with a free motion does not move.
    private const double Still = 1e-6;

    // Other places fit as well while they raise the sum of squares by less than three deviations' worth.
    private const double AsWell = 9;

    // In coordinates: larger networks take too many shapes for chance to find.
    private const int MostFromManyStarts = 60;

    // Places nearer than this, in millimetres and in deviations, are one place.
    private const double OnePlaceInMillimetres = 1;
    private const double OnePlaceInDeviations = 6;

    // In mm² for each reading to spare: twice the deviation that is assumed.
    private const double MetInSquares = 4 * ReadingPrecision.AssumedMillimetres * ReadingPrecision.AssumedMillimetres;

    // So many starts that ended at the least sum are enough, and what share of it is the same.
    private const int EnoughEnded = 3;
    private const double SameShare = 1e-6;

    private const int MostTurns = 4;

    private SolvedNetwork(SurveyNetwork network, double[] places, double sumOfSquares)
    {
        Network = network;
        Places = places;
        SumOfSquares = sumOfSquares;
        var normal = network.Normal(places);
        Motions = SymmetricMatrix.NullSpace(normal, network.Unknowns);
        IsFree = new bool[network.Count];
        for (var trunk = 0; trunk < network.Count; trunk++)
        {
            IsFree[trunk] = Motions.Exists(motion => Moves(motion.Vector, trunk));
        }

        Spare = network.Readings.Length - (network.Unknowns - Motions.Count);
        Precision = new(sumOfSquares, Spare);
    }

    /// <summary>The network.</summary>
    public SurveyNetwork Network { get; }

    /// <summary>Two numbers for each trunk.</summary>
    public double[] Places { get; }

    /// <summary>The sum of squared misfits, in mm².</summary>
    public double SumOfSquares { get; }

    /// <summary>Motions that change no distance that was read, each with the column that it was made from.</summary>
    public List<(int Column, double[] Vector)> Motions { get; }

    /// <summary>Which trunks can move without a reading changing.</summary>
    public bool[] IsFree { get; }

    /// <summary>Readings beyond those that places need.</summary>
    public int Spare { get; }

    /// <summary>How far readings are off.</summary>
    public ReadingPrecision Precision { get; }

    /// <summary>Fits a network from all starts.</summary>
    /// <param name="network">The network.</param>
    /// <param name="known">Two numbers for each trunk, those of known places filled in.</param>
    /// <returns>The best fit.</returns>
    public static SolvedNetwork Best(SurveyNetwork network, double[] known)
    {
        double[]? best = null;
        var (least, ended) = (double.PositiveInfinity, 0);
        var spare = network.Readings.Length - network.Unknowns;
        foreach (var start in StartPlaces.Of(network, known))
        {
            var misfit = network.Fit(start, least, isSumAsked: true);
            ended = misfit < least * (1 - SameShare) ? 1 : misfit <= least * (1 + SameShare) ? ended + 1 : ended;
            if (misfit < least - 1e-12)
            {
                (best, least) = (start, misfit);
            }

            // Readings that are met cannot be met better; and where many are to spare, no wrong shape meets them as a tape reads, nor is it found again and again.
            if (least < 1e-10 || (spare >= network.Unknowns && least <= spare * MetInSquares) || (spare > 0 && 2 * spare >= network.Unknowns && ended == EnoughEnded))
            {
                break;
            }
        }

        return From(network, best!);
    }

    /// <summary>Fits a network from places that are near.</summary>
    /// <param name="network">The network.</param>
    /// <param name="near">The places, which stay.</param>
    /// <returns>The fit.</returns>
    public static SolvedNetwork From(SurveyNetwork network, double[] near)
    {
        double[] places = [.. near];
        var misfit = network.Fit(places);
        return new(network, places, misfit);
    }

    /// <summary>
    /// A fit that is better: what the search for it can have missed is a part that lies turned over, or several. Parts are
    /// turned over one after the other as long as that helps.
    /// </summary>
    /// <returns>The fit, or null where none is better.</returns>
    public SolvedNetwork? Better()
    {
        double[] places = [.. Places];
        var least = SumOfSquares;
        var isBetter = true;
        for (var turn = 0; turn < MostTurns && isBetter; turn++)
        {
            isBetter = false;
            foreach (var part in FoldingParts.Of(Network, places))
            {
                var turned = part.Turn(places);
                var misfit = Network.Fit(turned, least, isSumAsked: true);
                if (misfit < least * (1 - SameShare))
                {
                    // In place, so that the parts that follow are turned over as they lie now.
                    turned.CopyTo(places, 0);
                    (least, isBetter) = (misfit, true);
                }
            }
        }

        return least < SumOfSquares ? From(Network, places) : null;
    }

    /// <summary>The covariance of the coordinates sought per squared deviation of a reading; those of free trunks are kept where they are.</summary>
    /// <returns>The matrix over the columns of the network, zero for what is free.</returns>
    public double[] Cofactors()
    {
        var (size, normal) = (Network.Unknowns, Network.Normal(Places));
        var isKept = new bool[size];
        Motions.ForEach(motion => isKept[motion.Column] = true);
        int[] open = [.. Enumerable.Range(0, size).Where(column => !isKept[column])];
        var part = new double[open.Length * open.Length];
        for (var row = 0; row < open.Length; row++)
        {
            for (var column = 0; column < open.Length; column++)
            {
                part[(row * open.Length) + column] = normal[(open[row] * size) + open[column]];
            }
        }

        var whole = new double[size * size];
        if (SymmetricMatrix.Inverse(part, open.Length) is { } inverse)
        {
            for (var row = 0; row < open.Length; row++)
            {
                for (var column = 0; column < open.Length; column++)
                {
                    whole[(open[row] * size) + open[column]] = inverse[(row * open.Length) + column];
                }
            }
        }

        return whole;
    }

    /// <summary>
    /// Other places that the readings fit as well: by turning parts over, trunk by trunk about the line of those it was read to,
    /// and what hangs on two trunks about the line through them; and where few readings are spare, by fits from many starts.
    /// </summary>
    /// <returns>For each trunk its other place; null where none was found.</returns>
    public (double X, double Y)?[] OtherPlaces()
    {
        var others = new (double X, double Y)?[Network.Count];
        foreach (var part in FoldingParts.Of(Network, Places))
        {
            var folded = part.Turn(Places);
            if (part.Trunks.Any(trunk => Off(folded, trunk) > OnePlace))
            {
                AddOthers(others, folded, part.Trunks);
            }
        }

        if (Spare <= Network.Unknowns / 2 && Network.Unknowns <= MostFromManyStarts)
        {
            foreach (var start in StartPlaces.Of(Network, Places, StartPlaces.ManyRandom))
            {
                AddOthers(others, start, []);
            }
        }

        return others;
    }

    /// <summary>Fits from a start, and keeps where its trunks come to stand if the readings fit there as well.</summary>
    /// <param name="others">Where they are kept.</param>
    /// <param name="start">The start.</param>
    /// <param name="turned">The trunks that were turned over for it; none where all stand anywhere.</param>
    private void AddOthers((double X, double Y)?[] others, double[] start, int[] turned)
    {
        double[] fitted = [.. start];
        if (Network.Fit(fitted) - SumOfSquares > AsWell * Precision.Deviation * Precision.Deviation)
        {
            return;
        }

        // In chosen axes places may all have changed with the axes, so that the shape is put back into them.
        var hasAxes = Network.IsKnown.Count(known => known) > 1;
        if (!hasAxes && !IsOtherShape(fitted))
        {
            return;
        }

        var places = hasAxes ? fitted : InOwnAxes(fitted, turned);
        for (var trunk = 0; trunk < Network.Count; trunk++)
        {
            if (!Network.IsKnown[trunk] && !IsFree[trunk] && Off(places, trunk) > OnePlace)
            {
                others[trunk] ??= (places[2 * trunk], places[(2 * trunk) + 1]);
            }
        }
    }

    /// <summary>A shape turned and moved so that two trunks lie as they do here: two that were not turned over, or else those that hold the axes. Of both ways round the one that leaves more trunks where they are.</summary>
    private double[] InOwnAxes(double[] shape, int[] turned)
    {
        int[] all = [.. Enumerable.Range(0, Network.Count)];
        int[] rest = turned.Length == 0 ? [] : [.. all.Where(trunk => !IsFree[trunk] && !turned.Contains(trunk))];
        var pivot = rest.Length > 1 ? rest[0] : Array.FindIndex(all, trunk => Network.Column(trunk, 0) < 0 && Network.Column(trunk, 1) < 0);
        var second = rest.Length > 1 ? rest.MaxBy(trunk => SurveyNetwork.Distance(Places, pivot, trunk)) : Array.FindIndex(all, trunk => Network.Column(trunk, 0) >= 0 && Network.Column(trunk, 1) < 0);
        if (pivot < 0 || second < 0 || pivot == second)
        {
            return shape;
        }

        // By how much to turn, as a cosine and a sine: from the direction in the shape to that here.
        var (fromX, fromY) = Along(shape, pivot, second);
        var (toX, toY) = Along(Places, pivot, second);
        var (one, other) = (new double[shape.Length], new double[shape.Length]);
        foreach (var trunk in all)
        {
            double dx = shape[2 * trunk] - shape[2 * pivot], dy = shape[(2 * trunk) + 1] - shape[(2 * pivot) + 1];
            double along = (dx * fromX) + (dy * fromY), aside = (dy * fromX) - (dx * fromY);
            (one[2 * trunk], one[(2 * trunk) + 1]) = (Places[2 * pivot] + (along * toX) - (aside * toY), Places[(2 * pivot) + 1] + (along * toY) + (aside * toX));
            (other[2 * trunk], other[(2 * trunk) + 1]) = (Places[2 * pivot] + (along * toX) + (aside * toY), Places[(2 * pivot) + 1] + (along * toY) - (aside * toX));
        }

        return all.Count(trunk => Off(other, trunk) > OnePlace) < all.Count(trunk => Off(one, trunk) > OnePlace) ? other : one;
    }

    private static (double X, double Y) Along(double[] places, int from, int to)
    {
        double dx = places[2 * to] - places[2 * from], dy = places[(2 * to) + 1] - places[(2 * from) + 1];
        var length = Math.Sqrt((dx * dx) + (dy * dy));
        return length > 0 ? (dx / length, dy / length) : (1, 0);
    }

    private double OnePlace => Math.Max(OnePlaceInMillimetres, OnePlaceInDeviations * Precision.Deviation);

    private bool IsOtherShape(double[] places)
    {
        for (var one = 0; one < Network.Count; one++)
        {
            for (var other = one + 1; other < Network.Count; other++)
            {
                if (!IsFree[one] && !IsFree[other] && Math.Abs(SurveyNetwork.Distance(places, one, other) - SurveyNetwork.Distance(Places, one, other)) > OnePlace)
                {
                    return true;
                }
            }
        }

        return false;
    }

    private double Off(double[] places, int trunk)
    {
        double dx = places[2 * trunk] - Places[2 * trunk], dy = places[(2 * trunk) + 1] - Places[(2 * trunk) + 1];
        return Math.Sqrt((dx * dx) + (dy * dy));
    }

    private bool Moves(double[] vector, int trunk)
    {
        var (x, y) = (Network.Column(trunk, 0), Network.Column(trunk, 1));
        return (x >= 0 && Math.Abs(vector[x]) > Still) || (y >= 0 && Math.Abs(vector[y]) > Still);
    }
}
