using System.Text.Json.Nodes;

namespace GroveSpec.Cli.Tests;

public sealed class ThinCommandTests : PlantingCommandTests
{
    private const string Stool = """
        planting  "Seven shoots"
        habit     clump
        container oval 420 x 280 x 40 mm
        viewed    from 180 deg, at 1000 mm, eye 200 mm
        trunk A   at -90, -35 mm   diameter 30 mm   height 410 mm
        trunk B   at -40, -40 mm   diameter 22 mm   height 350 mm
        trunk C   at 0, 20 mm      diameter 18 mm   height 290 mm
        trunk D   at 40, -20 mm    diameter 12 mm   height 210 mm
        trunk E   at 90, 30 mm     diameter 8 mm    height 150 mm
        trunk F   at -60, 45 mm    diameter 12 mm   height 205 mm
        trunk G   at 45, 60 mm     diameter 15 mm   height 260 mm

        """;

    public ThinCommandTests()
        : base("thin", Stool)
    {
    }

    private protected override string[][] Questions => [["--keep", "5"], ["--keep", "1-3"]];

    [Fact]
    public void What_is_fixed_stays_and_goes_and_as_many_are_kept_as_were_asked_for()
    {
        var answer = Work.Run("thin", "a.grove", "--keep", "3-4", "--with", "F,G", "--without", "B", "--json");
        foreach (var suggestion in JsonNode.Parse(answer.Output)!["plantings"]![0]!["suggestions"]!.AsArray())
        {
            var kept = suggestion!["keep"]!.AsArray().Select(name => (string)name!).ToList();
            Assert.InRange(kept.Count, 3, 4);
            Assert.Contains("F", kept);
            Assert.Contains("G", kept);
            Assert.DoesNotContain("B", kept);
        }
    }

    [Fact]
    public void A_name_that_no_planting_has_fails_the_run_and_one_that_one_of_several_has_does_not()
    {
        Work.Write("other.grove", "planting \"Two\"\ntrunk Y at 0, 0 mm\ntrunk Z at 40, 9 mm\ntrunk X at 9, 60 mm\n");
        Assert.Equal(ExitStatus.Usage, Work.Run("thin", "a.grove", "--keep", "3", "--with", "Z").Status);
        Assert.Equal(ExitStatus.Usage, Work.Run("thin", "a.grove", "--keep", "3", "--without", "Z", "--json").Status);
        Assert.Equal(ExitStatus.Usage, Work.Run("thin", "a.grove", "--keep", "3", "--with", "A", "--without", "A").Status);
        Assert.Equal(ExitStatus.Good, Work.Run("thin", "a.grove", "other.grove", "--keep", "2", "--with", "Z").Status);
        Assert.Equal(ExitStatus.Good, Work.Run("thin", "a.grove", "--keep", "7").Status);
        Assert.Equal(ExitStatus.Usage, Work.Run("ground", "a.grove", "--of", "Z").Status);
        Assert.Equal(ExitStatus.Good, Work.Run("ground", "a.grove", "other.grove", "--of", "Z", "--diameter", "9mm").Status);
    }

    [Theory]
    [InlineData("7", "there is nothing to choose")]
    [InlineData("9", "Only 7 trunks could stay, and 9 are to be kept: ask for fewer.")]
    public void Where_there_is_nothing_to_choose_that_is_said(string keep, string said) =>
        Assert.Contains(said, Flowing(Work.Run("thin", "a.grove", "--keep", keep).Output), StringComparison.Ordinal);

    [Fact]
    public void A_name_is_read_as_the_file_reads_it_with_its_commas_and_accents()
    {
        // In the file é is one character and the name of B holds a comma of another script; behind the option é is two.
        Work.Write("names.grove", Stool.Replace("trunk A ", "trunk \u00E9 ", StringComparison.Ordinal).Replace("trunk B ", "trunk 松，梅 ", StringComparison.Ordinal));
        var answer = Work.Run("thin", "names.grove", "--keep", "3", "--with", "e\u0301, 松，梅", "--json");
        Assert.All(JsonNode.Parse(answer.Output)!["plantings"]![0]!["suggestions"]!.AsArray(), suggestion =>
            Assert.Equal(2, suggestion!["keep"]!.AsArray().Count(name => (string)name! is "\u00E9" or "松，梅")));
        Assert.NotEmpty(JsonNode.Parse(answer.Output)!["plantings"]![0]!["suggestions"]!.AsArray());
        Assert.DoesNotContain("is no trunk", Work.Run("ground", "names.grove", "--of", "e\u0301").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_trunk_is_named_with_those_that_stand() =>
        Assert.Contains("Z is no trunk that stands here. Standing are A, B, C, D, E, F and G.", Flowing(Work.Run("thin", "a.grove", "--keep", "3", "--with", "Z").Output), StringComparison.Ordinal);

    [Fact]
    public void More_trunks_than_can_be_looked_through_are_refused_at_once()
    {
        Work.Write("many.grove", "planting \"Many\"\n" + string.Concat(Enumerable.Range(0, 25).Select(i => $"trunk T{i} at {i * 31}, {i * i % 97} mm diameter {10 + i} mm\n")));
        Assert.Contains("25 trunks stand here, and choices are looked through among up to 24. Say which one goes in any case.", Flowing(Work.Run("thin", "many.grove", "--keep", "5").Output), StringComparison.Ordinal);
        Assert.DoesNotContain("25 trunks", Flowing(Work.Run("thin", "many.grove", "--keep", "2", "--without", "T3").Output), StringComparison.Ordinal);
    }

    [Fact]
    public void A_trunk_without_a_place_stays_and_is_counted()
    {
        Work.Write("tape.grove", Stool + "trunk H diameter 9 mm height 140 mm\n");
        var told = Flowing(Work.Run("thin", "tape.grove", "--keep", "4").Output);
        Assert.Contains("Kept and counted without being weighed, because the file gives no place: H.", told, StringComparison.Ordinal);
        Assert.Matches(@"1 Keep \w, \w, \w and H; take out", told);
    }

    [Fact]
    public void Every_trunk_is_named_however_many_there_are()
    {
        Work.Write("many.grove", "planting \"Many\"\n" + string.Concat(Enumerable.Range(0, 20).Select(i => $"trunk T{i} at {i * 31}, {i * i % 97} mm diameter {10 + i} mm\n")));
        var told = Flowing(Work.Run("thin", "many.grove", "--keep", "3").Output);
        Assert.DoesNotContain("more", told, StringComparison.Ordinal);
        Assert.All(Enumerable.Range(0, 20), i => Assert.Matches($@"\bT{i}\b", told));
    }

    [Theory]
    [InlineData("0")]
    [InlineData("7-5")]
    [InlineData("five")]
    [InlineData("-")]
    [InlineData("99999")]
    public void A_number_that_is_none_is_refused(string keep) => Assert.Equal(ExitStatus.Usage, Work.Run("thin", "a.grove", $"--keep={keep}").Status);

    [Fact]
    public void Without_a_number_nothing_is_chosen() => Assert.Equal(ExitStatus.Usage, Work.Run("thin", "a.grove").Status);

    [Fact]
    public void Those_that_go_are_written_with_the_day_and_nothing_else_is_touched()
    {
        var answer = Work.Run("thin", "a.grove", "--keep", "5", "--write", "--on", "2027-03-14");
        Assert.Contains("a.grove: 2 trunks were written as taken out.", answer.Errors, StringComparison.Ordinal);
        string[] before = Stool.Split('\n'), after = Work.Read("a.grove").Split('\n');
        Assert.Equal(before.Length, after.Length);
        var changed = Enumerable.Range(0, before.Length).Where(line => before[line] != after[line]).ToList();
        Assert.Equal(2, changed.Count);
        Assert.All(changed, line => Assert.Matches($"^{System.Text.RegularExpressions.Regex.Escape(before[line])}\\s+removed 2027-03-14$", after[line]));
        Assert.Contains("as many are to be kept", Flowing(Work.Run("thin", "a.grove", "--keep", "5", "--on", "2027-03-14").Output), StringComparison.Ordinal);
    }

    [Fact]
    public void An_accept_that_is_needed_no_more_is_told_with_what_is_written()
    {
        Work.Write("accepted.grove", Stool + "accept even-gaps A B C because \"they do\"\n");
        Assert.Contains("accepted.grove: The file accepts even-gaps of A, B and C, and with C taken out that lets nothing stand any more: take that line out as well, or check hints at it (stale-accept).", Work.Run("thin", "accepted.grove", "--keep", "6", "--without", "C", "--write", "--on", "2027-03-14").Errors, StringComparison.Ordinal);
        Assert.Contains("stale-accept", Work.Run("check", "accepted.grove", "--json").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_written_without_the_day_or_to_standard_input()
    {
        var answer = Work.Run("thin", "a.grove", "--keep", "5", "--write");
        Assert.Equal(ExitStatus.Usage, answer.Status);
        Assert.Contains("--on 2027-03-14", answer.Errors, StringComparison.Ordinal);
        Assert.Equal(Stool, Work.Read("a.grove"));
        Assert.Equal(ExitStatus.Usage, Work.Run("thin", "-", "--keep", "5", "--write", "--on", "2027-03-14").Status);
        Assert.Contains("a.grove: nothing was written.", Work.Run("thin", "a.grove", "--keep", "7", "--write", "--on", "2027-03-14").Errors, StringComparison.Ordinal);
        Assert.Equal(Stool, Work.Read("a.grove"));
    }

    [Fact]
    public void A_trunk_whose_line_could_not_be_read_is_left_alone_and_that_is_said()
    {
        var text = Stool.Replace("diameter 8 mm ", "diameter thin ", StringComparison.Ordinal);
        Work.Write("b.grove", text);
        var answer = Work.Run("thin", "b.grove", "--keep", "6", "--without", "E", "--write", "--on", "2027-03-14");
        Assert.Contains("1 trunk that goes was left alone, because its line could not be read whole", answer.Errors, StringComparison.Ordinal);
        Assert.Equal(text, Work.Read("b.grove"));
    }

    [Fact]
    public void The_picture_shows_the_choices_and_is_alone_on_standard_output()
    {
        Assert.Contains("Seven shoots", Work.Run("thin", "a.grove", "--keep", "5", "--picture", "keep.svg").Output, StringComparison.Ordinal);
        var picture = Work.Read("keep.svg");
        Assert.Contains("class=\"gs-cut\"", picture, StringComparison.Ordinal);
        Assert.Equal(picture, Work.Run("thin", "a.grove", "--keep", "5", "--picture", "-").Output);
        Assert.Equal(ExitStatus.Usage, Work.Run("thin", "a.grove", "--keep", "5", "--picture", "-", "--json").Status);
    }

    private protected override void ExpectOfSamples(JsonArray plantings) => Assert.Contains(plantings, planting => planting!["suggestions"]!.AsArray().Count > 0);
}
