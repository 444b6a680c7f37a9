using System.Text.RegularExpressions;
using GroveSpec.Checks.Fronts;
using Xunit;

namespace GroveSpec.Checks.Tests.Fronts;

/// <summary>What is said of fronts.</summary>
public sealed class FrontSentencesTests
{
    /// <summary>Three in a row square to the view from 180 deg, from where on their order of depth turns.</summary>
    private const string Row = """
        planting "Fixed"
        habit group
        container oval 600 x 400 x 40 mm
        viewed from 180 deg, at 1200 mm, eye 160 mm, near
        trunk A at -100, 0 mm diameter 30 mm height 300 mm
        trunk B at 0, 0 mm diameter 20 mm height 200 mm
        trunk C at 100, 0 mm diameter 15 mm height 150 mm

        """;

    [Fact]
    public void At_the_end_of_its_span_a_front_may_not_be_stepped_from_that_way() =>
        Assert.Equal("It holds from 180 deg to 249.96 deg: the viewer may step 70 deg clockwise, but not at all the other way, before more is found.", Find(Row).NowHolds);

    [Fact]
    public void No_step_is_longer_than_the_span_that_it_is_taken_in()
    {
        for (var seed = 0; seed < 40; seed++)
        {
            foreach (var holds in Holds(Find(FrontSource.Of(seed, 3 + (seed % 5)))))
            {
                var said = Regex.Match(holds, @"from ([\d.]+) deg to ([\d.]+) deg: the viewer may step (?:([\d.]+) deg|not at all) clockwise");
                if (said.Success)
                {
                    var width = (Number(said.Groups[2]) - Number(said.Groups[1]) + 360) % 360;
                    Assert.All(Regex.Matches(holds[holds.IndexOf("step", StringComparison.Ordinal)..], @"([\d.]+) deg").Select(step => Number(step.Groups[1])), step => Assert.InRange(step, 0, width + 0.1));
                }
            }
        }
    }

    [Fact]
    public void The_front_it_has_now_is_not_compared_with_itself()
    {
        for (var seed = 0; seed < 40; seed++)
        {
            var source = FrontSource.Of(seed, 3 + (seed % 5));
            var first = Find(source).Suggestions[0].Front;
            var assessment = Check.Of(source);
            var answer = BestFronts.Find(BestFronts.Turned(assessment.ToContext(), first.From), assessment.Tree, TestContext.Current.CancellationToken);
            var own = Assert.Single(answer.Suggestions, suggestion => suggestion.Front.From == first.From);
            Assert.Contains(first.Found == 0 ? "find nothing, as now; " : $"find {first.Found} ({first.Kinds}), and it is the front it has now; ", own.Why, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Every_trunk_that_the_sentences_name_is_listed()
    {
        for (var seed = 0; seed < 40; seed++)
        {
            var source = FrontSource.Of(seed, 5 + (seed % 9));
            var names = Check.Of(source).Planting.Trunks.Select(trunk => trunk.Name).ToList();
            foreach (var suggestion in Find(source).Suggestions)
            {
                var told = $"{suggestion.Why} {string.Join(' ', suggestion.Front.Findings.SelectMany(finding => finding.Trunks))}";
                Assert.Equal(names.Where(name => Regex.IsMatch(told, $@"\b{Regex.Escape(name)}\b")).Order(StringComparer.Ordinal), suggestion.Named.Order(StringComparer.Ordinal));
            }
        }
    }

    [Fact]
    public void What_is_covered_wholly_is_not_said_to_be_covered_in_part()
    {
        var told = Enumerable.Range(0, 60)
            .SelectMany(seed => Find($"{FrontSource.Of(seed, 4 + (seed % 9))}mute hidden-trunk because \"dense on purpose\"\n").Suggestions.Select(suggestion => suggestion.Why))
            .ToList();
        Assert.All(told, why => Assert.DoesNotContain("100 % of it", why, StringComparison.Ordinal));
        Assert.Contains(told, why => Regex.IsMatch(why, @"trunks are covered, \w+ (and \d more )?wholly|only \w+ is covered, all of it"));
    }

    private static double Number(Group group) => double.Parse(group.Value, System.Globalization.CultureInfo.InvariantCulture);

    private static IEnumerable<string> Holds(FrontsAnswer answer) => answer.Suggestions.Select(suggestion => suggestion.Holds).Append(answer.NowHolds);

    private static FrontsAnswer Find(string source)
    {
        var assessment = Check.Of(source);
        return BestFronts.Find(assessment.ToContext(), assessment.Tree, TestContext.Current.CancellationToken);
    }
}
