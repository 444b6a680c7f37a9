using GroveSpec.Checks;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Trunks;
using Xunit;
using static GroveSpec.Drawing.Tests.Front.FrontPlantings;

namespace GroveSpec.Drawing.Tests.Front;

public sealed class FrontPlateTests
{
    private static string Draw(Planting planting, params Finding[] findings) => FrontPlate.Draw(Subject(planting, findings), DrawingOptions.Default);

    [Fact]
    public void The_same_planting_gives_the_same_bytes()
    {
        Assert.Equal(Draw(SaltBank()), Draw(SaltBank()));
    }

    [Fact]
    public void Labels_never_overlap_or_leave_the_page()
    {
        for (var seed = 1; seed <= 200; seed++)
        {
            var (count, letters) = (3 + (seed % 58), seed % 3 == 0 ? 20 : seed % 3 == 1 ? 1 : 2 + (seed % 12));
            AssertLabelsAreFree(new PlateReader(Draw(Thrown(seed, count, Math.Max(letters, letters == 1 ? 1 : 2)))), $"seed {seed}, {count} trunks, {letters} letters");
        }
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(3, 20)]
    [InlineData(60, 20)]
    [InlineData(120, 20)]
    [InlineData(121, 8)]
    public void Labels_are_free_at_the_ends_of_the_range(int count, int letters)
    {
        AssertLabelsAreFree(new PlateReader(Draw(Thrown(count, count, letters))), $"{count} trunks, {letters} letters");
    }

    [Fact]
    public void Leaders_never_cross_nor_run_through_a_name()
    {
        for (var seed = 1; seed <= 60; seed++)
        {
            var plate = new PlateReader(Draw(Thrown(seed, 3 + (seed % 58), seed % 2 == 0 ? 20 : 5)));
            var pieces = PlateReader.Pieces(plate.Of("gs-thread").Single().Attribute("d")!.Value);
            Assert.NotEmpty(pieces);
            var names = plate.Labels.Where(label => label.Class is "gs-name" or "gs-other-name").ToList();
            foreach (var piece in pieces)
            {
                Assert.All(names, name => Assert.True(
                    name.Box.Grown(-1).LengthInside(piece.FromX, piece.FromY, piece.ToX, piece.ToY) <= 0, $"seed {seed}: a leader runs through {name.Text}"));
            }

            for (var one = 0; one < pieces.Count; one++)
            {
                for (var other = one + 1; other < pieces.Count; other++)
                {
                    Assert.False(Cross(pieces[one], pieces[other]), $"seed {seed}: leaders cross");
                }
            }
        }
    }

    [Fact]
    public void Every_trunk_carries_its_origin()
    {
        var plate = new PlateReader(Draw(SaltBank()));

        Assert.Equal(
            ["trunk:A", "trunk:B", "trunk:C", "trunk:D", "trunk:E", "trunk:F", "trunk:G"],
            plate.Of("gs-tree").Select(tree => tree.Attribute("data-origin")!.Value).Order(StringComparer.Ordinal));
        Assert.Equal("head:container", plate.Of("gs-container").Single().Attribute("data-origin")!.Value);
    }

    [Fact]
    public void Nearer_trunks_are_drawn_later_and_darker()
    {
        var trees = new PlateReader(Draw(SaltBank())).Of("gs-tree")
            .Where(tree => tree.Attribute("class")!.Value.Contains("gs-far", StringComparison.Ordinal))
            .Select(tree => (tree.Attribute("data-origin")!.Value, tree.Attribute("class")!.Value[^1]))
            .ToList();

        Assert.Equal(["trunk:D", "trunk:C", "trunk:B", "trunk:E", "trunk:A"], trees.Select(tree => tree.Value));
        Assert.Equal(trees.Select(tree => tree.Item2).OrderDescending(), trees.Select(tree => tree.Item2));
        Assert.Equal('0', trees[^1].Item2);
    }

    [Fact]
    public void Planned_and_removed_trunks_have_marks_of_their_own_and_a_key()
    {
        var plate = new PlateReader(Draw(SaltBank()));

        Assert.Equal("trunk:G", plate.Of("gs-tree-planned").Single().Attribute("data-origin")!.Value);
        Assert.Equal("trunk:F", plate.Of("gs-tree-removed").Single().Attribute("data-origin")!.Value);
        Assert.Contains(plate.Labels, label => label.Text == "A thin broken outline is planned. A low stump was taken out.");
    }

    [Fact]
    public void What_is_hidden_is_drawn_broken_on_request()
    {
        var planting = SaltBank() with { Trunks = [Trunk("back", 0, 60, 12, 200), Trunk("front", 0, -60, 30, 260)] };
        var plate = new PlateReader(FrontPlate.Draw(Subject(planting), DrawingOptions.Default with { ShowHidden = true }));

        Assert.Single(plate.Of("gs-hidden"));
        Assert.Empty(new PlateReader(Draw(planting)).Of("gs-hidden"));
        Assert.Single(new PlateReader(Draw(planting, Finding("hidden-trunk", "back is hidden.", ["back", "front"], new Figure.Ring("back")))).Of("gs-hidden"));
    }

    [Fact]
    public void Findings_about_the_view_keep_the_number_they_have_in_the_list()
    {
        var plate = new PlateReader(Draw(
            SaltBank(),
            Finding("three-in-line", "A, B and C stand in line.", ["A", "B", "C"], new Figure.Rod(default, default)),
            Finding("even-gaps-in-view", "Two gaps look the same.", ["B", "C", "D"], new Figure.GapInView("D", "B"), new Figure.GapInView("B", "C")),
            Finding("level-tops", "Three tops stand in a line.", ["A", "D", "E"], new Figure.Tops("A", "E")),
            Finding("hidden-trunk", "D stands behind B.", ["D"], new Figure.Ring("D")),
            Finding("centred-main", "B stands in the middle.", ["B"], new Figure.Ring("B"))));
        var numbers = plate.Labels.Where(label => label.Class == "gs-mark-number").Select(label => label.Text).ToList();

        // Each once at its place and once in the key; the line in the plan is the plan's alone.
        Assert.Equal(["2", "2", "3", "3", "4", "4", "5", "5"], numbers.Order(StringComparer.Ordinal));
        Assert.DoesNotContain(plate.Labels, label => label.Text.Contains("in line.", StringComparison.Ordinal));
        Assert.Equal(4, plate.Of("gs-finding").Count());
        AssertLabelsAreFree(plate, "five findings");
    }

    [Fact]
    public void A_finding_about_a_trunk_that_is_not_drawn_is_still_told()
    {
        var plate = new PlateReader(Draw(SaltBank(), Finding("hidden-trunk", "Z stands behind B.", ["Z"], new Figure.Ring("Z"))));

        Assert.Single(plate.Labels, label => label.Class == "gs-mark-number");
        Assert.Single(plate.Labels, label => label.Text == "Z stands behind B.");
    }

    [Fact]
    public void Without_standing_trunks_the_container_and_a_sentence_remain()
    {
        var plate = new PlateReader(Draw(SaltBank() with { Trunks = [] }));

        Assert.Single(plate.Of("gs-container"));
        Assert.Contains(plate.Labels, label => label.Text == "No trunk stands yet on this day.");
    }

    [Fact]
    public void Nothing_at_all_is_still_a_plate()
    {
        var plate = new PlateReader(Draw(new Planting()));

        Assert.Empty(plate.Of("gs-container"));
        Assert.Contains(plate.Labels, label => label.Text == "Planting without a name");
    }

    [Fact]
    public void Unknown_sizes_are_assumed_and_said_so()
    {
        var plate = new PlateReader(Draw(SaltBank() with { Trunks = [Trunk("A", 0, 0, 30, null), Trunk("B", 60, 0, null, 200), Trunk("C", -60, 0, null, null)] }));

        Assert.Equal(3, plate.Of("gs-tree").Count());
        Assert.Contains(plate.Labels, label => label.Text == "Height not known, drawn from the diameter: A");
        Assert.Contains(plate.Labels, label => label.Text == "Diameter not known, drawn from the height: B");
        Assert.Contains(plate.Labels, label => label.Text == "Neither height nor diameter known, drawn at a usual size: C");
    }

    [Fact]
    public void Trunks_behind_the_eye_are_named()
    {
        var plate = new PlateReader(Draw(SaltBank() with { Trunks = [Trunk("A", 0, 0, 30, 200), Trunk("far", 0, -5000, 30, 200)] }));

        Assert.Contains(plate.Labels, label => label.Text == "Beside or behind the eye, not seen: far");
    }

    [Theory]
    [InlineData(0.2, 0.1, 0.5)]
    [InlineData(400_000, 9_000, 60_000)]
    [InlineData(20, 900, 4000)]
    [InlineData(900, 20, 30)]
    public void A_planting_of_any_size_fits_the_page(double apart, double diameter, double height)
    {
        var planting = new Planting { Trunks = [Trunk("A", -apart, 0, diameter, height), Trunk("B", apart / 2, apart / 3, diameter, height * 0.8)] };
        var plate = new PlateReader(Draw(planting));

        AssertLabelsAreFree(plate, $"{apart} mm apart");
        foreach (var trunk in plate.Of("gs-bole"))
        {
            var numbers = trunk.Attribute("d")!.Value[1..].Split(['c', 'l'], 2)[0].Replace("-", " -", StringComparison.Ordinal).Split(' ', StringSplitOptions.RemoveEmptyEntries);
            Assert.InRange(double.Parse(numbers[0]), 0, plate.Page.Right);
            Assert.InRange(double.Parse(numbers[1]), 0, plate.Page.Bottom);
        }
    }

    [Fact]
    public void A_trunk_that_lies_almost_level_or_runs_past_the_eye_is_drawn()
    {
        var leaning = Trunk("A", 0, 0, 30, 200) with { Lean = new Stated<Lean>(new Lean(new Angle(89.9), new Bearing(180)), Origin.Default) };
        var plate = new PlateReader(Draw(SaltBank() with { Trunks = [leaning, Trunk("B", 40, 0, 20, 150)] }));

        AssertLabelsAreFree(plate, "lying");
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("--><svg onload=\"x\">")]
    [InlineData("]]>&#x0;\u0000\u0007\r\n")]
    [InlineData("\u202Ereversed")]
    [InlineData("\uD800")]
    public void Text_from_the_file_stays_text(string hostile)
    {
        var planting = SaltBank() with
        {
            Name = new Stated<string>(hostile, new Origin(hostile)),
            Trunks = [Trunk(hostile, 0, 0, 30, 200), Trunk(hostile + "2", 40, 0, 30, 200)],
        };
        var plate = new PlateReader(Draw(planting, Finding("hidden-trunk", hostile, [hostile], new Figure.Ring(hostile))));

        Assert.DoesNotContain(plate.Root.Descendants(), element => element.Name.LocalName == "script");
        Assert.Single(plate.Root.DescendantsAndSelf(), element => element.Name.LocalName == "svg");
        Assert.DoesNotContain(plate.Root.DescendantsAndSelf().SelectMany(element => element.Attributes()), attribute => attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
        AssertLabelsAreFree(plate, "hostile");
    }

    [Fact]
    public void A_name_of_ten_thousand_letters_is_cut_short_and_kept_whole_for_a_pointer_to_rest_on()
    {
        var name = new string('w', 1900);
        var plate = new PlateReader(Draw(SaltBank() with { Trunks = [Trunk(name, 0, 0, 30, 200), Trunk(new string('m', 10_000), 50, 0, 30, 200)] }));

        AssertLabelsAreFree(plate, "long names");
        Assert.Contains(name, plate.Of("gs-name").Select(element => element.Value).Single(value => value.StartsWith('w')), StringComparison.Ordinal);
    }

    [Fact]
    public void It_says_what_it_shows_to_those_who_do_not_see_it()
    {
        var plate = new PlateReader(Draw(SaltBank()));
        var (title, description) = (plate.Root.Elements().First(), plate.Root.Elements().ElementAt(1));

        Assert.Equal(("title", "Salt Bank, from the front"), (title.Name.LocalName, title.Value));
        Assert.Equal("desc", description.Name.LocalName);
        Assert.Contains("5 trunks are seen from the front, 1.1 m away, eye at 160 mm. From left to right: A, 33 mm thick, 260 mm tall; D,", description.Value, StringComparison.Ordinal);
        Assert.Contains("Planned: G. Taken out: F.", description.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Inches_are_written_on_request()
    {
        var plate = new PlateReader(FrontPlate.Draw(Subject(SaltBank()), DrawingOptions.Default with { Units = UnitSystem.Inch }));

        Assert.Contains(plate.Labels, label => label.Text.EndsWith("heights in inches, measured at the plan’s origin", StringComparison.Ordinal));
        Assert.Contains(plate.Labels, label => label is { Text: "15", Class: "gs-number" });
    }

    [Fact]
    public void Heights_are_true_in_the_picture_plane()
    {
        var planting = SaltBank() with { Trunks = [Trunk("A", 0, 0, 20, 400)], Viewed = null };
        var plate = new PlateReader(Draw(planting));
        var levels = plate.Labels.Where(label => label.Class == "gs-number").ToDictionary(label => label.Text, label => label.Box.Bottom);
        var pieces = plate.Of("gs-bole").Single().Attribute("d")!.Value;

        // The trunk's outline begins at its base on the left, which stands on the scale's nought.
        var foot = double.Parse(pieces[1..pieces.IndexOf('c', StringComparison.Ordinal)].Split(' ')[1]);
        Assert.Equal(levels["0"] - (13 * TextMetrics.Descent) - (13 * 0.33), foot, 0.1);
    }

    [Fact]
    public void A_thousand_trunks_stay_small()
    {
        var svg = Draw(Thrown(1000, 1000, 4));

        Assert.InRange(svg.Length, 1000, 400_000);
        Assert.Contains("their names are left out", svg, StringComparison.Ordinal);
    }

    private static void AssertLabelsAreFree(PlateReader plate, string which)
    {
        var labels = plate.Labels.ToList();
        Assert.NotEmpty(labels);
        for (var one = 0; one < labels.Count; one++)
        {
            Assert.True(plate.Page.Holds(labels[one].Box), $"{which}: “{labels[one].Text}” leaves the page");
            for (var other = one + 1; other < labels.Count; other++)
            {
                Assert.False(labels[one].Box.Overlaps(labels[other].Box), $"{which}: “{labels[one].Text}” meets “{labels[other].Text}”");
            }
        }
    }

    private static bool Cross((double FromX, double FromY, double ToX, double ToY) one, (double FromX, double FromY, double ToX, double ToY) other)
    {
        double Side((double FromX, double FromY, double ToX, double ToY) line, double x, double y) =>
            ((line.ToX - line.FromX) * (y - line.FromY)) - ((line.ToY - line.FromY) * (x - line.FromX));
        return Side(one, other.FromX, other.FromY) * Side(one, other.ToX, other.ToY) < -1e-6
            && Side(other, one.FromX, one.FromY) * Side(other, one.ToX, one.ToY) < -1e-6;
    }
}
