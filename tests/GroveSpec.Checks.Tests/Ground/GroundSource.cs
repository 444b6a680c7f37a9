using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;
using GroveSpec.Model.Trunks;

namespace GroveSpec.Checks.Tests.Ground;

/// <summary>Sources and newcomers for tests of free ground.</summary>
internal static class GroundSource
{
    /// <summary>Statements that mute all checks of composition but one.</summary>
    /// <param name="check">The one.</param>
    /// <returns>The statements.</returns>
    public static string Only(string check) =>
        string.Concat(Catalogue.All.Where(other => other.IsComposition && other.Name != check).Select(other => $"mute {other.Name} because \"one at a time\"\n"));

    /// <summary>One more trunk.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="diameter">Its diameter in millimetres.</param>
    /// <param name="height">Its height in millimetres; null where it is not known.</param>
    /// <returns>The trunk, at the origin.</returns>
    public static TrunkState Newcomer(string name, double diameter, double? height = null) => new()
    {
        Trunk = new Trunk { Name = name, Origin = Origin.Default },
        Presence = Presence.Standing,
        Place = PlanPoint.Origin,
        Diameter = new(Length.FromMillimetres(diameter), Origin.Default),
        Height = height is { } high ? new(Length.FromMillimetres(high), Origin.Default) : null,
    };

    /// <summary>A planting scattered evenly over an oval, no two trunks nearer than 32 mm, sizes spread evenly.</summary>
    /// <param name="trunks">How many.</param>
    /// <param name="seed">Any number.</param>
    /// <returns>Its file.</returns>
    public static string Scattered(int trunks, int seed)
    {
        var random = new Random(seed);
        var places = new List<(double X, double Y)>();
        while (places.Count < trunks)
        {
            double x = (random.NextDouble() * 640) - 320, y = (random.NextDouble() * 370) - 185;
            if (Math.Pow(x / 320, 2) + Math.Pow(y / 185, 2) < 1 && places.TrueForAll(place => Math.Pow(place.X - x, 2) + Math.Pow(place.Y - y, 2) > 32 * 32))
            {
                places.Add((Math.Round(x, 1), Math.Round(y, 1)));
            }
        }

        return "planting \"Scattered\"\nhabit group\nspecies larix-kaempferi\ncontainer oval 700 x 420 x 40 mm\nviewed from 180 deg, at 1500 mm, eye 200 mm\n"
            + string.Join('\n', places.Select((place, index) => FormattableString.Invariant($"trunk T{index + 1} at {place.X}, {place.Y} mm diameter {8 + (random.NextDouble() * 22):0.0} mm height {90 + (random.NextDouble() * 150):0} mm"))) + "\n";
    }
}
