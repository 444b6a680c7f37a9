using System.Collections.Immutable;
using CsCheck;
using GroveSpec.Craft.Choice;
using GroveSpec.Craft.Composition;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Roles;
using GroveSpec.Model.States;
using GroveSpec.Model.Trunks;
using Xunit;

namespace GroveSpec.Craft.Tests.Choice;

/// <summary>Small plantings worked out by hand. Trunks are numbered from 0 in the order given, and a set of them is written as bits, the first on the right.</summary>
public sealed class RoleAimsTests
{
    [Theory]

    // The nearer of the two is there; 21 mm is under the ceiling of 22 mm.
    [InlineData(0b0101, 0)]

    // T1 lacks 1 − 20/40 = 0.5 of its aim, T0 only 1 − 30/40 = 0.25: what is lost is the difference.
    [InlineData(0b0110, 0.25)]
    [InlineData(0b0111, 0)]

    // No one plays the role of the lowest rank; no one plays the other; neither.
    [InlineData(0b0100, 2)]
    [InlineData(0b0001, 1)]
    [InlineData(0b0010, 1.25)]
    [InlineData(0, 3)]

    // 22 mm is not under 22 mm.
    [InlineData(0b1001, 0.5)]
    [InlineData(0b1111, 0.5)]
    [InlineData(0b1010, 0.75)]
    public void A_main_role_with_an_aim_and_another_with_a_ceiling(int kept, double lost)
    {
        var aims = Of([Ranked("main", 1) with { Aims = [Reach(Dimension.Diameter, 40)] }, Plain("lee") with { Ceilings = [Under(Dimension.Diameter, 22)] }], ("main", 30, null), ("main", 20, null), ("lee", 21, null), ("lee", 22, null));
        Assert.Equal(lost, aims.Loss((uint)kept), 1e-12);
        Assert.Equal(0b0011u, aims.Main);
    }

    [Theory]

    // T1 and T3 are the thickest: with either of them nothing is lost.
    [InlineData(0b0010, 0)]
    [InlineData(0b1000, 0)]
    [InlineData(0b1011, 0)]
    [InlineData(0b0101, 2)]
    public void Of_several_that_are_as_thick_any_is_the_main_trunk(int kept, double lost)
    {
        var aims = Of([], (null, 30, null), (null, 43, null), (null, 12, null), (null, 43, null));
        Assert.Equal(lost, aims.Loss((uint)kept), 1e-12);
        Assert.Equal(0b1010u, aims.Main);
    }

    [Theory]

    // Of 40 mm and 400 mm: T0 lacks a quarter of each, in the mean 0.25.
    [InlineData(0b00001, 0.125)]

    // T1 is past its thickness, which makes up for nothing: (0 + 0.25) / 2 = 0.125, the least of all that are there.
    [InlineData(0b00010, 0)]

    // T2 lacks (0.5 + 0) / 2 = 0.25.
    [InlineData(0b00100, 0.125)]

    // Of T3 the height is not known, so that its thickness alone counts: 0.75.
    [InlineData(0b01000, 0.625)]
    [InlineData(0b01100, 0.125)]
    public void Each_of_two_aims_counts_half_and_what_is_past_one_makes_up_for_nothing(int kept, double lost) =>
        Assert.Equal(lost, Of([Ranked("main", 1) with { Aims = [Reach(Dimension.Diameter, 40), Reach(Dimension.Height, 400)] }], ("main", 30, 300), ("main", 60, 300), ("main", 20, 400), ("main", 10, null)).Loss((uint)kept), 1e-12);

    [Fact]
    public void A_trunk_of_which_no_size_is_known_is_not_held_to_lack_one()
    {
        var aims = Of([Ranked("main", 1) with { Aims = [Reach(Dimension.Diameter, 40)] }], ("main", null, null), ("main", 30, null));
        Assert.Equal((0.0, 0.25), (aims.Loss(0b01), aims.Loss(0b10)));
    }

    [Theory]

    // B at 20 mm is thinner than C at 25 mm, which comes after it: one quarter. A is thicker than both.
    [InlineData(0b00111, 0.25)]
    [InlineData(0b00011, 1)]

    // D is of C's rank and 30 mm, as thick as A: thinner than it is B alone, beside C two of a later rank.
    [InlineData(0b01011, 0.25)]
    [InlineData(0b01111, 0.5)]

    // E has no rank, however thick it is; with B gone its role is lost.
    [InlineData(0b11111, 0.5)]
    [InlineData(0b11101, 1)]
    public void A_trunk_thinner_than_one_of_a_later_rank_is_a_quarter_for_each(int kept, double lost)
    {
        var aims = Of([Ranked("first", 1), Ranked("second", 2), Ranked("third", 3), Plain("none")], ("first", 30, null), ("second", 20, null), ("third", 25, null), ("third", 30, null), ("none", 90, null));

        // What is lost of the role of E is not asked here where E is not there.
        var ofNone = (kept & 0b10000) == 0 ? 1 : 0;
        Assert.Equal(lost + ofNone, aims.Loss((uint)kept), 1e-12);
    }

    [Fact]
    public void Trunks_of_one_rank_and_trunks_as_thick_as_each_other_are_in_order()
    {
        Assert.Equal(0, Of([Ranked("one", 1)], ("one", 30, null), ("one", 10, null)).Loss(0b11));
        Assert.Equal(0, Of([Ranked("one", 1), Ranked("two", 2)], ("one", 30, null), ("two", 30, null)).Loss(0b11));
        Assert.Equal(0.25, Of([Ranked("one", 1), Ranked("two", 2)], ("one", 30, null), ("two", 30.000001, null)).Loss(0b11));

        // Of a trunk without a thickness nothing is said.
        Assert.Equal(0, Of([Ranked("one", 1), Ranked("two", 2)], ("one", null, null), ("two", 30, null)).Loss(0b11));
    }

    [Fact]
    public void The_main_role_is_that_of_the_lowest_rank_that_is_played()
    {
        // Rank 1 is written down and nobody plays it.
        var aims = Of([Ranked("nobody", 1), Ranked("low", 2), Ranked("high", 5)], ("high", 10, null), ("low", 30, null));
        Assert.Equal(0b10u, aims.Main);
        Assert.Equal((2.0, 1.0), (aims.Loss(0b01), aims.Loss(0b10)));

        // Of two roles of one lowest rank each is a main one.
        var both = Of([Ranked("left", 1), Ranked("right", 1)], ("left", 10, null), ("right", 30, null));
        Assert.Equal((0b11u, 2.0, 2.0, 4.0), (both.Main, both.Loss(0b01), both.Loss(0b10), both.Loss(0)));
    }

    [Fact]
    public void Without_a_rank_the_thickest_is_the_main_one()
    {
        var aims = Of([Plain("lee")], ("lee", 20, null), ("lee", 30, null), (null, 10, null));
        Assert.Equal(0b010u, aims.Main);

        // T0 still plays the role; without both 2 and 1 are lost.
        Assert.Equal((2.0, 3.0, 0.0), (aims.Loss(0b101), aims.Loss(0b100), aims.Loss(0b010)));
        Assert.Equal(0b11u, Of([], (null, 30, null), (null, 30, null)).Main);
    }

    [Fact]
    public void Where_no_thickness_is_known_and_no_role_is_played_nothing_can_be_lost()
    {
        var aims = Of([], (null, null, 300), (null, null, 200));
        Assert.Equal((0u, 0.0, 0.0), (aims.Main, aims.Loss(0), aims.Loss(0b11)));
    }

    [Fact]
    public void What_a_trunk_that_stands_in_any_case_plays_is_not_lost()
    {
        Role[] roles = [Ranked("main", 1) with { Aims = [Reach(Dimension.Diameter, 40)] }];

        // The other lacks 0.5; T0 only 0.25, which is lost with it. T1 lacks 0.75 and matters to nobody.
        var (planting, trunks) = Planted(roles, ("main", 30, null), ("main", 10, null), ("main", 20, null));
        var aims = new RoleAims(planting, Standing(planting, trunks[..2]), [trunks[2]]);
        Assert.Equal((0.0, 0.25, 0.25), (aims.Loss(0b01), aims.Loss(0b10), aims.Loss(0)));

        // The nearest of all stands in any case: nothing is lost whatever goes.
        var near = new RoleAims(planting, Standing(planting, trunks[1..]), [trunks[0]]);
        Assert.Equal((0.0, 0.0), (near.Loss(0), near.Loss(0b01)));

        // The thickest stands in any case, so that no other is the main one; and a rank that it plays keeps others from being it.
        var (plain, same) = Planted([Plain("lee")], ("lee", 10, null), (null, 30, null));
        Assert.Equal((0u, 1.0), (new RoleAims(plain, Standing(plain, same[..1]), [same[1]]).Main, new RoleAims(plain, Standing(plain, same[..1]), [same[1]]).Loss(0)));
        var (ranked, two) = Planted([Ranked("first", 1), Ranked("second", 2)], ("second", 10, null), ("first", 30, null));
        Assert.Equal((0u, 1.0), (new RoleAims(ranked, Standing(ranked, two[..1]), [two[1]]).Main, new RoleAims(ranked, Standing(ranked, two[..1]), [two[1]]).Loss(0)));
    }

    [Fact]
    public void A_ceiling_on_height_goes_by_height_and_two_ceilings_are_one_fault()
    {
        var aims = Of([Ranked("lee", 1) with { Ceilings = [Under(Dimension.Height, 300), Under(Dimension.Diameter, 20)] }], ("lee", 30, 400), ("lee", 10, 299.999999), ("lee", 10, 300), ("lee", 10, null));
        Assert.Equal((0.5, 0.0, 0.5, 0.0), (aims.Loss(0b0001), aims.Loss(0b0010), aims.Loss(0b0100), aims.Loss(0b1000)));
    }

    [Fact]
    public void A_bound_is_never_above_what_any_choice_between_loses_and_is_met_by_the_choice_itself() =>
        Gen.Select(Gen.Select(Gen.Int[0, 3], Gen.Int[5, 50], Gen.Int[50, 400]).Array[2, 8], Gen.UInt, Gen.UInt).Sample((sizes, some, more) =>
        {
            Role[] roles =
            [
                Ranked("r0", 1) with { Aims = [Reach(Dimension.Diameter, 40)] },
                Ranked("r1", 2) with { Aims = [Reach(Dimension.Height, 300)], Ceilings = [Under(Dimension.Diameter, 25)] },
                Plain("r2"),
            ];
            var aims = Of(roles, [.. sizes.Select(size => (size.Item1 == 3 ? null : $"r{size.Item1}", (double?)size.Item2, (double?)size.Item3))]);
            var all = (1u << sizes.Length) - 1;
            var (kept, possible) = (some & more & all, (some | more) & all);
            Assert.Equal(aims.Loss(kept), aims.LeastLoss(kept, kept), 1e-12);
            for (var between = possible; ; between = (between - 1) & possible)
            {
                if ((between & kept) == kept)
                {
                    Assert.True(aims.LeastLoss(kept, possible) <= aims.Loss(between) + 1e-12, $"{kept:b} to {possible:b}: {aims.LeastLoss(kept, possible)}; {between:b} loses {aims.Loss(between)}");
                }

                if (between == 0)
                {
                    break;
                }
            }
        });

    private static Role Plain(string name) => new() { Name = name, Origin = new Origin($"role:{name}") };

    private static Role Ranked(string name, int rank) => Plain(name) with { Rank = new Stated<int>(rank, new Origin($"role:{name}/rank")) };

    private static Aim Reach(Dimension dimension, double millimetres) => new(dimension, Length.FromMillimetres(millimetres), 2030, Origin.Default);

    private static Ceiling Under(Dimension dimension, double millimetres) => new(dimension, Length.FromMillimetres(millimetres), Origin.Default);

    private static RoleAims Of(Role[] roles, params (string? Role, double? Diameter, double? Height)[] trunks)
    {
        var (planting, states) = Planted(roles, trunks);
        return new(planting, Standing(planting, states), []);
    }

    private static StandingTrunks Standing(Planting planting, IEnumerable<TrunkState> trunks) => StandingTrunks.Of(planting.StateOn(null) with { Trunks = [.. trunks] });

    private static (Planting Planting, ImmutableArray<TrunkState> Trunks) Planted(Role[] roles, params (string? Role, double? Diameter, double? Height)[] trunks)
    {
        var planting = new Planting
        {
            Roles = [.. roles],
            Trunks =
            [
                .. trunks.Select((trunk, index) => new Trunk
                {
                    Name = $"T{index}",
                    Origin = new Origin($"trunk:T{index}"),
                    At = new Stated<PlanPoint>(PlanPoint.FromMillimetres(index * 50, 0), Origin.Default),
                    Role = trunk.Role is { } role ? new Stated<string>(role, Origin.Default) : null,
                    Diameter = trunk.Diameter is { } diameter ? new Stated<Length>(Length.FromMillimetres(diameter), Origin.Default) : null,
                    Height = trunk.Height is { } height ? new Stated<Length>(Length.FromMillimetres(height), Origin.Default) : null,
                }),
            ],
        };
        return (planting, planting.StateOn(null).Trunks);
    }
}
