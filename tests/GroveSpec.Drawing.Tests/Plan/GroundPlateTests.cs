using System.Xml.Linq;
using GroveSpec.Checks;
using GroveSpec.Checks.Ground;
using GroveSpec.Drawing.Scene;
using GroveSpec.Drawing.Tests.Front;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;
using GroveSpec.Syntax.Text;
using Xunit;

namespace GroveSpec.Drawing.Tests.Plan;

public sealed class GroundPlateTests
{
    [Fact]
    public void No_two_labels_overlap_and_every_spot_has_its_number()
    {
        for (var seed = 1; seed <= 24; seed++)
        {
            var subject = Plantings.Scattered(3 + (seed % 30), seed, 1 + (seed % 12), hasFindings: false);
            var (answer, svg) = Draw(subject.State, 6 + seed);
            var reader = new PlateReader(svg);
            var labels = reader.Labels.ToArray();
            for (var i = 0; i < labels.Length; i++)
            {
                Assert.True(reader.Page.Grown(0.1).Holds(labels[i].Box), $"seed {seed}: {labels[i].Text} leaves the page");
                for (var j = 0; j < i; j++)
                {
                    Assert.False(labels[i].Box.Grown(-0.1).Overlaps(labels[j].Box), $"seed {seed}: {labels[i].Text} and {labels[j].Text} overlap");
                }
            }

            // Each number stands beside its spot and in the key.
            Assert.Equal(2 * answer.Spots.Length, labels.Count(label => label.Class == "gs-spot-mark-number"));
        }
    }

    [Fact]
    public void The_free_ground_is_one_path_and_hatched_within_it()
    {
        var (answer, svg) = Draw(Plantings.Scattered(5, 3, hasFindings: false).State, 40);
        var paths = XDocument.Parse(svg).Descendants().Where(element => (string?)element.Attribute("class") == "gs-free").ToArray();
        Assert.Equal(answer.Outline.Length, ((string)Assert.Single(paths).Attribute("d")!).Count(letter => letter is 'M' or 'm'));
        Assert.Contains("class=\"gs-free-hatch\"", svg, StringComparison.Ordinal);
        Assert.Equal(svg, Draw(Plantings.Scattered(5, 3, hasFindings: false).State, 40).Svg);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void The_page_holds_all_the_ground_and_the_rings_of_its_spots(bool hasContainer)
    {
        var state = Plantings.Scattered(3, 3, hasFindings: false).State;
        var (answer, svg) = Draw(hasContainer ? state : state with { Planting = state.Planting with { Container = null } }, 12);
        var reader = new PlateReader(svg);
        var elements = XDocument.Parse(svg).Descendants().ToArray();
        var rings = elements.Where(element => (string?)element.Attribute("class") == "gs-room")
            .Select(ring => Box.About(Number(ring, "cx"), Number(ring, "cy"), 2 * Number(ring, "r"), 2 * Number(ring, "r"))).ToArray();
        Assert.Equal(hasContainer, answer.WholeArea is not null);
        Assert.NotEmpty(rings);
        Assert.All(rings, ring => Assert.True(reader.Page.Holds(ring)));

        // The rings tell the scale, and by it the ground is no wider than the page.
        var scale = rings.Max(ring => ring.Width) / (2 * (answer.Spots.Max(spot => spot.Room).Millimetres + 6));
        var places = answer.Outline.SelectMany(ring => ring).ToArray();
        Assert.True((places.Max(place => place.X) - places.Min(place => place.X)).Millimetres * scale <= reader.Page.Width);
    }

    [Theory]
    [InlineData(5)]
    [InlineData(12)]
    [InlineData(32)]
    public void A_trunk_that_ground_is_looked_for_has_a_broken_ring_and_its_name_where_it_stands_now(int count)
    {
        var state = Plantings.Scattered(count, 3, hasFindings: false).State;
        var trunk = state.Trunks[^1];
        var reader = new PlateReader(GroundPlate.Draw(state, AnswerOf(state, trunk.Name), DrawingOptions.Default));

        var ring = Assert.Single(reader.Of("gs-was"));
        Assert.Equal(trunk.Trunk.Origin.Id, (string?)ring.Attribute("data-origin"));
        var place = new PlateReader(PlanPlate.Draw(new DrawingSubject(state, []), DrawingOptions.Default)).Labels.Single(label => label.Text == trunk.Name).Box;
        Assert.InRange(Number(ring, "cx"), place.Left - 60, place.Right + 60);
        var label = Assert.Single(reader.Labels, label => label.Text == $"{trunk.Name}, now");
        Assert.All(reader.Labels.Where(other => other.Text != label.Text), other => Assert.False(other.Box.Grown(-0.1).Overlaps(label.Box), other.Text));
        Assert.Contains($"The broken ring is where {trunk.Name} stands now.", Told(reader), StringComparison.Ordinal);
    }

    [Fact]
    public void A_planned_trunk_is_marked_as_planned_and_one_more_trunk_has_no_place_yet()
    {
        var state = Plantings.SaltBank().State;
        var reader = new PlateReader(GroundPlate.Draw(state, AnswerOf(state, "G"), DrawingOptions.Default));
        Assert.Single(reader.Of("gs-was"));
        Assert.Single(reader.Labels, label => label.Text == "G, planned");
        Assert.Contains("The broken ring is where G is planned.", Told(reader), StringComparison.Ordinal);
        Assert.Empty(new PlateReader(Draw(state, 12).Svg).Of("gs-was"));
    }

    [Fact]
    public void Each_circle_and_strip_that_bounds_a_spot_is_told_below_the_plan_and_only_where_one_is_drawn()
    {
        var (circles, strips, without) = (0, 0, 0);
        for (var seed = 1; seed <= 24; seed++)
        {
            var reader = new PlateReader(Draw(Plantings.Scattered(3 + (seed % 10), seed, hasFindings: false).State, 6 + seed).Svg);
            var told = Told(reader);
            var (circle, strip) = (reader.Of("gs-ring").Any(), reader.Of("gs-strip").Any());
            Assert.Equal(circle, told.Contains("even gaps begin", StringComparison.Ordinal));
            Assert.Equal(strip, told.Contains("thin broken lines", StringComparison.Ordinal));
            circles += circle ? 1 : 0;
            strips += strip ? 1 : 0;
            without += circle || strip ? 0 : 1;
        }

        Assert.True(circles > 0 && strips > 0 && without > 0, $"{circles} plates with circles, {strips} with strips, {without} with neither");
    }

    private static string Told(PlateReader reader) => string.Join(' ', reader.Labels.Where(label => label.Class == "gs-remark").Select(label => label.Text));

    private static double Number(XElement element, string name) => double.Parse((string)element.Attribute(name)!, System.Globalization.CultureInfo.InvariantCulture);

    private static GroundAnswer AnswerOf(PlantingState state, string name)
    {
        var context = new CheckContext(state.Planting, state, new NoOrigins(), UnitSystem.Metric);
        var answer = FreeGround.Find(context, new(null, null, name), cancellation: TestContext.Current.CancellationToken);
        Assert.Null(answer.Obstacle);
        return answer;
    }

    private static (GroundAnswer Answer, string Svg) Draw(PlantingState state, double diameter)
    {
        var context = new CheckContext(state.Planting, state, new NoOrigins(), UnitSystem.Metric);
        var answer = FreeGround.Find(context, new(Length.FromMillimetres(diameter), null, null), cancellation: TestContext.Current.CancellationToken);
        Assert.Null(answer.Obstacle);
        return (answer, GroundPlate.Draw(state, answer, DrawingOptions.Default));
    }

    private sealed class NoOrigins : IOriginTable
    {
        public SourceSpan Locate(Origin origin) => new("", new TextSpan(0, 0));

        public SourceSpan StatementOf(Origin origin) => Locate(origin);

        public TextEdit WriteBehind(Origin origin, params ReadOnlySpan<string> lines) => new(Locate(origin), string.Join('\n', lines!));
    }
}
