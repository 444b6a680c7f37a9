using System.Collections.Immutable;
using GroveSpec.Craft.Stand;
using GroveSpec.Craft.Survey;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Readings;
using GroveSpec.Model.States;
using GroveSpec.Model.Trunks;

namespace GroveSpec.Craft.Tests.Survey;

/// <summary>Trunks at true places, of which a survey knows the first few, and readings between them.</summary>
internal sealed class SurveyedLayout
{
    private readonly List<TapeReading> tapes = [];

    public SurveyedLayout((double X, double Y)[] places, int known)
    {
        Places = places;
        Known = known;
    }

    public (double X, double Y)[] Places { get; }

    public int Known { get; }

    public List<TapeReading> Tapes => tapes;

    public static string Name(int trunk) => $"T{trunk}";

    /// <summary>Trunks scattered over 400 by 300 mm, none nearer than 20 mm to another; the known ones no flat triangle.</summary>
    public static SurveyedLayout Scattered(SeededRandom random, int count, int known)
    {
        while (true)
        {
            var places = Enumerable.Range(0, count).Select(_ => ((random.NextShare() * 400) - 200, (random.NextShare() * 300) - 150)).ToArray();
            var isApart = !Enumerable.Range(0, count).Any(one => Enumerable.Range(one + 1, count - one - 1).Any(other => Distance(places[one], places[other]) < 20));
            if (isApart && (known < 3 || Math.Abs(Cross(places[0], places[1], places[2])) > 8000))
            {
                return new(places, known);
            }
        }
    }

    /// <summary>Three known trunks round others, each of which is read to those nearest of the trunks before it.</summary>
    public static SurveyedLayout OfNearest(SeededRandom random, int sought, int nearest, Func<double> error)
    {
        var side = 60 * Math.Sqrt(sought);
        (double X, double Y)[] places = [(-side / 2, -side / 2), (side / 2, -side / 2), (0, side / 2), .. Enumerable.Range(0, sought).Select(_ => ((random.NextShare() - 0.5) * side, (random.NextShare() - 0.5) * side))];
        var layout = new SurveyedLayout(places, 3);
        for (var trunk = 3; trunk < places.Length; trunk++)
        {
            foreach (var other in Enumerable.Range(0, trunk).OrderBy(other => Distance(places[trunk], places[other])).Take(nearest))
            {
                layout.Read(trunk, other, error());
            }
        }

        return layout;
    }

    public SurveyedLayout ReadAllPairs(Func<double>? error = null)
    {
        for (var one = 0; one < Places.Length; one++)
        {
            for (var other = one + 1; other < Places.Length; other++)
            {
                if (other >= Known)
                {
                    Read(one, other, error?.Invoke() ?? 0);
                }
            }
        }

        return this;
    }

    public SurveyedLayout Read(int from, int to, double error = 0)
    {
        tapes.Add(new(Name(from), Name(to), Length.FromMillimetres(Distance(Places[from], Places[to]) + error), IsBetweenBark: false, new Origin($"tape:{tapes.Count}")));
        return this;
    }

    public TapeSurvey Survey() => TapeSurvey.Of(State());

    /// <summary>The planting with its readings.</summary>
    public PlantingState State() => new Planting
    {
        Trunks =
        [
            .. Places.Select((place, index) => new Trunk
            {
                Name = Name(index),
                Origin = new Origin($"trunk:{index}"),
                At = index < Known ? new Stated<PlanPoint>(PlanPoint.FromMillimetres(place.X, place.Y), new Origin($"trunk:{index}/at")) : null,
            }),
        ],
        Tapes = [.. tapes],
    }.StateOn(null);

    /// <summary>The true places in the axes of the survey: as they are with known ones, else turned so that the first is the origin, the second to its right and the third to the back.</summary>
    public ImmutableArray<PlanPoint> True()
    {
        if (Known > 1)
        {
            return [.. Places.Select(place => PlanPoint.FromMillimetres(place.X, place.Y))];
        }

        var (x, y) = Places[0];
        var length = Distance(Places[0], Places[1]);
        var (alongX, alongY) = ((Places[1].X - x) / length, (Places[1].Y - y) / length);
        var side = Cross(Places[0], Places[1], Places[2]) < 0 ? -1 : 1;
        return [.. Places.Select(place => PlanPoint.FromMillimetres(((place.X - x) * alongX) + ((place.Y - y) * alongY), side * (((place.Y - y) * alongX) - ((place.X - x) * alongY))))];
    }

    public static double Distance((double X, double Y) one, (double X, double Y) other) => Math.Sqrt(((one.X - other.X) * (one.X - other.X)) + ((one.Y - other.Y) * (one.Y - other.Y)));

    private static double Cross((double X, double Y) a, (double X, double Y) b, (double X, double Y) c) => ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X));
}
