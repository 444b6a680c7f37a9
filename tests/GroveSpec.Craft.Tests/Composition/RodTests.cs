using System.Numerics;
using CsCheck;
using GroveSpec.Craft.Composition;
using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Craft.Tests.Composition;

public sealed class RodTests
{
    private static TrunkSection At(long x, long y, long diameter) => new(new PlanPoint(new Length(x), new Length(y)), new Length(diameter));

    private static TrunkSection Mm(double x, double y, double diameter) => new(PlanPoint.FromMillimetres(x, y), Length.FromMillimetres(diameter));

    [Fact]
    public void Three_centres_on_one_line_have_a_closeness_of_zero()
    {
        Assert.Equal(0, Rod.Closeness(Mm(0, 0, 10), Mm(30, 10, 20), Mm(90, 30, 8)));
    }

    [Fact]
    public void Three_centres_on_one_line_a_kilometre_off_have_a_closeness_of_zero()
    {
        long far = Length.Largest.Nanometres;
        Assert.Equal(0, Rod.Closeness(At(-far, -far, 1), At(far / 3, far / 3, 2), At(far, far, 3)));
        Assert.True(Rod.Closeness(At(-far, -far, 1), At((far / 3) + 1, far / 3, 2), At(far, far, 3)) > 0);
    }

    [Fact]
    public void Equal_trunks_that_fit_a_strip_of_half_their_width_have_a_closeness_of_a_half()
    {
        // Middle trunk 10 mm off the line through the others, all 20 mm thick: the best line runs 5 mm off each.
        Assert.Equal(0.5, Rod.Closeness(Mm(-100, 0, 20), Mm(0, 10, 20), Mm(100, 0, 20)), 12);
    }

    [Fact]
    public void The_very_limit_counts_and_a_nanometre_more_does_not()
    {
        const long mm = Length.NanometresPerMillimetre;
        Assert.True(Rod.Passes(At(-100 * mm, 0, 20 * mm), At(0, 10 * mm, 20 * mm), At(100 * mm, 0, 20 * mm), 0.5));
        Assert.False(Rod.Passes(At(-100 * mm, 0, 20 * mm), At(0, (10 * mm) + 1, 20 * mm), At(100 * mm, 0, 20 * mm), 0.5));
        Assert.True(Rod.Passes(At(-100 * mm, 0, 20 * mm), At(0, (10 * mm) - 1, 20 * mm), At(100 * mm, 0, 20 * mm), 0.5));
    }

    [Fact]
    public void The_limit_is_the_decimal_that_was_written()
    {
        // 0.1 is no binary fraction: an offset of 2 mm with 20 mm trunks comes to just a tenth.
        const long mm = Length.NanometresPerMillimetre;
        Assert.True(Rod.Passes(At(-100 * mm, 0, 20 * mm), At(0, 2 * mm, 20 * mm), At(100 * mm, 0, 20 * mm), 0.1));
        Assert.False(Rod.Passes(At(-100 * mm, 0, 20 * mm), At(0, (2 * mm) + 1, 20 * mm), At(100 * mm, 0, 20 * mm), 0.1));
    }

    [Fact]
    public void A_thick_trunk_gives_the_line_more_room()
    {
        // Offset 10 mm in the middle of the way; the line may run t·30 off the thick middle one and t·5 off the ends: t = 10/35.
        Assert.Equal(10.0 / 35, Rod.Closeness(Mm(-100, 0, 10), Mm(0, 10, 60), Mm(100, 0, 10)), 12);
    }

    [Fact]
    public void The_worked_triangle_of_the_reference_has_its_altitude_as_offset()
    {
        // (0,0) (100,3) (210,0): altitude 3 on the longest side; computed with R, reference values C.
        var rod = RodThroughThree.Of(Mm(0, 0, 10), Mm(100, 3, 10), Mm(210, 0, 10));
        Assert.Equal(3, rod.Offset.Millimetres, 6);
        Assert.Equal(Bearing.Back, rod.Side);

        // (10,10) (20,20) (30,31): altitude 0.344828.
        Assert.Equal(0.344828, RodThroughThree.Of(Mm(10, 10, 1), Mm(20, 20, 1), Mm(30, 31, 1)).Offset.Millimetres, 6);
    }

    [Fact]
    public void The_move_that_is_suggested_clears_the_limit_and_a_little_less_does_not()
    {
        var trunk = Gen.Select(Gen.Int[-300, 300], Gen.Int[-20, 20], Gen.Int[4, 30]);
        Gen.Select(trunk, trunk, trunk, Gen.Int[0, 2]).Sample((a, b, c, position) =>
        {
            var from = Mm(-400 + a.Item1, a.Item2, a.Item3);
            var middle = Mm(b.Item1 / 10.0, b.Item2, b.Item3);
            var to = Mm(400 + c.Item1, c.Item2, c.Item3);
            var rod = RodThroughThree.Of(from, middle, to);
            var move = rod.MoveToClear(position, 0.5);
            var way = rod.WayOut(position);
            double After(double millimetres)
            {
                TrunkSection Moved(TrunkSection section) => section with { Centre = PlanPoint.FromMillimetres(section.Centre.X.Millimetres + (millimetres * way.Rightward), section.Centre.Y.Millimetres + (millimetres * way.Backward)) };
                return Rod.Closeness(position == 0 ? Moved(from) : from, position == 1 ? Moved(middle) : middle, position == 2 ? Moved(to) : to);
            }

            return After(move.Millimetres + 0.001) > 0.5 && (move == Length.Zero || After(move.Millimetres - 0.002) <= 0.5);
        });
    }

    /// <summary>Random triples of every awkward kind, all drawn from one printed seed.</summary>
    public static IEnumerable<(TrunkSection A, TrunkSection B, TrunkSection C)> RandomTriples(int count, int seed)
    {
        var random = new Random(seed);
        for (var index = 0; index < count; index++)
        {
            var kind = index % 8;
            long spread = kind switch { 0 => 300_000_000, 1 => 40, 2 => 1_000_000_000_000, _ => 500_000_000 };
            long offsetX = kind is 3 or 4 ? random.NextInt64(-900_000_000_000, 900_000_000_000) : 0;
            long offsetY = kind is 3 or 4 ? random.NextInt64(-900_000_000_000, 900_000_000_000) : 0;
            long Place() => random.NextInt64(-spread, spread + 1);
            long ax = Place(), ay = Place(), bx = Place(), by = Place(), cx = Place(), cy = Place();
            if (kind is 4 or 5)
            {
                // Nearly, and now and then wholly, on one line.
                var (numerator, denominator) = (random.NextInt64(-3, 5), random.NextInt64(1, 4));
                (bx, by) = (ax + (((bx - ax) / denominator) * denominator), ay + (((by - ay) / denominator) * denominator));
                cx = ax + ((bx - ax) / denominator * numerator) + random.NextInt64(-2, 3);
                cy = ay + ((by - ay) / denominator * numerator) + random.NextInt64(-2, 3);
            }

            long Diameter() => kind switch
            {
                6 => 20_000_000,
                7 => random.Next(3) == 0 ? random.NextInt64(1, 50) : random.NextInt64(1_000_000, 900_000_000),
                1 => random.NextInt64(1, 30),
                _ => random.NextInt64(1_000_000, 80_000_000),
            };

            yield return (At(ax + offsetX, ay + offsetY, Diameter()), At(bx + offsetX, by + offsetY, Diameter()), At(cx + offsetX, cy + offsetY, Diameter()));
        }
    }

    [Fact]
    public void It_agrees_with_exact_rational_arithmetic_on_a_hundred_thousand_random_triples()
    {
        const int seed = 20260421;
        double[] limits = [0.5, 0.1, 0.03, 1.7];
        int number = 0, passing = 0;
        foreach (var (a, b, c) in RandomTriples(100_000, seed))
        {
            var limit = limits[number % limits.Length];
            var expected = RodReference.SquareOfCloseness(a, b, c);
            var exactLimit = new Rational(new BigInteger((decimal)limit * 100), 100);
            var isExpected = expected.CompareTo(exactLimit.Times(exactLimit)) <= 0;
            passing += isExpected ? 1 : 0;
            Assert.True(isExpected == Rod.Passes(a, b, c, limit), $"seed {seed}, triple {number}: {a} {b} {c} at {limit}");
            Assert.True(Math.Abs(Math.Sqrt(expected.ToDouble()) - Rod.Closeness(a, b, c)) <= 1e-9 * Math.Max(1e-300, Rod.Closeness(a, b, c)), $"seed {seed}, triple {number}: {a} {b} {c}");
            number++;
        }

        // The sample would prove little if one answer were rare.
        Assert.InRange(passing, 10_000, 90_000);
    }

    [Fact]
    public void It_decides_rightly_at_the_exact_closeness_of_random_triples_on_both_sides()
    {
        // Of equal trunks the middle one can stand at a whole number of nanometres off; half of that over the radius is the closeness.
        const int seed = 7;
        var random = new Random(seed);
        for (var number = 0; number < 10_000; number++)
        {
            long half = random.NextInt64(1_000, 400_000_000), radius = random.NextInt64(1, 40_000_000), shift = random.NextInt64(-900_000_000_000, 900_000_000_000);
            var offset = radius;
            var isTurned = random.Next(2) == 0;
            TrunkSection Turned(long x, long y) => isTurned ? At(y - shift, x + shift, 2 * radius) : At(x + shift, y - shift, 2 * radius);
            bool PassesAt(long off) => Rod.Passes(Turned(-half, 0), Turned(0, off), Turned(half, 0), 0.5);
            if (half > 4 * radius)
            {
                Assert.True(PassesAt(offset), $"seed {seed}, number {number}");
                Assert.False(PassesAt(offset + 1), $"seed {seed}, number {number}");
            }
        }
    }

    [Fact]
    public void It_agrees_with_the_narrowest_of_many_directions()
    {
        // A brute force: the least over directions of the largest |n·(p−q)|/(r+s), refined about the best one.
        foreach (var (a, b, c) in RandomTriples(400, 11).Where((_, index) => index % 8 is 0 or 6))
        {
            Assert.Equal(RodReference.BySweep(a, b, c), Rod.Closeness(a, b, c), 1e-6 * Math.Max(1, Rod.Closeness(a, b, c)));
        }
    }

    [Fact]
    public void Order_place_quarter_turns_mirrors_and_scale_change_nothing()
    {
        const int seed = 31;
        var number = 0;
        foreach (var (a, b, c) in RandomTriples(4_000, seed))
        {
            var limit = Rod.Closeness(a, b, c) is > 0.01 and < 1e6 and var own && number % 2 == 0 ? Math.Round(own, 6) : 0.5;
            var expected = Rod.Passes(a, b, c, limit);
            TrunkSection[][] orders = [[a, c, b], [b, a, c], [b, c, a], [c, a, b], [c, b, a]];
            foreach (var order in orders)
            {
                Assert.Equal(expected, Rod.Passes(order[0], order[1], order[2], limit));
                Assert.Equal(Rod.Closeness(a, b, c), Rod.Closeness(order[0], order[1], order[2]));
            }

            Func<TrunkSection, TrunkSection>[] changes =
            [
                s => At(-s.Centre.Y.Nanometres, s.Centre.X.Nanometres, s.Diameter.Nanometres),
                s => At(-s.Centre.X.Nanometres, s.Centre.Y.Nanometres, s.Diameter.Nanometres),
                s => At(s.Centre.X.Nanometres + 123_456_789_012, s.Centre.Y.Nanometres - 987_654_321_098, s.Diameter.Nanometres),
                s => At(3 * s.Centre.X.Nanometres, 3 * s.Centre.Y.Nanometres, 3 * s.Diameter.Nanometres),
            ];
            foreach (var change in changes)
            {
                Assert.True(expected == Rod.Passes(change(a), change(b), change(c), limit), $"seed {seed}, triple {number}: {a} {b} {c} at {limit}");
            }

            number++;
        }
    }
}
