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

        static double Number(XElement element, string name) => double.Parse((string)element.Attribute(name)!, System.Globalization.CultureInfo.InvariantCulture);
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
