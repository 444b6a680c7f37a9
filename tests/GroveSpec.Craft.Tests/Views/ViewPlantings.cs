using System.Globalization;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;
using GroveSpec.Model.Trunks;
using GroveSpec.Model.Views;

namespace GroveSpec.Craft.Tests.Views;

/// <summary>Small plantings for the tests of views, in millimetres.</summary>
internal static class ViewPlantings
{
    public static Trunk Trunk(string name, double x, double y, double? diameter = 20, double? height = null) => new()
    {
        Name = name,
        Origin = new Origin($"trunk:{name}"),
        At = new Stated<PlanPoint>(PlanPoint.FromMillimetres(x, y), Origin.Default),
        Diameter = diameter is { } thick ? new Stated<Length>(Length.FromMillimetres(thick), Origin.Default) : null,
        Height = height is { } high ? new Stated<Length>(Length.FromMillimetres(high), Origin.Default) : null,
    };

    public static PlantingState State(Viewpoint? viewed, params Trunk[] trunks) =>
        new Planting { Viewed = viewed, Trunks = [.. trunks] }.StateOn(null);

    public static Viewpoint Viewed(double distance = 1500, double eye = 300, double from = 180) => new()
    {
        Origin = Origin.Default,
        From = new Bearing(from),
        Distance = Length.FromMillimetres(distance),
        EyeHeight = Length.FromMillimetres(eye),
    };

    /// <summary>Trunks thrown at random, none touching another, some beside or behind the eye.</summary>
    public static Trunk[] Scattered(Random random, int count, double spread)
    {
        var trunks = new List<Trunk>(count);
        for (var attempt = 0; attempt < 40 * count && trunks.Count < count; attempt++)
        {
            var (x, y, diameter) = ((random.NextDouble() - 0.5) * spread, (random.NextDouble() - 0.5) * spread, 2 + (random.NextDouble() * spread / 8));
            if (trunks.TrueForAll(other =>
                Math.Sqrt(Squared(other.At!.Value.Value.X.Millimetres - x) + Squared(other.At.Value.Value.Y.Millimetres - y))
                    > ((other.Diameter!.Value.Value.Millimetres + diameter) / 2) + 0.01))
            {
                trunks.Add(Trunk($"T{trunks.Count.ToString(CultureInfo.InvariantCulture)}", x, y, diameter));
            }
        }

        return [.. trunks];
    }

    private static double Squared(double value) => value * value;
}
