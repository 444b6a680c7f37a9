using System.Collections.Concurrent;
using System.Collections.Immutable;
using CsCheck;
using GroveSpec.Checks.Ground;
using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Ground;
using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Checks.Tests.Ground;

/// <summary>The judge of places against the checks themselves, run with the newcomer at each place.</summary>
public class GroundJudgeTests
{
    [Fact]
    public void The_judge_raises_at_any_place_what_the_checks_raise_there()
    {
        var met = new ConcurrentDictionary<string, int>(StringComparer.Ordinal);
        Gen.Select(GeneratedPlanting.Any, Gen.Int[5, 32], Gen.Int[0, 240], Gen.OneOf("A", "M", "Z9"), Gen.Int[0, int.MaxValue]).Sample(
            (planting, diameter, height, name, seed) =>
            {
                var few = planting with { Trunks = [.. planting.Trunks.Take(2 + (seed % (GroundStand.MostTrunks - 3)))] };
                Agrees(new GroundCase(Check.Of(few.Text).ToContext(), GroundSource.Newcomer(name, diameter, height == 0 ? null : height)), new Random(seed), 30, met);
            },
            iter: 300);

        // The comparison says something only where all checks and free places were met.
        Assert.Equal(12, met.Keys.Count(check => check.Length > 0));
        Assert.True(met[""] > 50, $"only {met[""]} places were free");
    }

    [Fact]
    public void The_judge_keeps_to_what_the_file_says_and_to_an_eye_that_steps_back_from_a_far_newcomer()
    {
        var met = new ConcurrentDictionary<string, int>(StringComparer.Ordinal);
        Gen.Select(GeneratedPlanting.Any, Gen.Int[5, 32], Gen.OneOf("A", "M", "Z9"), Gen.OneOf(Besides), Gen.Bool, Gen.Int[0, int.MaxValue]).Sample(
            (planting, diameter, name, besides, isEyeStated, seed) =>
            {
                var few = planting with { Trunks = [.. planting.Trunks.Take(1 + (seed % 14))], Corners = [], Besides = besides };
                var text = isEyeStated ? few.Text : few.Text.Replace(", at 1500 mm, eye 200 mm", "", StringComparison.Ordinal);
                Agrees(new GroundCase(Check.Of(text).ToContext(), GroundSource.Newcomer(name, diameter, 150)), new Random(seed), 30, met);
            },
            iter: 150);
        Assert.True(met[""] > 50, $"only {met[""]} places were free");
    }

    [Fact]
    public void The_judge_raises_for_a_trunk_of_the_planting_what_the_checks_raise_when_it_is_moved()
    {
        Gen.Select(GeneratedPlanting.Any, Gen.Int[0, int.MaxValue]).Sample(
            (planting, seed) =>
            {
                var few = planting with { Trunks = [.. planting.Trunks.Take(3 + (seed % 20))] };
                var context = Check.Of(few.Text).ToContext();
                Agrees(new GroundCase(context, context.State.Trunks[seed % context.State.Trunks.Length]), new Random(seed), 30, []);
            },
            iter: 80);
    }

    private static string[] Besides =>
    [
        "tolerance three-in-line 0.8\ntolerance even-gaps 3 %\ntolerance twin-diameters 15 %",
        "mute touching because \"they may\"\nmute hidden-trunk because \"it may\"",
        "mute even-gaps because \"they may\"\nmute twin-diameters because \"they may\"\nmute three-in-line because \"it may\"",
        "accept twin-diameters A0 Z9 because \"they may\"\naccept three-in-line A A0 H1 because \"it may\"\naccept hidden-trunk M because \"it may\"",
        "mute off-container because \"it may\"\ntolerance near-rim 25 mm\ntolerance level-tops 8 %\ntolerance depth-reversed 0.1",
    ];

    /// <summary>Compares the judge with the checks at places, some on a lattice of whole millimetres and some anywhere.</summary>
    private static void Agrees(GroundCase ground, Random random, int places, ConcurrentDictionary<string, int> met)
    {
        var judge = new GroundJudge(ground);
        var before = Keys(Checker.Composition(ground.Without, CancellationToken.None));
        for (var number = 0; number < places; number++)
        {
            double x = (random.NextDouble() * 640) - 320, y = (random.NextDouble() * 440) - 220;
            var place = number % 2 == 0 ? PlanPoint.FromMillimetres(Math.Round(x), Math.Round(y)) : PlanPoint.FromMillimetres(x, y);
            var expected = Checker.Composition(ground.At(place), CancellationToken.None)
                .Where(finding => !before.Contains(Key(finding)) && !ground.IsOfAnyPlace(finding.Check, ground.SetOf(finding.Trunks)!.Value))
                .Select(Key).Order(StringComparer.Ordinal).ToArray();
            var actual = judge.Reasons(place).Select(reason => Acceptances.Key(reason.Check.Name, ground.NamesOf(reason.Trunks))).Order(StringComparer.Ordinal).ToArray();
            foreach (var check in expected.Length == 0 ? [""] : expected.Select(key => key.Split('\n')[0]))
            {
                met.AddOrUpdate(check, 1, (_, count) => count + 1);
            }

            Assert.True(expected.SequenceEqual(actual), $"{place}: expected [{string.Join("; ", expected)}], judged [{string.Join("; ", actual)}]");
            Assert.Equal(expected.Length == 0, judge.IsFree(place));
        }
    }

    private static ImmutableHashSet<string> Keys(IEnumerable<Finding> findings) => [.. findings.Select(Key)];

    private static string Key(Finding finding) => Acceptances.Key(finding.Check.Name, finding.Trunks);
}
