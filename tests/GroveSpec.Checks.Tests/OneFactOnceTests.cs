using CsCheck;
using GroveSpec.Binding;
using GroveSpec.Craft.Composition;
using GroveSpec.Craft.Containers;
using GroveSpec.Craft.Views;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Roles;
using GroveSpec.Model.States;
using Xunit;

namespace GroveSpec.Checks.Tests;

/// <summary>One fact is told once, and what is not told is counted.</summary>
public sealed class OneFactOnceTests
{
    [Fact]
    public void No_line_and_no_gap_is_told_of_trunks_that_touch()
    {
        GeneratedPlanting.Any.Sample(
            planting =>
            {
                var assessment = Check.Of(planting.Text);
                var touching = Touching(ByName(assessment));
                Assert.All(
                    Told(assessment, "three-in-line", "even-gaps", "even-gaps-in-view"),
                    finding => Assert.DoesNotContain(Pairs(finding), touching.Contains));
            },
            iter: 300);
    }

    [Fact]
    public void Gaps_in_the_view_are_told_of_trunks_that_are_seen_and_whose_gaps_are_not_even_from_above_as_well()
    {
        GeneratedPlanting.Any.Sample(
            planting =>
            {
                var assessment = Check.Of(planting.Text);
                var state = ByName(assessment);
                var (even, hidden) = (Even(state), Hidden(state));
                Assert.All(Told(assessment, "even-gaps-in-view"), finding =>
                {
                    Assert.DoesNotContain(string.Join(' ', finding.Trunks), even);
                    Assert.DoesNotContain(finding.Trunks, hidden.Contains);
                });
            },
            iter: 300);
    }

    [Fact]
    public void No_trunk_is_both_near_the_rim_and_off_the_container()
    {
        GeneratedPlanting.Any.Sample(
            planting =>
            {
                var assessment = Check.Of(planting.Text);
                Assert.Empty(Told(assessment, "near-rim").Select(finding => finding.Trunks[0]).Intersect(Told(assessment, "off-container").Select(finding => finding.Trunks[0])));
            },
            iter: 100);
    }

    [Fact]
    public void No_two_trunks_are_told_as_one_wide_but_short_against_the_other_and_the_other_tall_but_thin_against_it()
    {
        Gen.Select(GeneratedPlanting.Any, Gen.OneOf("", "tolerance wide-but-short 2 %", "tolerance thin-but-tall 25 %", "tolerance wide-but-short 40 %\ntolerance thin-but-tall 3 %")).Sample(
            (planting, tolerances) =>
            {
                var assessment = Check.Of((planting with { Besides = tolerances }).Text);
                Assert.Empty(Against(assessment, "wide-but-short").Intersect(Against(assessment, "thin-but-tall").Select(pair => (pair.Other, pair.Trunk))));
            },
            iter: 300);

        static IEnumerable<(string Trunk, string Other)> Against(Assessment assessment, string check) =>
            Told(assessment, check).SelectMany(finding => finding.Related.Select(related => (finding.Trunks[0], related.Message)));
    }

    [Fact]
    public void What_is_told_accepted_and_counted_is_all_that_was_found_and_of_a_large_planting_five_of_a_kind_are_told()
    {
        Gen.Select(GeneratedPlanting.Any, Gen.Int[0, 3]).Sample(
            (planting, everyOther) =>
            {
                AddUp(Check.Of(planting.Text));

                // The worst are accepted, all or some of them, and the next worst are told in their place.
                var worst = Check.Of(planting.Text).Findings.Where((finding, index) => finding.Check.IsComposition && index % 4 >= everyOther).ToList();
                var accepting = Check.Of((planting with
                {
                    Besides = string.Join('\n', worst.Select(finding => $"accept {finding.Check.Name} {string.Join(' ', finding.Trunks)} because \"so\"")),
                }).Text);
                Assert.Equal(worst.Select(Name).Order(StringComparer.Ordinal), accepting.Accepted.Select(Name).Order(StringComparer.Ordinal));
                AddUp(accepting);
            },
            iter: 200);

        static string Name(Finding finding) => finding.Check.Name + " " + string.Join(' ', finding.Trunks);
    }

    private static void AddUp(Assessment assessment)
    {
        var isLarge = assessment.State.Trunks.Length >= Checker.LargePlanting;
        var told = assessment.Findings.Where(finding => finding.Check.IsComposition).ToLookup(finding => finding.Check.Name);
        var accepted = assessment.Accepted.ToLookup(finding => finding.Check.Name);
        foreach (var (check, all) in AllFound(assessment))
        {
            Assert.Equal((check, all), (check, told[check].Sum(finding => 1 + finding.Untold) + accepted[check].Count()));
            Assert.True(!isLarge || told[check].Count() <= Checker.ToldOfAKind, check);
            Assert.True(isLarge || told[check].All(finding => finding.Untold == 0), check);
        }
    }

    /// <summary>How many there are of each kind, counted beside the checks.</summary>
    private static IEnumerable<(string Check, int Count)> AllFound(Assessment assessment)
    {
        var state = ByName(assessment);
        var standing = StandingTrunks.Of(state);
        var touching = Touching(state);
        var (even, hidden) = (Even(state), Hidden(state));
        var view = FrontView.Of(state);
        yield return ("touching", touching.Count);
        yield return ("three-in-line", RodSearch.Find(standing, 0.5).Count(rod => !Meet(standing.Trunks[rod.End].Name, standing.Trunks[rod.Middle].Name, standing.Trunks[rod.OtherEnd].Name)));
        yield return ("even-gaps", even.Count(three => three.Split(' ') is [var one, var two, var other] && !Meet(one, two, other)));
        yield return ("even-gaps-in-view", Enumerable.Range(0, Math.Max(0, view.Trunks.Length - 2)).Count(index =>
        {
            var three = view.Trunks.AsSpan().Slice(index, 3).ToArray();
            Length left = three[1].Foot.Across - three[0].Foot.Across, right = three[2].Foot.Across - three[1].Foot.Across;
            return left > Length.Zero && right > Length.Zero && Likeness.IsCloserThan(left, right, 8)
                && !Meet(three[0].Name, three[1].Name, three[2].Name)
                && !three.Any(trunk => hidden.Contains(trunk.Name))
                && !(even.Contains(Row(three.Select(trunk => trunk.Name))) && Row(three.Select(trunk => trunk.Name)).Split(' ') is [var one, var two, var other] && !Meet(one, two, other));
        }));
        yield return ("hidden-trunk", hidden.Count);
        yield return ("twin-diameters", Twins.Find(standing, trunk => trunk.Diameter?.Value, 8).Length);
        yield return ("twin-heights", Twins.Find(standing, trunk => trunk.Height?.Value, 8).Length);
        var outOfOrder = SizeOrder.Find(standing, 8, 8, index => HasForm(index, Form.Stout), index => HasForm(index, Form.Slender));
        yield return ("wide-but-short", outOfOrder.Count(trunk => trunk.IsWide));
        yield return ("thin-but-tall", outOfOrder.Count(trunk => !trunk.IsWide));
        if (assessment.Planting.Container is { } container)
        {
            var rooms = standing.Trunks.Select(trunk => RimRoom.Of(ContainerOutline.Of(container), trunk)).ToList();
            yield return ("off-container", rooms.Count(room => room < Length.Zero));
            yield return ("near-rim", rooms.Count(room => room >= Length.Zero && room < Length.FromMillimetres(10)));
        }

        bool Meet(string one, string two, string other) => touching.Contains(Row([one, two])) || touching.Contains(Row([one, other])) || touching.Contains(Row([two, other]));

        bool HasForm(int index, Form form) => assessment.Planting.RoleOf(standing.Trunks[index].Trunk)?.Form?.Value == form;
    }

    private static List<Finding> Told(Assessment assessment, params string[] checks)
    {
        Assert.DoesNotContain(assessment.Findings, finding => finding.Check.Name is "broken-check" or "not-understood");
        return [.. assessment.Findings.Where(finding => checks.Contains(finding.Check.Name))];
    }

    private static PlantingState ByName(Assessment assessment) => assessment.State with { Trunks = [.. assessment.State.Trunks.OrderBy(trunk => trunk.Name, StringComparer.Ordinal)] };

    private static HashSet<string> Touching(PlantingState state)
    {
        var standing = StandingTrunks.Of(state);
        return [.. Contacts.Find(standing, state.Planting.EffectiveHabit == Habit.Clump).Select(contact => Row([standing.Trunks[contact.Thinner].Name, standing.Trunks[contact.Thicker].Name]))];
    }

    private static HashSet<string> Even(PlantingState state)
    {
        var standing = StandingTrunks.Of(state);
        return [.. EvenGaps.Find(standing, 8).Select(gap => Row([standing.Trunks[gap.Trunk].Name, standing.Trunks[gap.Near].Name, standing.Trunks[gap.Far].Name]))];
    }

    private static HashSet<string> Hidden(PlantingState state) =>
        [.. FrontView.Of(state).Trunks.Where(trunk => trunk.Hidden is { } hidden && hidden.Percent >= 70).Select(trunk => trunk.Name)];

    private static IEnumerable<string> Pairs(Finding finding) =>
        [Row([finding.Trunks[0], finding.Trunks[1]]), Row([finding.Trunks[0], finding.Trunks[2]]), Row([finding.Trunks[1], finding.Trunks[2]])];

    private static string Row(IEnumerable<string> names) => string.Join(' ', names.Order(StringComparer.Ordinal));
}
