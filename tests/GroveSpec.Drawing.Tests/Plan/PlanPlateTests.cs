using System.Globalization;
using System.Xml.Linq;
using GroveSpec.Checks;
using GroveSpec.Drawing.Tests.Front;
using GroveSpec.Model;
using GroveSpec.Model.Containers;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Trunks;
using GroveSpec.Model.Views;
using Xunit;

namespace GroveSpec.Drawing.Tests.Plan;

public sealed class PlanPlateTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static string Draw(DrawingSubject subject, DrawingOptions? options = null) => PlanPlate.Draw(subject, options ?? DrawingOptions.Default);

    private static string Draw(params Trunk[] trunks) =>
        Draw(new DrawingSubject(new Planting { Name = new("Three", Origin.Default), Trunks = [.. trunks] }.StateOn(null), []));

    [Fact]
    public void The_line_to_the_tip_of_a_leaning_trunk_is_explained_where_one_is_drawn()
    {
        const string Told = "A line to a small open circle runs from the foot of a leaning trunk to its tip.";
        Assert.Contains(Told, SmallPrint(new PlateReader(Draw(Plantings.SaltBank()))), StringComparison.Ordinal);
        Assert.DoesNotContain(Told, SmallPrint(new PlateReader(Draw(Plantings.Trunk("A", 0, 0, 20, 200)))), StringComparison.Ordinal);
    }

    private static string SmallPrint(PlateReader reader) => string.Join(' ', reader.Labels.Where(label => label.Class == "gs-remark").Select(label => label.Text));

    [Fact]
    public void A_finding_is_told_whole_however_many_lines_it_takes()
    {
        var told = string.Join(' ', Enumerable.Range(1, 180).Select(word => $"word{word}"));
        var subject = Plantings.SaltBank();
        var svg = PlanPlate.Draw(subject with { Findings = [Plantings.Finding("touching", told, new Figure.Ring("A"))] }, DrawingOptions.Default);
        var reader = new PlateReader(svg);
        var lines = reader.Labels.Where(label => label.Class == "gs-key").ToArray();
        Assert.Equal(told, string.Join(' ', lines.Select(line => line.Text)));
        Assert.All(lines, line => Assert.True(reader.Page.Holds(line.Box)));
    }

    [Fact]
    public void The_same_planting_gives_the_same_bytes() => Assert.Equal(Draw(Plantings.SaltBank()), Draw(Plantings.SaltBank()));

    [Fact]
    public void No_two_labels_overlap_and_none_leaves_the_page()
    {
        for (var seed = 1; seed <= 200; seed++)
        {
            var (count, letters) = (3 + (seed % 58), seed % 3 == 0 ? 20 : 1 + (seed % 20));
            AssertLabelsAreFree(Draw(Plantings.Scattered(count, seed, letters), new DrawingOptions { ShowBearings = seed % 5 == 0 }), $"seed {seed}, {count} trunks, {letters} letters");
        }
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 20)]
    [InlineData(60, 20)]
    [InlineData(61, 20)]
    [InlineData(121, 8)]
    [InlineData(1001, 5)]
    public void Labels_are_free_at_the_ends_of_the_range(int count, int letters) =>
        AssertLabelsAreFree(Draw(Plantings.Scattered(count, count, letters, 900)), $"{count} trunks, {letters} letters");

    [Theory]
    [InlineData(3, 20)]
    [InlineData(30, 12)]
    [InlineData(60, 20)]
    public void Up_to_sixty_trunks_every_name_is_written(int count, int letters)
    {
        var subject = Plantings.Scattered(count, 7 * count, letters, 900);
        var names = new PlateReader(Draw(subject)).Labels.Where(label => label.Class == "gs-name").ToArray();
        Assert.Equal(subject.State.Trunks.Length, names.Length);
    }

    [Fact]
    public void Names_of_a_wood_thin_out()
    {
        var names = new PlateReader(Draw(Plantings.Scattered(300, 3, 5, 3000))).Labels.Count(label => label.Class == "gs-name");
        Assert.InRange(names, 0, 40);
    }

    [Fact]
    public void One_number_changed_changes_that_trunk_alone()
    {
        var before = Plantings.SaltBank();
        var planting = before.State.Planting with
        {
            Trunks = [.. before.State.Planting.Trunks.Select(trunk => trunk.Name == "E" ? trunk with { Diameter = new(Plantings.Millimetres(12.6), trunk.Diameter!.Value.Origin) } : trunk)],
        };
        var (old, changed) = (Draw(before).Split('\n'), Draw(before with { State = planting.StateOn(before.State.Date) }).Split('\n'));
        var gone = old.Except(changed).ToArray();
        Assert.InRange(gone.Length, 3, 16);
        Assert.DoesNotContain(gone, line => line.Contains("data-origin=\"trunk:", StringComparison.Ordinal) && !line.Contains("data-origin=\"trunk:E", StringComparison.Ordinal));
    }

    [Fact]
    public void A_trunk_keeps_its_bark_wherever_it_stands()
    {
        static string Bark(double x)
        {
            var path = XDocument.Parse(Draw(Plantings.Trunk("A", x, 0, 30, 300), Plantings.Trunk("L", -200, -100, 30, 300), Plantings.Trunk("R", 200, 100, 30, 300)))
                .Descendants(Svg + "g").First(group => group.Attribute("data-origin")?.Value == "trunk:A").Elements(Svg + "path")
                .First(element => element.Attribute("class")!.Value == "gs-bark").Attribute("d")!.Value;
            return path[path.IndexOf('c', StringComparison.Ordinal)..];
        }

        // Steps from point to point, read back and compared within the rounding of two neighbouring tenths.
        var (here, there) = (Steps(Bark(0)), Steps(Bark(50)));
        Assert.Equal(here.Length, there.Length);
        Assert.All(here.Zip(there), pair => Assert.InRange(Math.Abs(pair.First - pair.Second), 0, 0.21));
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("]]>")]
    [InlineData("--><svg onload=\"x()\">")]
    [InlineData("&#x0;")]
    [InlineData("a\0b\u0001\u001b[31m\uffff\ud800")]
    [InlineData("\u202egnp.exe\u2066")]
    [InlineData("عرعر")]
    public void Text_from_the_file_is_only_text(string name)
    {
        var trunk = Plantings.Trunk(name, 0, 0, 20, 200);
        var subject = new DrawingSubject(
            new Planting { Name = new(name, new Origin(name)), Species = new(name, new Origin(name)), Trunks = [trunk] }.StateOn(null),
            [Plantings.Finding("touching", name, new Figure.Ring(name))]);
        var svg = Draw(subject);
        var root = XDocument.Parse(svg).Root!;
        string[] known = ["svg", "title", "desc", "style", "rect", "g", "path", "circle", "text"];
        Assert.All(root.DescendantsAndSelf(), element => Assert.Contains(element.Name.LocalName, known));
        Assert.All(root.DescendantsAndSelf().Attributes(), attribute => Assert.False(attribute.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase)));
        Assert.DoesNotContain('\u202e', string.Concat(root.Descendants(Svg + "text").Select(text => text.Value)));
        AssertLabelsAreFree(svg, name);
    }

    [Fact]
    public void Ten_thousand_letters_and_five_thousand_marks_are_cut_to_fit()
    {
        foreach (var name in new[] { new string('W', 10_000), "e" + new string('\u0301', 5000), string.Concat(Enumerable.Repeat("🌲", 3000)) })
        {
            var subject = new DrawingSubject(new Planting { Name = new(name, Origin.Default), Trunks = [Plantings.Trunk(name, 0, 0, 20, 200)] }.StateOn(null), []);
            var svg = Draw(subject);
            AssertLabelsAreFree(svg, name[..3]);
            Assert.InRange(XDocument.Parse(svg).Descendants(Svg + "text").Max(text => string.Concat(text.Nodes().OfType<XText>()).Length), 1, 200);
        }
    }

    [Fact]
    public void A_plan_of_nine_trunks_is_under_forty_kilobytes()
    {
        for (var seed = 1; seed <= 12; seed++)
        {
            Assert.InRange(System.Text.Encoding.UTF8.GetByteCount(Draw(Plantings.Scattered(9, seed, 8))), 1, 40_000);
        }
    }

    [Theory]
    [InlineData(1000)]
    [InlineData(3000)]
    public void A_trunk_of_a_wood_takes_under_four_hundred_bytes(int count)
    {
        var bytes = System.Text.Encoding.UTF8.GetByteCount(Draw(Plantings.Scattered(count, 5, 6, 20_000)));
        Assert.InRange(bytes, 1, 400 * count);
    }

    [Fact]
    public void Numbers_have_two_decimals_at_most()
    {
        foreach (var attribute in XDocument.Parse(Draw(Plantings.SaltBank())).Descendants().Attributes().Where(a => a.Name.LocalName is "d" or "x" or "y" or "cx" or "cy" or "r" or "transform"))
        {
            var decimals = -1;
            foreach (var c in attribute.Value)
            {
                decimals = c == '.' ? 0 : char.IsAsciiDigit(c) && decimals >= 0 ? decimals + 1 : -1;
                Assert.True(decimals <= 2, attribute.Value);
            }
        }
    }

    [Fact]
    public void A_rod_is_broken_round_every_trunk_it_meets()
    {
        var reader = new PlateReader(Draw(Plantings.SaltBank()));
        var rod = reader.Root.Descendants(Svg + "g").First(group => group.Attribute("data-finding")?.Value == "1").Element(Svg + "path")!;
        var pieces = PlateReader.Pieces(rod.Attribute("d")!.Value);

        // Before A, from A to B, from B to C, past C.
        Assert.Equal(4, pieces.Count);
    }

    [Fact]
    public void Findings_keep_their_numbers_and_only_those_that_show_are_in_the_key()
    {
        var subject = Plantings.SaltBank();
        subject = subject with { Findings = subject.Findings.Insert(0, Plantings.Finding("even-count", "Six trunks is an even number.")) };
        var labels = new PlateReader(Draw(subject)).Labels.ToArray();
        Assert.DoesNotContain(labels, label => label.Text.StartsWith("Six trunks is", StringComparison.Ordinal));
        Assert.DoesNotContain(labels, label => label is { Class: "gs-mark-number", Text: "1" });
        Assert.Contains(labels, label => label is { Class: "gs-mark-number", Text: "2" });
        Assert.Contains(labels, label => label.Class == "gs-key" && label.Text.StartsWith("A straight rod", StringComparison.Ordinal));
    }

    [Fact]
    public void Removed_and_planned_trunks_are_told_from_standing_ones_without_colour()
    {
        var reader = new PlateReader(Draw(Plantings.SaltBank()));
        Assert.Single(reader.Of("gs-removed"));
        Assert.Single(reader.Of("gs-planned"));
        Assert.Equal(5, reader.Of("gs-bark").Count());
        Assert.Contains("gs-removed{fill:none", Draw(Plantings.SaltBank()), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(45)]
    [InlineData(90)]
    [InlineData(137)]
    [InlineData(180)]
    [InlineData(251)]
    [InlineData(270)]
    [InlineData(359)]
    public void The_eye_is_where_the_viewer_stands_outside_the_container(double bearing)
    {
        var planting = new Planting
        {
            Container = new Container.Oval(Plantings.Millimetres(500), Plantings.Millimetres(300)) { Depth = Plantings.Millimetres(40), Origin = new Origin("head:container") },
            Viewed = new Viewpoint { Origin = new Origin("head:viewed"), From = new Bearing(bearing) },
        };
        var reader = new PlateReader(Draw(new DrawingSubject(planting.StateOn(null), [])));
        var iris = reader.Of("gs-iris").Single();
        var rim = PlateReader.Pieces(reader.Of("gs-rim").Single().Attribute("d")!.Value);
        var (left, right, top, bottom) = (rim.Min(p => p.FromX), rim.Max(p => p.FromX), rim.Min(p => p.FromY), rim.Max(p => p.FromY));
        var (x, y) = ((Read(iris, "cx") - ((left + right) / 2)) / (right - left) * 2, (Read(iris, "cy") - ((top + bottom) / 2)) / (bottom - top) * 2);
        Assert.True((x * x) + (y * y) > 1.05, $"at {x}, {y}");
        var seen = Math.Atan2(x * (right - left), -y * (bottom - top)) * 180 / Math.PI;
        Assert.InRange(Math.Abs(((seen - bearing + 540) % 360) - 180), 0, 12);
        Assert.Equal("head:viewed", iris.Parent!.Attribute("data-origin")!.Value);
    }

    [Theory]
    [InlineData(60)]
    [InlineData(500)]
    [InlineData(3000)]
    [InlineData(100_000)]
    [InlineData(1_000_000)]
    public void Any_size_fits_the_page(double widthMm)
    {
        var subject = Plantings.Scattered(12, 4, 6, widthMm);
        foreach (var units in new[] { UnitSystem.Metric, UnitSystem.Inch })
        {
            var svg = Draw(subject, new DrawingOptions { Units = units });
            AssertLabelsAreFree(svg, $"{widthMm} mm, {units}");
            AssertTrunksAreOnThePage(svg);
        }
    }

    [Fact]
    public void Odd_plantings_are_drawn()
    {
        AssertTrunksAreOnThePage(Draw());
        AssertTrunksAreOnThePage(Draw(Plantings.Trunk("A", 0, 0, 20, 200)));
        AssertTrunksAreOnThePage(Draw(Plantings.Trunk("A", 1e6, -1e6, 20, 200), Plantings.Trunk("B", 1e6, -1e6, 20, 200)));
        AssertTrunksAreOnThePage(Draw([.. Enumerable.Range(0, 30).Select(i => Plantings.Trunk($"T{i}", 0, 0, 10, 100))]));
        AssertTrunksAreOnThePage(Draw(Plantings.Trunk("A", 0, 0, 0.001, 0.001), Plantings.Trunk("B", 100, 0, 1e6, 1e6)));
        var leaning = Plantings.Trunk("A", 0, 0, 20, 200) with { Lean = new(new Lean(new Angle(89.999), new Bearing(33)), Origin.Default) };
        AssertTrunksAreOnThePage(Draw(leaning, Plantings.Trunk("B", 60, 0, 20, 200)));
    }

    [Fact]
    public void A_trunk_outside_its_container_is_still_on_the_page()
    {
        var planting = new Planting
        {
            Container = new Container.Round(Plantings.Millimetres(200)) { Depth = Plantings.Millimetres(40), Origin = Origin.Default },
            Trunks = [Plantings.Trunk("A", 0, 0, 20, 200), Plantings.Trunk("Out", 900, 300, 20, 200)],
        };
        AssertTrunksAreOnThePage(Draw(new DrawingSubject(planting.StateOn(null), [])));
    }

    [Fact]
    public void A_trunk_without_a_place_is_named_below_the_plan()
    {
        var lost = Plantings.Trunk("Lost", 0, 0, 20, 200) with { At = null };
        Assert.Contains("place is not known: Lost.", string.Concat(new PlateReader(Draw(Plantings.Trunk("A", 0, 0, 20, 200), lost)).Labels.Select(label => label.Text)), StringComparison.Ordinal);
    }

    [Fact]
    public void The_description_tells_sizes_places_and_findings()
    {
        var description = XDocument.Parse(Draw(Plantings.SaltBank())).Root!.Element(Svg + "desc")!.Value;
        Assert.Contains("five trunks of a group", description, StringComparison.Ordinal);
        Assert.Contains("A, 33 mm thick, 260 mm high, 68 mm left and 31 mm in front", description, StringComparison.Ordinal);
        Assert.Contains("G, planned", description, StringComparison.Ordinal);
        Assert.Contains("Finding 1: A straight rod", description, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_plates_in_one_page_share_no_id()
    {
        static IEnumerable<string> Ids(string svg) => XDocument.Parse(svg).Descendants().Attributes("id").Select(id => id.Value);
        Assert.Empty(Ids(Draw(Plantings.SaltBank())).Intersect(Ids(Draw(Plantings.SaltBank(), new DrawingOptions { IdPrefix = "second" }))));
    }

    [Fact]
    public void Gaps_are_written_in_lengths_that_were_measured()
    {
        // B to C: √(49² + 34²) = 59.64 mm; A to B: √(90² + 49²) = 102.48 mm.
        var lengths = new PlateReader(Draw(Plantings.SaltBank())).Labels.Where(label => label.Class == "gs-gap-length").Select(label => label.Text).ToArray();
        Assert.Contains("60", lengths);
        Assert.Contains("102", lengths);
    }

    [Fact]
    public void The_length_of_a_steep_or_short_gap_stands_upright_and_that_of_a_flat_one_along_it()
    {
        static XElement Length(double x, double y) => new PlateReader(Draw(Plantings.Trunk("A", 0, 0, 20, 200), Plantings.Trunk("B", x, y, 20, 200), Plantings.Trunk("C", -400, -300, 20, 200)))
            .Of("gs-gap-length").First();
        Assert.Null(Length(5, 99).Attribute("transform"));
        Assert.NotNull(Length(95, 28).Attribute("transform"));
        Assert.Equal("99", Length(99, 0).Value);
        Assert.Equal("36", Length(36, 0).Value);
        Assert.Null(Length(36, 3).Attribute("transform"));
    }

    [Fact]
    public void The_rim_is_inked_over_the_wash_of_the_crowns()
    {
        var drawing = Draw(Plantings.SaltBank());
        var order = new[] { "class=\"gs-rim-inner\"", "class=\"gs-crown", "class=\"gs-rim\"", "class=\"gs-trunk\"" }.Select(mark => drawing.IndexOf(mark, StringComparison.Ordinal)).ToArray();
        Assert.DoesNotContain(-1, order);
        Assert.Equal(order.Order(), order);
    }

    [Fact]
    public void Grit_lies_within_the_rim_in_every_corner()
    {
        var planting = new Planting
        {
            Name = new("Corners", Origin.Default),
            Container = new Container.Rectangle(Plantings.Millimetres(300), Plantings.Millimetres(200)) { Depth = Plantings.Millimetres(40), Origin = new Origin("head:container") },
        };
        var reader = new PlateReader(Draw(new DrawingSubject(planting.StateOn(null), [])));
        var inner = PlateReader.Pieces(reader.Of("gs-rim-inner").Single().Attribute("d")!.Value);
        var grit = PlateReader.Pieces(reader.Of("gs-grit").Single().Attribute("d")!.Value);
        Assert.NotEmpty(grit);
        Assert.All(grit, dot => Assert.True(
            dot.FromX > inner.Min(p => p.FromX) && dot.FromX < inner.Max(p => p.FromX) && dot.FromY > inner.Min(p => p.FromY) && dot.FromY < inner.Max(p => p.FromY)));
    }

    private static void AssertTrunksAreOnThePage(string svg)
    {
        var reader = new PlateReader(svg);
        foreach (var trunk in reader.Of("gs-bark").Concat(reader.Of("gs-section")))
        {
            if (trunk.Name.LocalName == "circle")
            {
                Assert.InRange(double.Parse(trunk.Attribute("cx")!.Value, CultureInfo.InvariantCulture), 0, reader.Page.Right);
                Assert.InRange(double.Parse(trunk.Attribute("cy")!.Value, CultureInfo.InvariantCulture), 0, reader.Page.Bottom);
                continue;
            }

            var start = trunk.Attribute("d")!.Value[1..].Split('c')[0].Replace("-", " -", StringComparison.Ordinal).Split(' ', StringSplitOptions.RemoveEmptyEntries);
            Assert.InRange(double.Parse(start[0], CultureInfo.InvariantCulture), 0, reader.Page.Right);
            Assert.InRange(double.Parse(start[1], CultureInfo.InvariantCulture), 0, reader.Page.Bottom);
        }
    }

    private static void AssertLabelsAreFree(string svg, string which)
    {
        var reader = new PlateReader(svg);
        var labels = reader.Labels.ToArray();
        for (var i = 0; i < labels.Length; i++)
        {
            Assert.True(reader.Page.Grown(0.1).Holds(labels[i].Box), $"{which}: {labels[i].Text} leaves the page at {labels[i].Box}");
            for (var j = 0; j < i; j++)
            {
                Assert.False(labels[i].Box.Grown(-0.1).Overlaps(labels[j].Box), $"{which}: {labels[i].Text} and {labels[j].Text} overlap at {labels[i].Box}");
            }
        }
    }

    private static double Read(XElement element, string attribute) => double.Parse(element.Attribute(attribute)!.Value, CultureInfo.InvariantCulture);

    private static double[] Steps(string data)
    {
        var spaced = string.Concat(data.Select(c => c == '-' ? " -" : char.IsAsciiLetter(c) ? " " : c.ToString()));
        return [.. spaced.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(number => double.Parse(number, CultureInfo.InvariantCulture))];
    }
}
