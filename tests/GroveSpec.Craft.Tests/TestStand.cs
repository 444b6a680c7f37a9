using GroveSpec.Craft.Composition;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;
using GroveSpec.Model.Trunks;

namespace GroveSpec.Craft.Tests;

/// <summary>Standing trunks made of places and diameters, named T0, T1 and so on.</summary>
internal static class TestStand
{
    public static StandingTrunks Of(IReadOnlyList<TrunkSection> sections) => StandingTrunks.Of(StateOf(sections));

    public static StandingTrunks OfPlaces(params (double X, double Y)[] places) =>
        Of([.. places.Select(place => new TrunkSection(PlanPoint.FromMillimetres(place.X, place.Y), Length.FromMillimetres(10)))]);

    public static PlantingState StateOf(IReadOnlyList<TrunkSection> sections) => new Planting
    {
        Trunks =
        [
            .. sections.Select((section, index) => new Trunk
            {
                Name = $"T{index}",
                Origin = new Origin($"trunk:T{index}"),
                At = new Stated<PlanPoint>(section.Centre, new Origin($"trunk:T{index}/at")),
                Diameter = section.Diameter > Length.Zero ? new Stated<Length>(section.Diameter, new Origin($"trunk:T{index}/diameter")) : null,
            }),
        ],
    }.StateOn(null);
}
