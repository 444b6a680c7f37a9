namespace GroveSpec.Craft.Survey;

/// <summary>A part of a network that can be turned over about a line without changing what was read within it.</summary>
/// <param name="Trunks">The trunks that go with it.</param>
/// <param name="X">A point of the line, to the right.</param>
/// <param name="Y">The point, to the back.</param>
/// <param name="AlongX">The line's direction, of length 1.</param>
/// <param name="AlongY">The direction to the back.</param>
internal readonly record struct FoldingParts(int[] Trunks, double X, double Y, double AlongX, double AlongY)
{
    // Pairs grow with the square and searches with the cube; larger networks are looked at trunk by trunk only.
    private const int MostTrunksByPairs = 60;

    /// <summary>Turns the part over.</summary>
    /// <param name="places">Two numbers for each trunk of the network, which stay.</param>
    /// <returns>The places with those of the part turned over.</returns>
    public double[] Turn(double[] places)
    {
        double[] turned = [.. places];
        foreach (var trunk in Trunks)
        {
            (turned[2 * trunk], turned[(2 * trunk) + 1]) = Fold(places[2 * trunk], places[(2 * trunk) + 1]);
        }

        return turned;
    }

    /// <summary>All parts of a network to try.</summary>
    /// <param name="network">The network.</param>
    /// <param name="places">Where its trunks are taken to stand.</param>
    /// <returns>The parts.</returns>
    public static IEnumerable<FoldingParts> Of(SurveyNetwork network, double[] places)
    {
        var neighbours = Enumerable.Range(0, network.Count).Select(_ => new SortedSet<int>()).ToArray();
        foreach (var reading in network.Readings)
        {
            neighbours[reading.From].Add(reading.To);
            neighbours[reading.To].Add(reading.From);
        }

        // What is known is one rigid piece.
        int[] known = [.. Enumerable.Range(0, network.Count).Where(trunk => network.IsKnown[trunk])];
        int[] sought = [.. Enumerable.Range(0, network.Count).Where(trunk => !network.IsKnown[trunk])];
        int[] asked = [.. known.Where(trunk => neighbours[trunk].Count > 0)];
        if (asked.Length > 1)
        {
            yield return About(sought, [.. asked], places);
        }

        foreach (var trunk in sought)
        {
            if (neighbours[trunk].Count > 1)
            {
                yield return About([trunk], [.. neighbours[trunk]], places);
            }
        }

        if (network.Count > MostTrunksByPairs)
        {
            yield break;
        }

        for (var one = 0; one < network.Count; one++)
        {
            for (var two = one + 1; two < network.Count; two++)
            {
                foreach (var part in Behind(network, neighbours, known, one, two))
                {
                    yield return About(part, [one, two], places);
                }
            }
        }
    }

    /// <summary>The pieces into which a network falls without two of its trunks, but for the largest, or the known one.</summary>
    private static List<int[]> Behind(SurveyNetwork network, SortedSet<int>[] neighbours, int[] known, int one, int two)
    {
        var piece = new int[network.Count];
        var pieces = new List<List<int>>();
        for (var start = 0; start < network.Count; start++)
        {
            if (piece[start] != 0 || start == one || start == two)
            {
                continue;
            }

            var found = new List<int> { start };
            pieces.Add(found);
            piece[start] = pieces.Count;
            for (var next = 0; next < found.Count; next++)
            {
                foreach (var other in network.IsKnown[found[next]] ? neighbours[found[next]].Concat(known) : neighbours[found[next]])
                {
                    if (piece[other] == 0 && other != one && other != two)
                    {
                        piece[other] = pieces.Count;
                        found.Add(other);
                    }
                }
            }
        }

        if (pieces.Count < 2)
        {
            // With two known ones taken away all that is known may be gone: then the rest can be turned over as a whole.
            return pieces.Count == 1 && network.IsKnown[one] && network.IsKnown[two] && !pieces[0].Exists(trunk => network.IsKnown[trunk]) ? [[.. pieces[0]]] : [];
        }

        var stays = pieces.Find(found => found.Exists(trunk => network.IsKnown[trunk])) ?? pieces.MaxBy(found => found.Count);
        return [.. pieces.Where(found => found != stays || (network.IsKnown[one] && network.IsKnown[two] && !found.Exists(trunk => network.IsKnown[trunk]))).Select(found => found.ToArray())];
    }

    /// <summary>A part and the line nearest to some trunks: through their middle, along the long axis of their spread.</summary>
    private static FoldingParts About(int[] part, int[] line, double[] places)
    {
        double x = line.Average(trunk => places[2 * trunk]), y = line.Average(trunk => places[(2 * trunk) + 1]), xx = 0, xy = 0, yy = 0;
        foreach (var trunk in line)
        {
            double dx = places[2 * trunk] - x, dy = places[(2 * trunk) + 1] - y;
            (xx, xy, yy) = (xx + (dx * dx), xy + (dx * dy), yy + (dy * dy));
        }

        var turn = 0.5 * Math.Atan2(2 * xy, xx - yy);
        return new(part, x, y, Math.Cos(turn), Math.Sin(turn));
    }

    private (double X, double Y) Fold(double x, double y)
    {
        double dx = x - X, dy = y - Y;
        var across = (dx * -AlongY) + (dy * AlongX);
        return (x + (2 * across * AlongY), y - (2 * across * AlongX));
    }
}
