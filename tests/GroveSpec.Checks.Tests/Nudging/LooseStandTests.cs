using GroveSpec.Checks.Nudging;
using GroveSpec.Checks.Tests.Choosing;
using GroveSpec.Craft.Moving;
using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Checks.Tests.Nudging;

public sealed class LooseStandTests
{
    private static readonly string[] OutOfReach = ["even-count", "wide-but-short", "thin-but-tall"];

    [Fact]
    public void A_loose_stand_finds_just_what_the_checks_find_on_two_thousand_plantings()
    {
        for (var seed = 0; seed < 2000; seed++)
        {
            // Of more than forty of a kind the checks tell only the worst, which thirteen trunks do not come to.
            var context = ThinningScoreTests.ContextOf(StoolSource.Of(seed, 3 + (seed % 11)));
            Assert.Equal(OfChecks(context), OfStand(context, GroveSpec.Checks.Nudging.Nudging.Stand(context, NudgeLimits.Of(context, 0, withSizes: true))));
        }
    }

    [Fact]
    public void A_loose_stand_finds_just_what_the_checks_find_after_trunks_were_shifted()
    {
        for (var seed = 0; seed < 1000; seed++)
        {
            var context = ThinningScoreTests.ContextOf(StoolSource.Of(seed, 3 + (seed % 12)));
            var stand = GroveSpec.Checks.Nudging.Nudging.Stand(context, NudgeLimits.Of(context, 0, withSizes: true));
            var random = new Random(seed);
            var state = context.State;
            for (var shift = 0; shift < 3; shift++)
            {
                var place = random.Next(context.Standing.Count);
                double right = random.Next(-400, 400) / 10.0, back = random.Next(-400, 400) / 10.0;
                stand.Shift(place, right, back);
                var foot = context.Standing.Trunks[place].Place!.Value;
                var name = context.Standing.Trunks[place].Name;
                var to = new PlanPoint(foot.X + Length.FromMillimetres(right), foot.Y + Length.FromMillimetres(back));
                state = state with { Trunks = [.. state.Trunks.Select(trunk => trunk.Name == name ? trunk with { Place = to } : trunk)] };
            }

            var shifted = new CheckContext(context.Planting, state, context.Origins, context.Units);
            Assert.Equal(OfChecks(shifted), OfStand(shifted, stand));
        }
    }

    [Fact]
    public void What_was_amiss_still_stands_just_when_it_is_found_again()
    {
        for (var seed = 0; seed < 600; seed++)
        {
            var context = ThinningScoreTests.ContextOf(StoolSource.Of(seed, 4 + (seed % 10)));
            var stand = GroveSpec.Checks.Nudging.Nudging.Stand(context, NudgeLimits.Of(context, 0, withSizes: true));
            var (before, after) = (new List<StandFault>(), new List<StandFault>());
            stand.Find(before);
            var random = new Random(seed);
            stand.Shift(random.Next(context.Standing.Count), random.Next(-300, 300) / 10.0, random.Next(-300, 300) / 10.0);
            var standing = before.Where(fault => stand.Stands(fault)).ToList();
            var isClear = stand.Find(after) == 0;
            Assert.False(isClear && standing.Count > 0, $"seed {seed}");
            Assert.All(after.Where(fault => before.Contains(fault)), fault => Assert.Contains(fault, standing));
        }
    }

    [Fact]
    public void What_was_looked_at_before_changes_nothing_of_what_is_found_now()
    {
        for (var seed = 0; seed < 300; seed++)
        {
            var context = ThinningScoreTests.ContextOf(StoolSource.Of(seed, seed % 50 == 0 ? LooseStand.MostTrunks : 1 + (seed % 16)));
            LooseStand Fresh() => GroveSpec.Checks.Nudging.Nudging.Stand(context, NudgeLimits.Of(context, 0, withSizes: true));
            var (stand, random) = (Fresh(), new Random(seed));
            var ways = new (double Right, double Back)[stand.Count];
            for (var look = 0; look < 40; look++)
            {
                // One trunk here and there, then another, now and then two, now and then back where it was.
                var place = look % 9 < 5 ? look / 9 % stand.Count : random.Next(stand.Count);
                ways[place] = random.Next(4) == 0 ? (0, 0) : (random.Next(-500, 500) / 10.0, random.Next(-500, 500) / 10.0);
                stand.Shift(place, ways[place].Right, ways[place].Back);
                if (random.Next(3) == 0)
                {
                    continue;
                }

                var fresh = Fresh();
                for (var trunk = 0; trunk < ways.Length; trunk++)
                {
                    fresh.Shift(trunk, ways[trunk].Right, ways[trunk].Back);
                }

                var (found, expected) = (new List<StandFault>(), new List<StandFault>());
                Assert.Equal(fresh.Find(expected), stand.Find(found));
                Assert.Equal(expected, found);
                Assert.Equal(fresh.Weigh(1, out var last), stand.Weigh(1, out var same));
                Assert.Equal(last, same);
                Assert.All(expected, fault => Assert.True(stand.Stands(fault) && fresh.Stands(fault)));
            }
        }
    }

    private static List<string> OfChecks(CheckContext context) =>
    [
        .. Checker.Composition(new CheckContext(context.Planting, context.State, context.Origins, context.Units), TestContext.Current.CancellationToken)
            .Where(finding => !OutOfReach.Contains(finding.Check.Name))
            .Select(finding => $"{finding.Check.Name} {string.Join(' ', finding.Trunks)}")
            .Order(StringComparer.Ordinal),
    ];

    private static List<string> OfStand(CheckContext context, LooseStand stand)
    {
        var faults = new List<StandFault>();
        stand.Find(faults);
        return
        [
            .. faults
                .Select(fault => $"{NudgeLimits.NameOf(fault.Kind)} {string.Join(' ', Enumerable.Range(0, stand.Count).Where(place => (fault.Trunks >> place & 1) != 0).Select(place => context.Standing.Trunks[place].Name).Order(StringComparer.Ordinal))}")
                .Order(StringComparer.Ordinal),
        ];
    }
}
