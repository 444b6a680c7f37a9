using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using GroveSpec.Binding;
using GroveSpec.Binding.Use;
using GroveSpec.Checks;
using GroveSpec.Model.Quantities;
using GroveSpec.Publishing.Book;
using GroveSpec.Syntax.Text;
using Xunit;

namespace GroveSpec.Publishing.Tests.Book;

public sealed class BookWriterTests
{
    private const string Row = """
        planting "Row of Three"
        habit group
        species zelkova-serrata
        container oval 400 x 260 x 40 mm
        site latitude 51 N, zone 8b, last frost 3 May, first frost 1 November
        viewed from 180 deg, at 1000 mm, eye 160 mm, near
        concept "A wall once stood here."
        trunk A at -90, -20 mm diameter 30 mm height 300 mm role wall
        trunk B at 0, 0 mm diameter 20 mm height 240 mm role wall
        trunk C at 81, 18 mm diameter 12 mm height 150 mm
        role wall { form stout vigour restrain aim diameter 36 mm by 2030 story "what is left of it" }
        task W1 wire on B in late autumn 2026 with aluminium 3 mm, coil 50 deg
        task U1 unwire of W1 6 to 8 weeks after W1
        task P1 prune on all in late winter 2027 "small cuts"
        measured 2026-10-30 {
          A diameter 31 mm height 305 mm
        }

        """;

    private const string Accepted = Row + "accept three-in-line A B C because \"the wall ran here\"\n";

    private const string Hostile = """
        planting "<script>alert(1)</script> ]]> --><svg onload=alert(1)>"
        concept "&#x0; javascript:alert(1) \" ' =HYPERLINK(1)"
        trunk A at 0, 0 mm diameter 20 mm height 200 mm
        trunk B at 60, 40 mm diameter 12 mm height 150 mm
        task T1 other "</style><img src=x onerror=alert(1)>" on A on 2027-04-01 "</td></table>"

        """;

    [Fact]
    public void The_same_planting_gives_the_same_bytes() => Assert.Equal(Book(Row), Book(Row));

    [Theory]
    [InlineData(Row)]
    [InlineData(Accepted)]
    [InlineData(Hostile)]
    [InlineData("")]
    [InlineData("trunk A\n")]
    public void Every_page_is_well_formed_as_xml(string source) => Assert.Equal("html", Parse(Book(source)).Root!.Name.LocalName);

    [Fact]
    public void The_policy_allows_the_one_style_block_by_its_hash_and_nothing_from_outside()
    {
        var page = Parse(Book(Row));
        var policy = page.Descendants().Single(element => (string?)element.Attribute("http-equiv") == "Content-Security-Policy").Attribute("content")!.Value;
        var style = Assert.Single(page.Descendants(), element => element.Name.LocalName == "style");
        var hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style.Value)));

        Assert.Equal($"default-src 'none'; style-src 'sha256-{hash}'; font-src data:; base-uri 'none'; form-action 'none'", policy);
    }

    [Fact]
    public void Nothing_in_the_page_can_ask_for_anything_outside()
    {
        var page = Book(Hostile);
        var elements = Parse(page).Descendants().ToList();

        Assert.DoesNotContain(elements, element => element.Name.LocalName is "script" or "link" or "iframe" or "object" or "img" or "image" or "use" or "form");
        Assert.DoesNotContain(elements.Attributes(), attribute => attribute.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase) || attribute.Name.LocalName == "style");
        Assert.All(elements.Attributes().Where(attribute => attribute.Name.LocalName is "href" or "src"), attribute => Assert.StartsWith("#", attribute.Value, StringComparison.Ordinal));
        Assert.DoesNotMatch(new Regex(@"url\((?!data:font/woff2)"), page);
        Assert.DoesNotContain("@import", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_from_the_file_comes_through_as_text()
    {
        var page = Parse(Book(Hostile));

        Assert.Contains(page.Descendants(), element => element.Name.LocalName == "h1" && element.Value.Contains("<script>alert(1)</script>", StringComparison.Ordinal));
        Assert.Contains(page.Descendants(), element => element.Name.LocalName == "td" && element.Value == "</td></table>");
    }

    [Fact]
    public void Control_characters_and_direction_overrides_are_left_out_and_marks_do_not_pile_up()
    {
        var name = "a\u0001b\u202Ec" + new string('\u0301', 5000) + "d" + new string('x', 10_000);
        var page = Book($"planting \"{name}\"\ntrunk A at 0, 0 mm diameter 20 mm height 200 mm\n");

        Assert.DoesNotContain('\u0001', page);
        Assert.DoesNotContain('\u202E', page);
        Assert.DoesNotContain("\u0301\u0301\u0301\u0301\u0301", page, StringComparison.Ordinal);
        Parse(page);
    }

    [Fact]
    public void Every_finding_stands_in_it_with_its_number_and_what_the_check_means()
    {
        var assessment = Assess(Row);
        var text = Parse(BookWriter.Write([assessment], BookOptions.Default)).Root!.Value;

        Assert.Contains(assessment.Findings, finding => finding.Check.Name == "three-in-line");
        Assert.All(assessment.Findings, finding => Assert.Contains(finding.Message, text, StringComparison.Ordinal));
        Assert.All(assessment.Findings, finding => Assert.Contains(finding.Check.Explanation, text, StringComparison.Ordinal));
        var numbers = Parse(Book(Row)).Descendants().Where(element => (string?)element.Attribute("class") == "ring").Select(element => element.Value).Order();
        Assert.Equal(Enumerable.Range(1, assessment.Findings.Length).Select(number => number.ToString()).Order(), numbers);
    }

    [Fact]
    public void What_the_file_lets_stand_is_told_with_its_reason()
    {
        Assert.DoesNotContain("What is let stand", Book(Row), StringComparison.Ordinal);
        var text = Parse(Book(Accepted)).Root!.Value;
        Assert.Contains("What is let stand", text, StringComparison.Ordinal);
        Assert.Contains("the wall ran here", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Tables_hold_trunks_roles_readings_and_work()
    {
        var rows = Parse(Book(Row)).Descendants().Where(element => element.Name.LocalName == "tr").Select(row => string.Join('|', row.Elements().Select(cell => cell.Value))).ToList();

        // The girth of a trunk of 31 mm is 97.4 mm; from A at (-90, -20) to B at the origin it is 92.2 mm.
        Assert.Contains("A|wall|-90 mm|-20 mm|31 mm|97 mm|305 mm|92 mm|stands", rows);
        Assert.Contains("wall|A, B|stout|restrain|diameter 36 mm by 2030|what is left of it", rows);
        Assert.Contains("30 October 2026|A|31 mm|305 mm|", rows);
        Assert.Contains(rows, row => row.StartsWith("P1|prune|all|", StringComparison.Ordinal) && row.EndsWith("|small cuts", StringComparison.Ordinal));
    }

    [Fact]
    public void Inches_are_spoken_where_they_are_asked_for()
    {
        var page = BookWriter.Write([Assess(Row, UnitSystem.Inch)], new BookOptions { Units = UnitSystem.Inch });

        // 305 mm is 12.01 in, by the inch of 25.4 mm (ISO 80000-3).
        Assert.Contains("12.01 in", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_check_of_the_composition_has_a_small_drawing_and_no_two_are_alike()
    {
        var drawings = Catalogue.All.Where(check => check.IsComposition).ToDictionary(check => check.Name, check => Vignettes.Draw(check.Name));

        Assert.All(drawings, drawing => Assert.NotNull(drawing.Value));
        Assert.Equal(drawings.Count, drawings.Values.Distinct().Count());
        Assert.All(drawings.Values, drawing => XDocument.Parse(drawing!));
        Assert.Null(Vignettes.Draw("misspelt-word"));
    }

    [Fact]
    public void Cautions_follow_the_work_and_name_no_dose()
    {
        var text = Parse(Book(Row)).Root!.Value;

        Assert.Contains("take wire off before it bites", text, StringComparison.Ordinal);
        Assert.Contains("Elm and zelkova", text, StringComparison.Ordinal);
        Assert.DoesNotMatch(new Regex(@"\d\s*(ml|g/l|grams?|drops)\b"), text);
        Assert.DoesNotContain("Elm and zelkova", Parse(Book(Row.Replace("zelkova-serrata", "larix-kaempferi", StringComparison.Ordinal))).Root!.Value, StringComparison.Ordinal);
        Assert.DoesNotContain("Before you start", Book("planting \"Quiet\"\ntrunk A at 0, 0 mm diameter 20 mm height 200 mm\n"), StringComparison.Ordinal);
    }

    [Fact]
    public void Several_plantings_share_a_page_without_sharing_an_id()
    {
        var page = Parse(BookWriter.Write([Assess(Row), Assess(Accepted), Assess(Hostile)], BookOptions.Default));
        var ids = page.Descendants().Attributes("id").Select(attribute => attribute.Value).ToList();

        Assert.Equal(ids.Count, ids.Distinct().Count());
        Assert.All(page.Descendants().Attributes("aria-labelledby"), attribute => Assert.All(attribute.Value.Split(' '), id => Assert.Contains(id, ids)));
        Assert.Equal(["#planting-1", "#planting-2", "#planting-3"], page.Descendants().Attributes("href").Select(attribute => attribute.Value));
    }

    [Fact]
    public void What_may_still_be_decided_is_told_where_the_page_can_help()
    {
        Assert.Equal(["What to move a little", "How natural it stands"], Decisions(Row));
        Assert.Contains("and the checks of composition then find nothing", Parse(Book(Row)).Root!.Value, StringComparison.Ordinal);
        Assert.Equal(["How natural it stands"], Decisions(Row.Replace("at 0, 0 mm", "at -35, 50 mm", StringComparison.Ordinal)));
        Assert.Empty(Decisions("planting \"Pair\"\ntrunk A at 0, 0 mm diameter 20 mm\ntrunk B at 70, 9 mm diameter 12 mm\n"));
        Assert.Equal(["What the tape says"], Decisions("planting \"Tape\"\ntrunk A at 0, 0 mm\ntrunk B\ntape A to B 80 mm\n"));
    }

    [Fact]
    public void A_trunk_that_is_planned_and_has_no_place_is_shown_its_ground() =>
        Assert.Contains("Where N goes", Decisions(Row.Replace("role wall {", "trunk N diameter 9 mm planned 2027-04-01\nrole wall {", StringComparison.Ordinal)));

    [Fact]
    public void Nothing_is_searched_for_among_very_many_trunks_on_paper()
    {
        var many = string.Concat(Enumerable.Range(0, 40).Select(index => $"trunk T{index} at {40 * (index % 8)}, {40 * (index / 8)} mm diameter {10 + (index % 9)} mm\n"));
        Assert.Equal(["How natural it stands"], Decisions("planting \"Many\"\n" + many));
    }

    [Fact]
    public void A_book_of_nothing_is_refused() => Assert.Throws<ArgumentException>(() => BookWriter.Write([], BookOptions.Default));

    private static IEnumerable<string> Decisions(string source) =>
        Parse(Book(source)).Descendants().Where(part => (string?)part.Attribute("class") == "decision").Select(part => part.Elements().First().Value);

    private static string Book(string source) => BookWriter.Write(ImmutableArray.Create(Assess(source)), BookOptions.Default);

    private static Assessment Assess(string source, UnitSystem units = UnitSystem.Metric) =>
        Assessment.Of("row.grove", SourceText.FromText(source), new NoFiles(), null, units);

    private static XDocument Parse(string page) => XDocument.Parse(page["<!DOCTYPE html>".Length..]);
}
