using GroveSpec.Craft.Stand;

namespace GroveSpec.Craft.Survey;

/// <summary>Places from which a fit may begin. A fit only goes downhill, so that it begins in several.</summary>
internal static class StartPlaces
{
    /// <summary>As many random starts as find most shapes that a small network can take.</summary>
    public const int ManyRandom = 40;

    private const int MostKept = 8;

    // Of the longest reading: places nearer than this lead to the same fit, and starts that meet their readings so much worse than the best are not followed.
    private const double OnePlaceShare = 0.02;
    private const double HopelessShare = 0.25;
    private const int FewRandom = 6;

    /// <summary>All starts for a network.</summary>
    /// <param name="network">The network.</param>
    /// <param name="known">Two numbers for each trunk, those of known places filled in.</param>
    /// <param name="randomStarts">How many random ones follow those that are built up.</param>
    /// <returns>Starts, the likeliest first; the same for the same network.</returns>
    public static IEnumerable<double[]> Of(SurveyNetwork network, double[] known, int randomStarts = FewRandom)
    {
        foreach (var built in Built(network, known))
        {
            yield return built;
        }

        var random = new SeededRandom((ulong)network.Readings.Length);
        var reach = network.Readings.Max(reading => reading.Millimetres);
        double middleX = 0, middleY = 0;
        var count = 0;
        for (var trunk = 0; trunk < network.Count; trunk++)
        {
            if (network.IsKnown[trunk])
            {
                (middleX, middleY, count) = (middleX + known[2 * trunk], middleY + known[(2 * trunk) + 1], count + 1);
            }
        }

        (middleX, middleY) = count > 0 ? (middleX / count, middleY / count) : (0, 0);
        for (var start = 0; start < randomStarts; start++)
        {
            double[] places = [.. known];
            for (var trunk = 0; trunk < network.Count; trunk++)
            {
                for (var axis = 0; axis < 2; axis++)
                {
                    var anywhere = (axis == 0 ? middleX : middleY) + (reach * (random.NextShare() - 0.5) * 2);
                    places[(2 * trunk) + axis] = network.Column(trunk, axis) < 0 ? places[(2 * trunk) + axis] : anywhere;
                }
            }

            yield return places;
        }
    }

    /// <summary>Places built up trunk by trunk from where circles meet; where two places fit about as well both are followed.</summary>
    private static List<double[]> Built(SurveyNetwork network, double[] known)
    {
        var neighbours = Enumerable.Range(0, network.Count).Select(_ => new List<(int Other, double Millimetres)>()).ToArray();
        foreach (var reading in network.Readings)
        {
            neighbours[reading.From].Add((reading.To, reading.Millimetres));
            neighbours[reading.To].Add((reading.From, reading.Millimetres));
        }

        bool[] isPlaced = [.. network.IsKnown];
        double[] first = [.. known];
        if (!isPlaced.Contains(true))
        {
            // The trunk with the most readings begins.
            isPlaced[Enumerable.Range(0, network.Count).MaxBy(trunk => neighbours[trunk].Count)] = true;
        }

        var reach = network.Readings.Max(reading => reading.Millimetres);
        var kept = new List<(double[] Places, double Misfit)> { (first, 0) };
        for (var step = isPlaced.Count(placed => placed); step < network.Count; step++)
        {
            var (next, marks) = Next(neighbours, isPlaced);
            kept = [.. kept.SelectMany(state => Put(state.Places, state.Misfit, next, marks, OnePlaceShare * reach)).OrderBy(state => state.Misfit).Take(MostKept)];
            kept.RemoveAll(state => state.Misfit > kept[0].Misfit + (HopelessShare * reach));
            isPlaced[next] = true;
        }

        return [.. kept.Select(state => state.Places)];
    }

    /// <summary>The trunk with the most readings to trunks that are placed.</summary>
    private static (int Trunk, List<(int Other, double Millimetres)> Marks) Next(List<(int Other, double Millimetres)>[] neighbours, bool[] isPlaced)
    {
        var (best, most) = (-1, -1);
        for (var trunk = 0; trunk < isPlaced.Length; trunk++)
        {
            var count = isPlaced[trunk] ? -1 : neighbours[trunk].Where(one => isPlaced[one.Other]).Select(one => one.Other).Distinct().Count();
            (best, most) = count > most ? (trunk, count) : (best, most);
        }

        return (best, [.. neighbours[best].Where(one => isPlaced[one.Other])]);
    }

    private static List<(double[] Places, double Misfit)> Put(double[] places, double misfit, int trunk, List<(int Other, double Millimetres)> marks, double onePlace)
    {
        var tries = new List<(double X, double Y)>();
        const int MostMarks = 6;
        for (var one = 0; one < Math.Min(marks.Count, MostMarks); one++)
        {
            for (var two = one + 1; two < Math.Min(marks.Count, MostMarks); two++)
            {
                tries.AddRange(Meetings(places, marks[one], marks[two]));
            }
        }

        if (tries.Count == 0)
        {
            // One mark only, or none of them apart: anywhere on the circle, a little aside so that nothing begins on one line.
            var (other, distance) = marks.Count > 0 ? marks[0] : (0, 100.0);
            var turn = 1 + trunk;
            tries.Add((places[2 * other] + (distance * Math.Cos(turn)), places[(2 * other) + 1] + (distance * Math.Sin(turn))));
        }

        var put = new List<(double[] Places, double Misfit)>(MostKept / 2);
        foreach (var (place, more) in tries.Select(place => (place, More(place))).OrderBy(one => one.Item2))
        {
            // Of the places where pairs of circles meet most are one place, a little off.
            if (put.Count < MostKept / 2 && !put.Exists(one => Math.Abs(one.Places[2 * trunk] - place.X) < onePlace && Math.Abs(one.Places[(2 * trunk) + 1] - place.Y) < onePlace))
            {
                double[] with = [.. places];
                (with[2 * trunk], with[(2 * trunk) + 1]) = place;
                put.Add((with, misfit + more));
            }
        }

        return put;

        double More((double X, double Y) place)
        {
            var more = 0.0;
            foreach (var (other, distance) in marks)
            {
                // By amounts and not by squares, so that one reading that does not fit does not choose for all.
                double dx = place.X - places[2 * other], dy = place.Y - places[(2 * other) + 1];
                more += Math.Abs(Math.Sqrt((dx * dx) + (dy * dy)) - distance);
            }

            return more;
        }
    }

    private static IEnumerable<(double X, double Y)> Meetings(double[] places, (int Other, double Millimetres) one, (int Other, double Millimetres) two)
    {
        double ux = places[2 * two.Other] - places[2 * one.Other], uy = places[(2 * two.Other) + 1] - places[(2 * one.Other) + 1];
        var apart = Math.Sqrt((ux * ux) + (uy * uy));
        if (apart < 1e-6)
        {
            yield break;
        }

        // Where the circles do not meet, the place between or beyond them on the line of centres.
        var along = ((apart * apart) + (one.Millimetres * one.Millimetres) - (two.Millimetres * two.Millimetres)) / (2 * apart);
        var aside = Math.Sqrt(Math.Max(0, (one.Millimetres * one.Millimetres) - (along * along)));
        double footX = places[2 * one.Other] + (along * ux / apart), footY = places[(2 * one.Other) + 1] + (along * uy / apart);
        yield return (footX - (aside * uy / apart), footY + (aside * ux / apart));
        yield return (footX + (aside * uy / apart), footY - (aside * ux / apart));
    }
}
