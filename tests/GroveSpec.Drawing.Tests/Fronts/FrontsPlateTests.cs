using System.Globalization;
using System.Text;
using System.Xml.Linq;
using GroveSpec.Binding;
using GroveSpec.Binding.Use;
using GroveSpec.Checks.Fronts;
using GroveSpec.Drawing.Tests.Front;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;
using Xunit;

namespace GroveSpec.Drawing.Tests.Fronts;

public sealed class FrontsPlateTests
{
    private static (Assessment Planting, FrontsAnswer Answer) Found(int seed, int count)
    {
        var random = new Random(seed);
        var text = new StringBuilder($"planting \"Turned {seed}\"\nhabit group\n");
        text.AppendLine((seed % 4) switch { 0 => "container oval 460 x 300 x 40 mm", 1 => "container rectangle 420 x 260 x 40 mm", 2 => "container round 400 x 40 mm", _ => "" });
        text.AppendLine(CultureInfo.InvariantCulture, $"viewed from {random.Next(360)} deg, at 1200 mm, eye 200 mm, near");
        for (var place = 0; place < count; place++)
        {
            var name = seed % 3 == 0 ? $"Trunk-with-a-long-name-{place}" : $"T{place}";
            text.AppendLine(CultureInfo.InvariantCulture, $"trunk {name} at {random.Next(-170, 170)}, {random.Next(-100, 100)} mm diameter {random.Next(6, 40)} mm height {random.Next(80, 420)} mm");
        }

        var assessment = Assessment.Of("test.grove", SourceText.FromText(text.ToString()), new NoFiles(), null, UnitSystem.Metric);
        return (assessment, BestFronts.Find(assessment.ToContext(), assessment.Tree, TestContext.Current.CancellationToken));
    }

    private static string Draw(int seed, int count)
    {
        var (planting, answer) = Found(seed, count);
        return FrontsPlate.Draw(planting.State, answer, DrawingOptions.Default);
    }

    [Fact]
    public void The_same_planting_gives_the_same_bytes() => Assert.Equal(Draw(1, 7), Draw(1, 7));

    [Fact]
    public void Where_not_all_names_fit_those_that_the_text_names_are_written()
    {
        var (planting, answer) = Found(2, 24);
        var first = answer.Suggestions[0];
        var panel = XDocument.Parse(FrontsPlate.Draw(planting.State, answer, DrawingOptions.Default)).Descendants().First(element => (string?)element.Attribute("class") == "gs-panel");
        var written = panel.Descendants().Where(element => (string?)element.Attribute("class") == "gs-name").Select(text => text.Value).ToList();
        Assert.NotEmpty(written);
        Assert.True(written.Count < 24);
        Assert.Subset(first.Named.ToHashSet(StringComparer.Ordinal), written.ToHashSet(StringComparer.Ordinal));
        Assert.Contains(first.Named[0], written);
    }

    [Theory]
    [InlineData(5)]
    [InlineData(12)]
    [InlineData(34)]
    public void What_a_front_loses_is_told_whole_and_the_small_print_says_where_only_some_trunks_are_named(int count)
    {
        var (planting, answer) = Found(2, count);
        var plate = new PlateReader(FrontsPlate.Draw(planting.State, answer, DrawingOptions.Default));
        var told = string.Join(' ', plate.Labels.Where(label => label.Class == "gs-remark").Select(label => label.Text));
        Assert.DoesNotContain("…", told, StringComparison.Ordinal);
        Assert.All(answer.Suggestions.Where(suggestion => suggestion.Front.Found > 0), suggestion => Assert.Contains($"loses {suggestion.Front.Kinds}", told, StringComparison.Ordinal));
        Assert.DoesNotContain(plate.Labels, label => label.Text.StartsWith("times", StringComparison.Ordinal));
        var panels = plate.Of("gs-panel").Select(panel => panel.Descendants().Count(element => (string?)element.Attribute("class") == "gs-name")).ToArray();
        Assert.Equal(panels.Any(names => names < count), told.Contains("Where there is no room for all names", StringComparison.Ordinal));
    }

    [Fact]
    public void Labels_never_overlap_nor_leave_the_page_and_are_large_enough_to_read()
    {
        for (var seed = 0; seed < 24; seed++)
        {
            var drawn = Draw(seed, 2 + (seed * 5 % 34));
            var labels = new PlateReader(drawn).Labels.ToList();
            var page = XDocument.Parse(drawn).Root!;
            var (width, height) = ((double)page.Attribute("width")!, (double)page.Attribute("height")!);
            Assert.All(page.Descendants().Where(element => element.Name.LocalName == "text"), text => Assert.True((double)text.Attribute("font-size")! >= 11));
            for (var one = 0; one < labels.Count; one++)
            {
                Assert.True(labels[one].Box is { Left: >= 0, Top: >= 0 } box && box.Right <= width && box.Bottom <= height, $"seed {seed}: {labels[one].Text} leaves the page");
                for (var other = one + 1; other < labels.Count; other++)
                {
                    Assert.False(labels[one].Box.Grown(-0.1).Overlaps(labels[other].Box), $"seed {seed}: “{labels[one].Text}” meets “{labels[other].Text}”");
                }
            }
        }
    }

    [Fact]
    public void Each_front_and_the_one_it_has_now_is_drawn_and_marked_on_the_dial()
    {
        var (planting, answer) = Found(5, 6);
        var plate = new PlateReader(FrontsPlate.Draw(planting.State, answer, DrawingOptions.Default));
        Assert.Equal(answer.Suggestions.Length + 1, plate.Of("gs-panel").Count());
        Assert.Equal(answer.Suggestions.Length, plate.Of("gs-ray").Count());
        Assert.Single(plate.Of("gs-ray-now"));

        // Each once beside its front, once on the dial and once in the key.
        Assert.Equal(answer.Suggestions.Length * 3, plate.Of("gs-front-mark").Count());
    }
}
