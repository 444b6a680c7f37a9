using GroveSpec.Craft.Ground;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Tests.Ground;

/// <summary>A test of places by shapes whose area is known: a disc of ground about the origin, and strips and half planes that take it.</summary>
/// <param name="radius">The disc's radius in millimetres.</param>
/// <param name="takers">What takes ground: from how far on, and up to how far, along a direction given in radians.</param>
internal sealed class TakenPlaces(double radius, params (double Angle, double From, double To)[] takers) : IPlaceTest
{
    /// <summary>The outline of what is free on a lattice of 3 mm.</summary>
    /// <returns>Its closed lines.</returns>
    public System.Collections.Immutable.ImmutableArray<System.Collections.Immutable.ImmutableArray<PlanPoint>> Outline()
    {
        PlanPoint least = PlanPoint.FromMillimetres(-radius, -radius), greatest = PlanPoint.FromMillimetres(radius, radius);
        void OneAfterAnother(int count, Action<int> work) => Enumerable.Range(0, count).ToList().ForEach(work);
        var lattice = GroundLattice.Of(least, greatest, Length.FromMillimetres(3), [this], OneAfterAnother, default);
        return GroundOutline.Of(lattice, [this], OneAfterAnother, default);
    }

    /// <inheritdoc/>
    public bool IsFree(PlanPoint place) => TakerOf(place) == 0;

    /// <inheritdoc/>
    public int TakerOf(PlanPoint place)
    {
        return IsBeyond(place) ? 1 : Array.FindIndex(takers, taker => IsTaken(taker, place)) is >= 0 and var index ? index + 2 : 0;
    }

    /// <inheritdoc/>
    public bool? IsLikelyTaken(int taker, PlanPoint place) => taker < 1 ? null : taker == 1 ? IsBeyond(place) : IsTaken(takers[taker - 2], place);

    /// <inheritdoc/>
    public IReadOnlyList<PlanPoint> NarrowBetween(PlanPoint from, PlanPoint to)
    {
        var places = new List<PlanPoint>();
        List<double> shares = [0, 1];
        foreach (var taker in takers)
        {
            double start = Along(taker.Angle, from), way = Along(taker.Angle, to) - start;
            shares.AddRange(new[] { (taker.From - start) / way, (taker.To - start) / way }.Where(share => share is > 0 and < 1));
        }

        shares.Sort();
        for (var index = 1; index < shares.Count && shares.Count > 2; index++)
        {
            var share = (shares[index - 1] + shares[index]) / 2;
            places.Add(PlanPoint.FromMillimetres(from.X.Millimetres + ((to.X - from.X).Millimetres * share), from.Y.Millimetres + ((to.Y - from.Y).Millimetres * share)));
        }

        return places;
    }

    private bool IsBeyond(PlanPoint place) => (place.X.Millimetres * place.X.Millimetres) + (place.Y.Millimetres * place.Y.Millimetres) > radius * radius;

    private static bool IsTaken((double Angle, double From, double To) taker, PlanPoint place) => Along(taker.Angle, place) is var along && along >= taker.From && along <= taker.To;

    private static double Along(double angle, PlanPoint place) => (place.X.Millimetres * Math.Cos(angle)) + (place.Y.Millimetres * Math.Sin(angle));
}
