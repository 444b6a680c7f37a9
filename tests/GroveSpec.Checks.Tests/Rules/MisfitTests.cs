using GroveSpec.Binding;
using GroveSpec.Craft.Survey;
using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

public sealed class MisfitTests
{
    // Five at 100 mm from the origin, and T, which the readings put there.
    private const string Ring = """
        trunk A at -100, 0 mm diameter 20 mm
        trunk B at 100, 0 mm diameter 16 mm
        trunk C at 0, 100 mm diameter 12 mm
        trunk D at 0, -100 mm diameter 10 mm
        trunk E at 60, 80 mm diameter 8 mm
        trunk T diameter 5 mm

        """;

    // From (0, 0) to (300, 400) it is 500 mm.
    private const string Two = "trunk A at 0, 0 mm diameter 20 mm\ntrunk B at 300, 400 mm diameter 10 mm\n";

    // Read while B stood at 100, 0; the file puts it 15 mm farther from A, to which it was not read.
    private const string Apart = """
        trunk A at -100, 0 mm
        trunk B at 115, 0 mm
        trunk C
        trunk D
        trunk E
        tape A to C 176.92 mm
        tape A to D 114.02 mm
        tape A to E 264.01 mm
        tape B to C 152.64 mm
        tape B to D 158.11 mm
        tape B to E 117.05 mm
        tape C to D 225.61 mm
        tape C to E 268.33 mm
        tape D to E 171.17 mm

        """;

    [Theory]
    [InlineData("50 mm", "is 500 mm: 450 mm too short. Measure it again, and mend the reading or the place that is wrong. It should be 10 times as long: see whether its unit is the one on the tape.")]
    [InlineData("510 cm", "is 500 mm: 4600 mm too long. Measure it again, and mend the reading or the place that is wrong. It is 10 times as long as it should be: see whether its unit is the one on the tape.")]
    [InlineData("20 mm", "is 500 mm: 480 mm too short. Measure it again, and mend the reading or the place that is wrong. It should be 25.4 times as long: see whether its unit is the one on the tape.")]
    [InlineData("48 mm", "is 500 mm: 452 mm too short. Measure it again, and mend the reading or the place that is wrong.")]
    [InlineData("600 mm", "is 500 mm: 100 mm too long. Measure it again, and mend the reading or the place that is wrong.")]
    public void A_reading_that_another_unit_explains_is_told_to_be_looked_at_for_that(string read, string end) =>
        Assert.EndsWith(end, Assert.Single(Check.Of($"{Two}tape A to B {read}").Findings, finding => finding.Check.Name == "misfit").Message, StringComparison.Ordinal);

    [Fact]
    public void Where_the_others_leave_two_places_a_reading_is_held_against_both()
    {
        const string Source = """
            trunk A at -100, 0 mm
            trunk B at 100, 0 mm
            trunk C at 0, -300 mm
            trunk T
            tape T to A 152.6 mm
            tape T to B 106.3 mm
            tape T to C 38.1 mm

            """;
        var message = Assert.Single(Check.Of(Source).Findings, finding => finding.Check.Name == "misfit").Message;
        Assert.StartsWith("T to C reads 38.1 mm, but of the two places that the other readings leave the one makes it", message, StringComparison.Ordinal);
        Assert.Contains("222.1 mm", message, StringComparison.Ordinal);
        Assert.Contains("381.1 mm", message, StringComparison.Ordinal);
        Assert.EndsWith("Measure it again. It should be 10 times as long: see whether its unit is the one on the tape.", message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("502 mm", false)]
    [InlineData("502.000001 mm", true)]
    [InlineData("498 mm", false)]
    [InlineData("497.999999 mm", true)]
    public void A_reading_between_two_places_is_told_beyond_two_millimetres(string read, bool isTold) => Check.Expect("misfit", $"{Two}tape A to B {read}", isTold ? ["A B"] : []);

    [Fact]
    public void It_says_what_was_read_what_the_places_make_it_and_what_to_do()
    {
        var assessment = Check.Of($"{Two}tape A to B 512.5 mm");
        var finding = Only(assessment);
        Assert.Equal("A to B reads 512.5 mm, but by the places of both in this file it is 500 mm: 12.5 mm too long. Measure it again, and mend the reading or the place that is wrong.", finding.Message);
        Assert.Equal((Severity.Warning, 12.5, 2.0, "mm"), (finding.Severity, finding.Measured, finding.Limit, finding.Unit));
        Assert.Equal("512.5 mm", assessment.Tree.Text.Slice(finding.Place.Span));
        Assert.Equal(["at 0, 0 mm", "at 300, 400 mm"], finding.Related.Select(place => assessment.Tree.Text.Slice(place.Place.Span)));
        Assert.Contains("20.18 in, but by the places of both in this file it is 19.69 in: 0.49 in too long", Check.Message("misfit", $"{Two}tape A to B 512.5 mm", UnitSystem.Inch), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("5 mm", "505", "505.000001")]
    [InlineData("0.5 mm", "500.5", "500.500001")]
    [InlineData("1 in", "525.4", "525.400001")]
    public void A_tolerance_moves_the_limit(string tolerance, string miss, string hit)
    {
        Check.Expect("misfit", $"{Two}tape A to B {miss} mm\ntolerance misfit {tolerance}");
        Check.Expect("misfit", $"{Two}tape A to B {hit} mm\ntolerance misfit {tolerance}", "A B");
    }

    [Fact]
    public void A_gap_between_bark_counts_with_both_radii_and_is_told_as_it_was_read()
    {
        // 500 mm less 10 and 5.
        Check.Expect("misfit", $"{Two}tape A to B 485 mm between bark");
        Assert.Contains("A to B reads 470 mm, but by the places of both in this file it is 485 mm: 15 mm too short", Check.Message("misfit", $"{Two}tape A to B 470 mm between bark"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_trunk_that_was_moved_is_one_finding_and_not_one_for_each_of_its_readings()
    {
        // B and C stand where they were read; A was moved by 30 mm to the left.
        var source = "trunk A at -30, 0 mm\ntrunk B at 100, 0 mm\ntrunk C at 0, 100 mm\ntrunk D at 0, -60 mm\ntape A to B 100 mm\ntape A to C 100 mm\ntape D to A 60 mm\ntape B to C 141.4 mm\n";
        var assessment = Check.Of(source);
        var finding = Only(assessment);
        Assert.Equal(["A", "B", "C", "D"], finding.Trunks);
        Assert.StartsWith("3 tape readings disagree with the place of A: the worst, A to B, reads 100 mm and is 130 mm by the places in this file, 30 mm too short.", finding.Message, StringComparison.Ordinal);
        Assert.Equal(["60 mm", "100 mm", "at -30, 0 mm"], finding.Related.Select(place => assessment.Tree.Text.Slice(place.Place.Span)));
        Check.Expect("misfit", source + "accept misfit A B C D because \"A was moved in spring\"");

        // What is accepted by itself stays by itself, and the rest is told.
        var one = Check.Of(source + "accept misfit A B because \"A root lies between them\"");
        Assert.Equal(["A", "C", "D"], Only(one).Trunks);
        Assert.Equal(["A", "B"], Assert.Single(one.Accepted).Trunks);
    }

    [Fact]
    public void The_reading_without_which_all_others_agree_is_named()
    {
        var assessment = Check.Of(Ring + "tape T to A 100 mm\ntape T to B 100 mm\ntape T to C 100 mm\ntape T to D 100 mm\ntape E to T 120 mm\n");
        var finding = Only(assessment);
        Assert.Equal("E to T reads 120 mm, but the other readings make it 100 mm: 20 mm too long. Measure it again.", finding.Message);
        Assert.Equal(["E", "T"], finding.Trunks);
        Assert.Equal("120 mm", assessment.Tree.Text.Slice(finding.Place.Span));
        Assert.Equal(20, finding.Measured!.Value, 0.001);
    }

    [Theory]
    [InlineData(100)]
    [InlineData(101.5)]
    public void Readings_that_agree_as_a_tape_reads_are_not_told(double last) =>
        Check.Expect("misfit", FormattableString.Invariant($"{Ring}tape T to A 100 mm\ntape T to B 100.5 mm\ntape T to C 99.5 mm\ntape T to D 100 mm\ntape E to T {last} mm\n"));

    [Fact]
    public void A_wide_tolerance_lets_it_stand() =>
        Check.Expect("misfit", Ring + "tape T to A 100 mm\ntape T to B 100 mm\ntape T to C 100 mm\ntape T to D 100 mm\ntape E to T 120 mm\ntolerance misfit 21 mm");

    [Fact]
    public void Where_too_few_were_read_to_tell_all_that_may_be_off_are_named()
    {
        var assessment = Check.Of(Ring + "tape T to A 100 mm\ntape T to B 120 mm\ntape T to C 100 mm\n");
        var finding = Only(assessment);
        Assert.Equal(["A", "B", "C", "T"], finding.Trunks);
        Assert.StartsWith("One of these 3 tape readings is off, and there are too few to tell which: ", finding.Message, StringComparison.Ordinal);

        // If it is the one that was misread, the two others meet at the origin, 100 mm from B.
        Assert.Contains("T to B 120 mm (", finding.Message, StringComparison.Ordinal);
        Assert.Contains("20 mm too long", finding.Message, StringComparison.Ordinal);
        Assert.EndsWith("Measure T to A again first; if it comes out the same, another of them is off.", finding.Message, StringComparison.Ordinal);
        Assert.Equal(2, finding.Related.Length);
        Assert.True(finding.Measured > 2);
        Check.Expect("misfit", Ring + "tape T to A 100 mm\ntape T to B 120 mm\ntape T to C 100 mm\naccept misfit T A B C because \"roots\"");
        Check.Expect("misfit", Ring + "tape T to A 100 mm\ntape T to B 120 mm\ntape T to C 100 mm\ntolerance misfit 25 mm");
    }

    [Fact]
    public void Two_readings_of_one_gap_that_differ_are_both_named()
    {
        var finding = Only(Check.Of(Ring + "tape T to A 100 mm\ntape A to T 130 mm\ntape T to B 100 mm\n"));
        Assert.StartsWith("One of these 2 tape readings is off, and there are too few to tell which: ", finding.Message, StringComparison.Ordinal);
        Assert.Equal(["A", "T"], finding.Trunks);
    }

    [Fact]
    public void With_no_reading_to_spare_nothing_can_disagree() => Check.Expect("misfit", Ring + "tape T to A 100 mm\ntape T to B 130 mm\n");

    [Fact]
    public void Where_two_are_off_and_two_pairs_explain_it_alike_it_is_said_that_two_are()
    {
        // Without B and E the others meet at 60, 40, and without C and D at 51, 61.
        var finding = Only(Check.Of("""
            trunk A at -200, -60 mm
            trunk B at 200, -80 mm
            trunk C at 120, 140 mm
            trunk D at -130, 120 mm
            trunk E at 40, -150 mm
            trunk T
            tape T to A 278.6 mm
            tape T to B 204.4 mm
            tape T to C 116.6 mm
            tape T to D 206.2 mm
            tape T to E 211.0 mm
            """));
        Assert.StartsWith("Two of these 4 tape readings are off, and there are too few to tell which: ", finding.Message, StringComparison.Ordinal);
        Assert.Equal(["B", "C", "D", "E", "T"], finding.Trunks);
    }

    [Fact]
    public void A_place_that_all_readings_to_it_disagree_with_is_told_once()
    {
        // B was written 15 mm to the right of where all readings put it.
        const string Read = """
            trunk A at -200, -60 mm
            trunk B at 215, -80 mm
            trunk C at 120, 140 mm
            trunk D
            trunk E
            trunk F
            tape A to D 193.13 mm
            tape B to D 385.88 mm
            tape C to D 250.80 mm
            tape A to E 256.32 mm
            tape B to E 174.64 mm
            tape C to E 300.83 mm
            tape D to E 319.06 mm
            tape A to F 211.90 mm
            tape B to F 219.32 mm
            tape C to F 176.92 mm
            tape D to F 170.29 mm
            tape E to F 164.92 mm

            """;
        var finding = Only(Check.Of(Read));
        Assert.StartsWith("The tape readings agree with each other and not with the place of B: they put it 15 mm from where this file does.", finding.Message, StringComparison.Ordinal);
        Assert.Equal(15, finding.Measured!.Value, 0.2);
        Check.Expect("misfit", Read + "tolerance misfit 16 mm\n");
        Assert.StartsWith("2 tape readings disagree with the place of B: ", Only(Check.Of(Read + "tape A to B 400.50 mm\ntape B to C 234.09 mm\n")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_two_places_that_are_wrongly_apart_it_is_said_that_one_is_wrong()
    {
        var assessment = Check.Of(Apart);
        var finding = Only(assessment);
        Assert.Equal("The tape readings agree with each other and not with the places of A and B: one of these is wrong, by up to 15 mm. Measure them again, and mend the \"at\" that is wrong.", finding.Message);
        Assert.Equal((Severity.Warning, 2.0, "mm"), (finding.Severity, finding.Limit, finding.Unit));
        Assert.Equal(15, finding.Measured!.Value, 0.1);
        Assert.Equal(["A", "B", "C", "D", "E"], finding.Trunks);
        Assert.Equal("176.92 mm", assessment.Tree.Text.Slice(finding.Place.Span));
        Assert.Equal(["at -100, 0 mm", "at 115, 0 mm"], finding.Related.Select(place => assessment.Tree.Text.Slice(place.Place.Span)));
        Assert.Contains("one of these is wrong, by up to 0.59 in.", Check.Message("misfit", Apart, UnitSystem.Inch), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("14.9 mm", true)]
    [InlineData("15.1 mm", false)]
    public void A_tolerance_lets_two_places_stand_that_are_wrongly_apart(string tolerance, bool isTold) =>
        Check.Expect("misfit", $"{Apart}tolerance misfit {tolerance}\n", isTold ? ["A B C D E"] : []);

    [Theory]
    [InlineData("14.9 mm", true)]
    [InlineData("15.1 mm", false)]
    [InlineData("22 mm", false)]
    public void Where_one_of_the_two_may_be_wrong_by_no_more_than_the_tolerance_the_other_is_not_blamed(string tolerance, bool isTold)
    {
        // It is A, by 15 mm to the left. If it were B, all would turn about A until C is 280 mm from F again, and B would be off by more.
        var source = Apart.Replace("at -100,", "at -115,", StringComparison.Ordinal).Replace("at 115,", "at 100,", StringComparison.Ordinal) + "trunk F at 300, 130 mm\ntape C to F 280 mm\n";
        Check.Expect("misfit", $"{source}tolerance misfit {tolerance}\n", isTold ? ["A B C D E"] : []);
    }

    [Fact]
    public void Two_places_of_which_one_is_wrong_can_be_accepted()
    {
        const string Accept = "accept misfit A B C D E because \"the stone between A and B was moved\"\n";
        var accepted = Check.Of(Apart + Accept);
        Assert.DoesNotContain(accepted.Findings, finding => finding.Check.Name is "misfit" or "broken-check");
        Assert.StartsWith("The tape readings agree with each other and not with the places of A and B", Assert.Single(accepted.Accepted, finding => finding.Check.Name == "misfit").Message, StringComparison.Ordinal);

        // The acceptance that is offered is that one, and one of fewer trunks is none.
        var remedy = Assert.Single(Only(Check.Of(Apart)).Remedies);
        Assert.Contains("accept misfit A B C D E because", Assert.Single(remedy.Edits).NewText, StringComparison.Ordinal);
        Check.Expect("misfit", Apart + "accept misfit A B because \"the stone between A and B was moved\"\n", "A B C D E");

        // Once the place is mended, nothing is left to accept.
        Assert.Contains(Check.Of(Apart.Replace("at 115,", "at 100,", StringComparison.Ordinal) + Accept).Findings, finding => finding.Check.Name == "stale-accept");
    }

    [Fact]
    public void Where_nothing_fits_no_reading_is_blamed()
    {
        // Seven of twelve trunks with one wrong reading each, each twice as far off as the one before.
        var places = Enumerable.Range(0, 12).Select(index => (X: 90 * Math.Cos(2.4 * index) * Math.Sqrt(index + 0.5), Y: 60 * Math.Sin(2.4 * index) * Math.Sqrt(index + 0.5))).ToArray();
        var lines = places.Select((place, index) => index < 3 ? FormattableString.Invariant($"trunk N{index} at {place.X:0.000}, {place.Y:0.000} mm") : $"trunk N{index}").ToList();
        for (var one = 0; one < 12; one++)
        {
            for (var other = Math.Max(one + 1, 3); other < 12; other++)
            {
                var (dx, dy) = (places[one].X - places[other].X, places[one].Y - places[other].Y);
                var off = other >= 5 && one == other % 3 ? 30 << (other - 5) : 0;
                lines.Add(FormattableString.Invariant($"tape N{one} to N{other} {Math.Sqrt((dx * dx) + (dy * dy)) + off:0.000} mm"));
            }
        }

        var finding = Only(Check.Of(string.Join('\n', lines)));
        Assert.StartsWith("The 63 tape readings among N0, N3, N4", finding.Message, StringComparison.Ordinal);
        Assert.Null(finding.Measured);
    }

    [Fact]
    public void Readings_to_a_trunk_that_is_not_there_and_more_trunks_than_are_sought_at_once_are_no_fault()
    {
        Check.Expect("misfit", Two + "tape A to X 500 mm\ntape X to Y 1 mm\ntape A to A 5 mm");
        var chain = string.Concat(Enumerable.Range(0, TapeSurvey.MostTrunks + 1).Select(index => $"trunk N{index}\n")) + string.Concat(Enumerable.Range(1, TapeSurvey.MostTrunks).Select(index => $"tape N{index - 1} to N{index} 30 mm\ntape N{index} to N{index - 1} 90 mm\n"));
        Check.Expect("misfit", chain);
    }

    [Fact]
    public void Very_many_readings_that_disagree_are_told_without_delay_and_counted()
    {
        var lines = Enumerable.Range(0, 1_500).Select(index => $"trunk N{index} at {index * 40}, {index % 7 * 30} mm").Concat(Enumerable.Range(1, 1_499).Select(index => $"tape N{index - 1} to N{index} 5 mm"));
        Assert.Equal(1_499, Check.Of(string.Join('\n', lines)).Findings.Where(finding => finding.Check.Name == "misfit").Sum(finding => 1 + finding.Untold));
    }

    [Fact]
    public void It_can_be_muted_and_then_no_survey_is_made()
    {
        var assessment = Check.Of($"{Two}tape A to B 600 mm\nmute misfit because \"the tape is old\"");
        Assert.DoesNotContain(assessment.Findings, finding => finding.Check.Name == "misfit");
        Assert.Null(assessment.Tapes);
    }

    [Fact]
    public void Without_readings_or_where_none_were_looked_at_nothing_is_told()
    {
        Assert.Null(Check.Of(Two).Tapes);
        var context = Check.Of($"{Two}tape A to B 600 mm").ToContext();
        Assert.DoesNotContain(Checker.Check(context, [], TestContext.Current.CancellationToken).Findings, finding => finding.Check.Name == "misfit");
    }

    [Fact]
    public void When_the_work_is_ended_the_check_is_not_broken()
    {
        var context = Check.Of($"{Two}tape A to B 600 mm").ToContext() with { Tapes = () => throw new OperationCanceledException() };
        Assert.Throws<OperationCanceledException>(() => Checker.Check(context, [], TestContext.Current.CancellationToken));
    }

    private static Finding Only(Assessment assessment) => Assert.Single(assessment.Findings, finding => finding.Check.Name is "misfit" or "broken-check");
}
