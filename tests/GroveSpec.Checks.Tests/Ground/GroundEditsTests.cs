using System.Globalization;
using GroveSpec.Checks.Ground;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;
using Xunit;

namespace GroveSpec.Checks.Tests.Ground;

/// <summary>What is written of a spot, and what is not.</summary>
public sealed class GroundEditsTests
{
    /// <summary>G has no "at": it is placed by its distances from A, B and C.</summary>
    private const string Taped = """
        trunk A at -51, -38 mm diameter 42 mm height 465 mm
        trunk B at 39, 22 mm diameter 26 mm height 395 mm
        trunk C at 27, 83 mm diameter 20 mm height 325 mm
        trunk E at 160, -60 mm diameter 15 mm height 190 mm
        trunk G diameter 11 mm height 215 mm
        tape A to G 175.8 mm
        tape B to G 67.7 mm
        tape C to G 71.8 mm

        """;

    private const string Three = """
        trunk A at -100, 10 mm diameter 30 mm height 300 mm
        trunk B at 0, 50 mm diameter 22 mm height 210 mm
        trunk C at 100, -40 mm diameter 15 mm height 150 mm

        """;

    [Fact]
    public void A_trunk_from_which_a_tape_places_another_is_not_written_and_why_is_said()
    {
        var answer = Found(Taped, "A");
        Assert.NotEmpty(answer.Spots);
        Assert.All(answer.Spots, spot => Assert.Empty(spot.Edits));
        Assert.Contains("Tape readings from A place G, which would seem to move with A, so nothing is offered to be written: write down where G stands first, with survey --write.", answer.Notes);
    }

    [Fact]
    public void A_trunk_that_no_tape_places_another_from_is_written() =>
        Assert.All(Found(Taped, "E").Spots, spot => Assert.NotEmpty(spot.Edits));

    [Fact]
    public void A_trunk_that_tape_readings_place_is_not_written()
    {
        var answer = Found(Taped, "G");
        Assert.All(answer.Spots, spot => Assert.Empty(spot.Edits));
        Assert.Contains("The file gives G no \"at\" of its own, so nothing is offered to be written: write down where it stands first, with survey --write.", answer.Notes);
    }

    [Fact]
    public void A_trunk_that_tapes_between_places_that_are_written_only_check_is_written() =>
        Assert.All(Found(Three + "tape A to B 107.7 mm\n", "A").Spots, spot => Assert.NotEmpty(spot.Edits));

    [Theory]
    [InlineData("trunk D diameter 9 mm height 80 mm planned spring 2028   # to come", "trunk D   {0} diameter 9 mm height 80 mm planned spring 2028   # to come")]
    [InlineData("trunk D-1   diameter 9 mm height 80 mm   planned 2028", "trunk D-1   {0}   diameter 9 mm height 80 mm   planned 2028")]
    public void A_planned_trunk_without_a_place_gets_one_in_its_own_line(string line, string expected)
    {
        var before = Check.Of(Three + line + "\n");
        var answer = FreeGround.Find(before.ToContext(), new(null, null, before.Planting.Trunks[^1].Name), cancellation: TestContext.Current.CancellationToken);
        var place = answer.Spots[0].Place;
        var written = FormattableString.Invariant($"at {place.X.Millimetres}, {place.Y.Millimetres} mm");
        Assert.Equal(before.Tree.Text.Content.Replace(line, expected.Replace("{0}", written, StringComparison.Ordinal), StringComparison.Ordinal), TextEdits.Apply(before.Tree.Text.Content, answer.Spots[0].Edits));
        Assert.DoesNotContain(answer.Notes, note => note.Contains("\"at\"", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("trunk D at 5, mm diameter 9 mm height 80 mm planned spring 2028\n")]
    [InlineData("trunk D at diameter 9 mm height 80 mm planned spring 2028\n")]
    public void A_place_that_could_not_be_read_gets_no_second_beside_it(string line)
    {
        var answer = Found(Three + line, "D");
        Assert.All(answer.Spots, spot => Assert.Empty(spot.Edits));
        Assert.Contains("The line of D could not be read whole, so nothing is offered to be written: put that right first.", answer.Notes);
    }

    [Fact]
    public void A_planned_trunk_with_tape_readings_of_its_own_is_not_written()
    {
        var answer = Found(Three + "trunk D diameter 9 mm height 80 mm planned spring 2028\ntape D to A 70 mm\n", "D");
        Assert.All(answer.Spots, spot => Assert.Empty(spot.Edits));
        Assert.Contains("Tape readings say where D goes, so nothing is offered to be written: take them out of the file first.", answer.Notes);
    }

    [Theory]
    [InlineData("trunk D diameter 11 mm line (150,60,0) (160,60,60) (162,65,90) mm", "trunk D diameter 11 mm {1}")]
    [InlineData("trunk D at 150, 60 mm diameter 11 mm line (150,60,0) (160,60,60) (162,65,90) mm", "trunk D {0} diameter 11 mm {1}")]
    public void A_run_that_is_written_out_goes_with_its_foot(string line, string expected)
    {
        var before = Check.Of(Three + line + "\n");
        var answer = FreeGround.Find(before.ToContext(), new(null, null, "D"), cancellation: TestContext.Current.CancellationToken);
        var (x, y) = (answer.Spots[0].Place.X.Millimetres, answer.Spots[0].Place.Y.Millimetres);
        var written = string.Format(CultureInfo.InvariantCulture, expected, FormattableString.Invariant($"at {x}, {y} mm"), FormattableString.Invariant($"line ({x},{y},0) ({x + 10},{y},60) ({x + 12},{y + 5},90) mm"));
        Assert.Equal(before.Tree.Text.Content.Replace(line, written, StringComparison.Ordinal), TextEdits.Apply(before.Tree.Text.Content, answer.Spots[0].Edits));
    }

    [Fact]
    public void A_spot_where_a_planned_trunk_would_be_touched_comes_last_and_is_named()
    {
        const string source = """
            planting "Planned stands in the spot"
            habit group
            container oval 300 x 200 x 40 mm
            viewed from 180 deg, at 1200 mm, eye 160 mm, near
            trunk A at -40, -30 mm diameter 30 mm height 300 mm
            trunk B at -70, 10 mm diameter 22 mm height 230 mm

            """;
        var wish = new GroundWish(Length.FromMillimetres(16), null, null);
        var spots = Found(source, wish).Spots;
        var best = spots[0].Place;

        // Both are 8 mm from middle to bark: at 16 mm they touch, a thousandth farther they do not.
        foreach (var (off, isTouched) in new[] { (4.0, true), (16.0, true), (16.001, false) })
        {
            var planned = FormattableString.Invariant($"trunk P at {best.X.Millimetres + off}, {best.Y.Millimetres} mm diameter 16 mm height 160 mm planned spring 2028\n");
            var answer = Found(source + planned, wish);
            Assert.Equal(isTouched ? [spots[1].Place, spots[2].Place, best] : spots.Select(spot => spot.Place), answer.Spots.Select(spot => spot.Place));
            Assert.Equal(isTouched, answer.Notes.Any(note => note.StartsWith("At spot 3 Q would touch P, which is planned ", StringComparison.Ordinal)));
            Assert.Equal(isTouched ? 1 : 0, answer.Notes.Count(note => note.Contains("would touch", StringComparison.Ordinal)));
        }
    }

    private static GroundAnswer Found(string source, string of) => Found(source, new GroundWish(null, null, of));

    private static GroundAnswer Found(string source, GroundWish wish)
    {
        var assessment = Check.Of(source);
        return GroundReview.Find(assessment.ToContext(), assessment.Tree, wish, cancellation: TestContext.Current.CancellationToken);
    }
}
