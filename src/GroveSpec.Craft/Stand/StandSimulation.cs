using System.Collections.Immutable;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Stand;

/// <summary>
/// The indices of a stand and what chance gives for them. Places: as many stems scattered evenly over the same ground.
/// Neighbours' sizes: the planting's own thicknesses handed out anew over its own places. Sharing of basal area, which
/// handing out anew does not change: as many thicknesses drawn from a log-normal spread of 35 in a hundred, an assumption.
/// The seed is made of the places, thicknesses and ground, so that the same planting always gives the same.
/// </summary>
internal sealed class StandSimulation
{
    /// <summary>The coefficient of variation of drawn thicknesses: that of the simulated tables it is tested against.</summary>
    public const double DrawnVariation = 0.35;

    private const int MostRuns = 1999;
    private const int FewestRuns = 39;
    private const int StemsInAll = 200_000;
    private const ulong HashStart = 0xCBF29CE484222325;
    private const ulong HashPrime = 0x100000001B3;

    private readonly StandGround ground;
    private readonly TrunkState[] stems;
    private readonly TrunkState[] sized;

    /// <summary>Makes one.</summary>
    /// <param name="ground">The ground.</param>
    /// <param name="stems">The stems, in an order that the file's does not change.</param>
    /// <param name="sized">Those of known thickness, in such an order.</param>
    public StandSimulation(StandGround ground, TrunkState[] stems, TrunkState[] sized) => (this.ground, this.stems, this.sized) = (ground, stems, sized);

    /// <summary>All indices, in the order of their kinds.</summary>
    /// <returns>The indices.</returns>
    public ImmutableArray<StandIndex> Indices() => [.. Spacing(), .. Sizes(), Sharing()];

    private static int RunsFor(int count) => Math.Clamp(StemsInAll / Math.Max(1, count), FewestRuns, MostRuns);

    private ImmutableArray<StandIndex> Spacing()
    {
        var count = stems.Length;
        double[] x = [.. stems.Select(stem => stem.Place!.Value.X.Millimetres)], y = [.. stems.Select(stem => stem.Place!.Value.Y.Millimetres)];
        if (!ground.CanBeScattered(count))
        {
            return [new(StandIndexKind.ClarkEvans, null, null), new(StandIndexKind.UniformAngle, null, null)];
        }

        // Stems outside the container keep apart on ground that is not counted: no number of that kind is true of them.
        var isOnGround = Array.TrueForAll(stems, stem => ground.Holds(stem.Place!.Value));
        var own = new NearestStems(x, y);
        var index = ground.ClarkEvans(own, x, y);
        var angle = own.UniformAngle();
        var random = new SeededRandom(Seed());
        var runs = RunsFor(count);
        var indices = ImmutableArray.CreateBuilder<double>(runs);
        var angles = ImmutableArray.CreateBuilder<double>(runs);
        for (var run = 0; run < runs; run++)
        {
            ground.Scatter(random, x, y);
            var scattered = new NearestStems(x, y);
            indices.Add(ground.ClarkEvans(scattered, x, y));
            if (angle is not null && scattered.UniformAngle() is { } narrow)
            {
                angles.Add(narrow);
            }
        }

        return
        [
            isOnGround ? new(StandIndexKind.ClarkEvans, index, ChanceBand.Of(indices.DrainToImmutable())) : new(StandIndexKind.ClarkEvans, null, null),
            new(StandIndexKind.UniformAngle, angle, angle is null || angles.Count == 0 ? null : ChanceBand.Of(angles.DrainToImmutable())),
        ];
    }

    private ImmutableArray<StandIndex> Sizes()
    {
        var count = sized.Length;
        if (count < 3)
        {
            return [new(StandIndexKind.SizeDifferentiation, null, null), new(StandIndexKind.SizeDominance, null, null)];
        }

        double[] sizes = [.. sized.Select(trunk => trunk.Diameter!.Value.Value.Millimetres)];
        var nearest = new NearestStems([.. sized.Select(stem => stem.Place!.Value.X.Millimetres)], [.. sized.Select(stem => stem.Place!.Value.Y.Millimetres)]);
        var differentiation = SizeIndices.Differentiation(nearest, sizes);
        double? dominance = count > NearestStems.Four ? SizeIndices.MeanDominance(nearest, sizes) : null;
        var random = new SeededRandom(~Seed());
        var runs = RunsFor(count);
        var differing = ImmutableArray.CreateBuilder<double>(runs);
        var dominating = ImmutableArray.CreateBuilder<double>(runs);
        for (var run = 0; run < runs; run++)
        {
            Shuffle(random, sizes);
            differing.Add(SizeIndices.Differentiation(nearest, sizes));
            if (dominance is not null)
            {
                dominating.Add(SizeIndices.MeanDominance(nearest, sizes));
            }
        }

        return
        [
            new(StandIndexKind.SizeDifferentiation, differentiation, ChanceBand.Of(differing.DrainToImmutable())),
            new(StandIndexKind.SizeDominance, dominance, dominance is null ? null : ChanceBand.Of(dominating.DrainToImmutable())),
        ];
    }

    private StandIndex Sharing()
    {
        var count = sized.Length;
        if (count < 3)
        {
            return new(StandIndexKind.BasalAreaGini, null, null);
        }

        var gini = GiniCoefficient.OfBasalArea([.. sized.Select(trunk => trunk.Diameter!.Value.Value)])!.Value;
        var random = new SeededRandom(Seed() ^ HashStart);
        var runs = RunsFor(count);
        var values = ImmutableArray.CreateBuilder<double>(runs);
        var squares = new double[count];
        for (var run = 0; run < runs; run++)
        {
            for (var stem = 0; stem < count; stem++)
            {
                var diameter = DrawDiameter(random);
                squares[stem] = diameter * diameter;
            }

            values.Add(GiniCoefficient.ForFew(GiniCoefficient.OfUnsorted(squares)!.Value, count));
        }

        return new(StandIndexKind.BasalAreaGini, GiniCoefficient.ForFew(gini, count), ChanceBand.Of(values.DrainToImmutable()));
    }

    /// <summary>A thickness from the log-normal spread, about 1: the logarithm's variance is ln(1 + CV²).</summary>
    internal static double DrawDiameter(SeededRandom random) => Math.Exp(random.NextNormal() * Math.Sqrt(Math.Log(1 + (DrawnVariation * DrawnVariation))));

    /// <summary>Every order as likely (Fisher and Yates).</summary>
    private static void Shuffle(SeededRandom random, double[] values)
    {
        for (var index = values.Length - 1; index > 0; index--)
        {
            var other = random.NextBelow(index + 1);
            (values[index], values[other]) = (values[other], values[index]);
        }
    }

    private ulong Seed()
    {
        // FNV-1a, by numbers instead of bytes: it only has to tell plantings apart.
        var hash = HashStart;
        foreach (var stem in stems)
        {
            Add(stem.Place!.Value.X.Nanometres);
            Add(stem.Place!.Value.Y.Nanometres);
            Add(stem.Diameter?.Value.Nanometres ?? 0);
        }

        Add((long)Math.Min(ground.AreaInSquareMillimetres, 1e15));
        return hash;

        void Add(long number) => hash = (hash ^ (ulong)number) * HashPrime;
    }
}
