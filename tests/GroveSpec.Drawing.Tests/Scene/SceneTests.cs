using CsCheck;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Drawing.Tests.Scene;

public sealed class SceneTests
{
    [Theory]
    [InlineData(0, "0")]
    [InlineData(-0.001, "0")]
    [InlineData(0.5, ".5")]
    [InlineData(-0.25, "-.25")]
    [InlineData(12.345, "12.35")]
    [InlineData(12.3, "12.3")]
    [InlineData(1200, "1200")]
    [InlineData(7.006, "7.01")]
    [InlineData(double.NaN, "0")]
    [InlineData(double.PositiveInfinity, "1000000000")]
    public void Numbers_are_short(double value, string expected)
    {
        var svg = new SvgWriter();
        svg.Number(value);
        Assert.Equal(expected, svg.Finish());
    }

    [Fact]
    public void A_path_is_written_in_steps_that_do_not_drift()
    {
        var svg = new SvgWriter();
        svg.BeginPath("gs-x");
        svg.MoveTo(10.004, 20);
        svg.LineTo(10.008, 20.5);
        svg.LineTo(10.012, 20);
        svg.MoveTo(1, 1);
        svg.LineTo(2, 1);
        svg.ClosePath();
        svg.EndPath();
        Assert.Equal("<path class=\"gs-x\" d=\"M10 20l.01 .5 0-.5m-9.01-19 1 0z\"/>\n", svg.Finish());
    }

    [Fact]
    public void Escaped_text_is_text_whatever_it_holds() => Gen.String[Gen.Char, 0, 60].Sample(text =>
    {
        var svg = new SvgWriter();
        svg.Raw("<t a=\"");
        svg.Escaped(text);
        svg.Raw("\">");
        svg.Escaped(text);
        svg.Raw("</t>");
        var root = System.Xml.Linq.XDocument.Parse(svg.Finish(), System.Xml.Linq.LoadOptions.PreserveWhitespace).Root!;
        return !root.HasElements && root.Attributes().Count() == 1 && root.Value == root.Attribute("a")!.Value;
    });

    [Fact]
    public void Cleaned_text_neither_steers_nor_grows() => Gen.String[Gen.Char, 0, 80].Sample(text =>
    {
        var clean = DrawnText.Clean(text);
        return !clean.Any(c => c is >= '\u202a' and <= '\u202e' || char.IsControl(c))
            && clean.Count(c => c is >= '\u2066' and <= '\u2068') == clean.Count(c => c == '\u2069')
            && clean == DrawnText.Clean(clean);
    });

    [Theory]
    [InlineData("A", "A")]
    [InlineData("Ä1", "Ä1")]
    [InlineData("שקד", "\u2068שקד\u2069")]
    public void Only_names_that_may_run_leftward_are_isolated(string name, string expected) => Assert.Equal(expected, DrawnText.Isolated(name));

    [Theory]
    [InlineData("A and B 12 mm", "A and B 12 mm")]
    [InlineData("木 12 mm", "木 12 mm")]
    [InlineData("שקד, תמר 12 mm", "\u2068שקד\u2069, \u2068תמר\u2069 12 mm")]
    [InlineData("Keep רימון7 and نخلة; take out A", "Keep \u2068רימון7\u2069 and \u2068نخلة\u2069; take out A")]
    [InlineData("שקד's gap is 12 mm", "\u2068שקד\u2069's gap is 12 mm")]
    [InlineData("the bank חורשה קטנה 12", "the bank \u2068חורשה קטנה\u2069 12")]
    [InlineData("\u2068חורשה 12 קטנה\u2069, free ground for שקד", "\u2068חורשה 12 קטנה\u2069, free ground for \u2068שקד\u2069")]
    [InlineData("a line ends in \u2068חורשה 12", "a line ends in \u2068חורשה 12\u2069")]
    [InlineData("קטנה\u2069 it goes on", "\u2068קטנה\u2069 it goes on")]
    public void What_runs_leftward_is_kept_to_itself_in_a_line(string line, string expected) => Assert.Equal(expected, DirectedText.Of(line));

    [Fact]
    public void A_directed_line_holds_the_same_words_and_closes_what_it_opens() => Gen.String[Gen.Frequency((3, Gen.Char['א', 'ת']), (3, Gen.Char['a', 'z']), (2, Gen.Const(' ')), (1, Gen.Char['0', '9']), (1, Gen.Char['\u2066', '\u2069']), (1, Gen.Char)), 0, 60].Sample(text =>
    {
        var clean = DrawnText.Clean(text);
        var directed = DirectedText.Of(clean);
        return Bare(directed) == Bare(clean) && directed == DirectedText.Of(directed)
            && directed.Count(c => c is >= '\u2066' and <= '\u2068') == directed.Count(c => c == '\u2069');

        static string Bare(string line) => string.Concat(line.Where(c => c is not (>= '\u2066' and <= '\u2069')));
    });

    [Fact]
    public void Every_text_of_a_plate_keeps_leftward_names_to_themselves()
    {
        var svg = new SvgWriter();
        svg.Text("gs-key", 1, 2, 13, "שקד 12 mm", title: "תמר 7");
        svg.OpenGroup("gs-trunk", null, "אלון, 30 mm thick");
        var written = svg.Finish();
        Assert.Contains("\u2068שקד\u2069 12 mm", written, StringComparison.Ordinal);
        Assert.Contains("\u2068תמר\u2069 7", written, StringComparison.Ordinal);
        Assert.Contains("\u2068אלון\u2069, 30 mm thick", written, StringComparison.Ordinal);
    }

    [Fact]
    public void Shortened_and_wrapped_text_fits() => Gen.Select(Gen.String[Gen.Char[' ', '\u017f'], 0, 200], Gen.Double[30, 400]).Sample((text, width) =>
    {
        var clean = DrawnText.Clean(text);
        return TextMetrics.ReservedWidth(DrawnText.Shortened(clean, width, 12), 12) <= Math.Max(width, 30)
            && DrawnText.Wrapped(clean, width, 12, Face.Regular, 3) is { Count: >= 1 and <= 3 } lines
            && lines.TrueForAll(line => TextMetrics.ReservedWidth(line, 12) <= Math.Max(width, 30));
    });

    [Fact]
    public void A_number_is_never_parted_from_its_unit_at_the_end_of_a_line()
    {
        for (var width = 60; width < 400; width += 3)
        {
            var lines = DrawnText.Wrapped("It stands 12 mm off, within 4 % of 3.5 in. Move it by 29 mm, or 120 deg round.", width, 12);
            Assert.All(lines.Skip(1), line => Assert.DoesNotMatch("^(mm|%|in|deg)", line));
        }
    }

    [Fact]
    public void Widths_are_those_of_the_face()
    {
        // EB Garamond of the npm package: A is 692, a is 399 and the space 200 thousandths of an em.
        Assert.Equal(12.91, TextMetrics.Width("A a", 10), 9);
        Assert.Equal(0, TextMetrics.Width("\u0301\u200b", 10));
        Assert.Equal(11, TextMetrics.Width("木", 10), 9);
        Assert.Equal(13, TextMetrics.Width("🌲", 10), 9);
    }

    [Theory]
    [InlineData(0.3, UnitSystem.Metric, 0.2, "0.2 mm")]
    [InlineData(147, UnitSystem.Metric, 100, "100 mm")]
    [InlineData(1999, UnitSystem.Metric, 1000, "1000 mm")]
    [InlineData(2000, UnitSystem.Metric, 2000, "2 m")]
    [InlineData(52_000, UnitSystem.Metric, 50_000, "50 m")]
    [InlineData(150, UnitSystem.Inch, 127, "5 in")]
    [InlineData(914.4, UnitSystem.Inch, 609.6, "2 ft")]
    public void A_scale_bar_is_the_longest_round_length_that_fits(double room, UnitSystem units, double expected, string end)
    {
        var bar = DrawnLength.RoundBar(room, units);
        Assert.Equal(expected, bar.Millimetres, 9);
        Assert.Equal(end, bar.End);
    }

    [Theory]
    [InlineData(59.64, UnitSystem.Metric, "59.6 mm")]
    [InlineData(999.4, UnitSystem.Metric, "999 mm")]
    [InlineData(1100, UnitSystem.Metric, "1.1 m")]
    [InlineData(50.8, UnitSystem.Inch, "2 in")]
    [InlineData(3048, UnitSystem.Inch, "10 ft")]
    public void Lengths_carry_the_unit_a_reader_wants(double millimetres, UnitSystem units, string expected) =>
        Assert.Equal(expected, DrawnLength.Text(Length.FromMillimetres(millimetres), units));

    [Fact]
    public void Each_colour_is_written_for_renderers_with_and_without_properties()
    {
        var svg = new SvgWriter();
        new StyleSheet().Rule(".gs-x", "fill:none;stroke:$ink").WriteTo(svg, "@font-face{}", Palette.Light);
        var style = svg.Finish();
        Assert.StartsWith("<style>\n@font-face{}\n.gs{--gs-ink:#26302b;", style, StringComparison.Ordinal);
        Assert.Contains(".gs-x{fill:none;stroke:#26302b;stroke:var(--gs-ink)}", style, StringComparison.Ordinal);
        Assert.Contains("prefers-color-scheme:dark", style, StringComparison.Ordinal);
        Assert.Contains("@media print", style, StringComparison.Ordinal);
    }

    [Fact]
    public void A_hand_is_the_same_every_time_and_another_for_every_name()
    {
        static double[] First(string name, string texture)
        {
            var hand = Wobble.Of(name, texture);
            return [hand.Next(), hand.Next(), hand.Next()];
        }

        Assert.Equal(First("A", "bark"), First("A", "bark"));
        Assert.NotEqual(First("A", "bark"), First("B", "bark"));
        Assert.NotEqual(First("A", "bark"), First("A", "rings"));
        Assert.NotEqual(First("Ab", "ark"), First("A", "bark"));
        Assert.All(First("A", "bark"), value => Assert.InRange(value, 0, 1));
    }

    [Fact]
    public void Labels_find_places_apart_and_within_the_page() =>
        Gen.Select(Gen.Double[20, 780], Gen.Double[20, 580], Gen.Double[8, 130], Gen.Bool).Array[1, 60].Sample(wanted =>
        {
            var page = new Box(0, 0, 800, 600);
            var placer = new LabelPlacer(page);
            foreach (var (x, y, width, isRequired) in wanted)
            {
                placer.Obstacles.AvoidDisc(x, y, 8, 100);
                placer.Ask(new LabelRequest
                {
                    Width = width,
                    Height = 16,
                    AnchorX = x,
                    AnchorY = y,
                    Reach = 8,
                    IsRequired = isRequired,
                    Candidates = LabelRequest.Around(x, y, 8, width, 16),
                });
            }

            var places = placer.Place();
            var boxes = places.Where(place => place is not null).Select(place => place!.Value.Box).ToArray();
            return boxes.All(page.Holds)
                && !boxes.Where((box, i) => boxes.Take(i).Any(box.Overlaps)).Any()
                && wanted.Zip(places).All(pair => !pair.First.Item4 || pair.Second is not null);
        });

    [Fact]
    public void No_label_stands_where_none_may()
    {
        var placer = new LabelPlacer(new Box(0, 0, 200, 100));
        var forbidden = new Box(0, 0, 200, 60);
        placer.Obstacles.Avoid(forbidden);
        placer.Ask(new LabelRequest { Width = 40, Height = 14, AnchorX = 100, AnchorY = 30, Reach = 5, IsRequired = true, Candidates = LabelRequest.Around(100, 30, 5, 40, 14) });
        var place = Assert.NotNull(placer.Place()[0]);
        Assert.False(place.Box.Overlaps(forbidden));
        Assert.True(place.HasLeader);
    }
}
