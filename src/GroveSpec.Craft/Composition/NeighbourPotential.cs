namespace GroveSpec.Craft.Composition;

/// <summary>
/// For two places a distance apart, the length of line between them on which a third would be neighbour to both, given
/// that all others fall at random; and the potential g with Δg equal to it, for <see cref="PairDistances.Mean"/>.
/// </summary>
internal sealed class NeighbourPotential
{
    private const int StepsOfTheReach = 128;

    private readonly double[] lengths;
    private readonly double[] potential;
    private readonly double step;
    private readonly double flux;
    private readonly double area;

    private NeighbourPotential(double[] lengths, double step, double area)
    {
        this.lengths = lengths;
        this.step = step;
        this.area = area;
        potential = new double[lengths.Length];

        // r·g′ is the integral of s·f(s) up to r, and g the integral of that over r.
        double upTo = 0, before = 0;
        for (var index = 1; index < lengths.Length; index++)
        {
            var (near, far) = ((index - 1) * step, index * step);
            upTo += step * ((near * lengths[index - 1]) + (far * lengths[index])) / 2;
            var slope = upTo / far;
            potential[index] = potential[index - 1] + (step * (before + slope) / 2);
            before = slope;
        }

        flux = upTo;
    }

    /// <summary>Tabulates both.</summary>
    /// <param name="trunks">How many trunks stand in all.</param>
    /// <param name="reach">The longest gap between neighbours, in millimetres, above zero.</param>
    /// <param name="radius">Their mean radius, in millimetres.</param>
    /// <param name="area">The area they are scattered over, in square millimetres.</param>
    /// <returns>The tables.</returns>
    public static NeighbourPotential Of(int trunks, double reach, double radius, double area)
    {
        var step = reach / StepsOfTheReach;
        var free = new double[StepsOfTheReach + 1];
        for (var index = 0; index < free.Length; index++)
        {
            // A line of the length s passes through those whose centres stand in a strip 2r wide along it, and none of the n−3 others may.
            var strip = Math.Min(1, 2 * radius * index * step / area);
            free[index] = Math.Pow(1 - strip, trunks - 3);
        }

        var lengths = new double[(2 * StepsOfTheReach) + 1];
        for (var distance = 1; distance < lengths.Length; distance++)
        {
            var (first, last) = (Math.Max(0, distance - StepsOfTheReach), Math.Min(distance, StepsOfTheReach));
            for (var along = first; along < last; along++)
            {
                lengths[distance] += step * ((free[along] * free[distance - along]) + (free[along + 1] * free[distance - along - 1])) / 2;
            }
        }

        return new(lengths, step, area);
    }

    /// <summary>The potential at a distance.</summary>
    /// <param name="distance">In millimetres, not below zero.</param>
    /// <returns>The potential, zero at zero; beyond twice the reach it grows with the logarithm.</returns>
    public double At(double distance)
    {
        var place = distance / step;
        var index = (int)Math.Min(place, potential.Length);
        if (index < potential.Length - 1)
        {
            return potential[index] + ((place - index) * (potential[index + 1] - potential[index]));
        }

        return potential[^1] + (flux * Math.Log(place / (potential.Length - 1)));
    }

    /// <summary>The mean of the length itself over two random places, when it is nothing but for places near to each other.</summary>
    /// <param name="perimeter">The length of the rim in millimetres.</param>
    /// <returns>The mean in millimetres: ∫ f(r) · 2πr · (A − P·r/π) dr / A².</returns>
    public double MeanNearby(double perimeter)
    {
        var sum = 0.0;
        for (var index = 1; index < lengths.Length; index++)
        {
            var distance = index * step;
            sum += step * lengths[index] * 2 * Math.PI * distance * (area - (perimeter * distance / Math.PI));
        }

        return sum / (area * area);
    }
}
