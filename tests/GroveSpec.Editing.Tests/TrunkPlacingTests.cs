using GroveSpec.Binding;
using GroveSpec.Binding.Use;
using GroveSpec.Editing.Placing;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;
using Xunit;

namespace GroveSpec.Editing.Tests;

/// <summary>Trunks that are moved by hand in the plan.</summary>
public sealed class TrunkPlacingTests
{
    // Four at the corners, G read to three of them (at 0, 0) and E to none.
    private const string Taped = """
        trunk A at -100, 0 mm diameter 20 mm
        trunk B at 100, 0 mm diameter 16 mm
        trunk C at 0, 100 mm diameter 12 mm
        trunk E at 0, -90 mm diameter 8 mm
        trunk G diameter 5 mm
        tape A to G 100 mm
        tape B to G 100 mm
        tape C to G 100 mm
        tape A to E 134.5 mm

        """;

    [Theory]
    [InlineData("A")]
    [InlineData("B")]
    [InlineData("C")]
    public void A_trunk_from_which_a_tape_places_another_is_not_moved_and_why_is_said(string name)
    {
        var placement = Move(Taped, name, -90, 20).Placement;

        Assert.True(placement.IsRefused);
        Assert.Empty(placement.Edits);
        Assert.Equal($"Tape readings from {name} place G, which would seem to move with {name}, so {name} stays where it is: write down where G stands first, with survey --write.", placement.Says);
    }

    [Fact]
    public void Several_that_are_placed_from_it_are_named_those_that_are_planned_among_them()
    {
        var placement = Move(Taped + "trunk H diameter 5 mm planned 2031\ntape H to A 100 mm\ntape H to B 100 mm\ntape C to H 100 mm\n", "A", -90, 20).Placement;

        Assert.Equal("Tape readings from A place G and H, which would seem to move with A, so A stays where it is: write down where G and H stand first, with survey --write.", placement.Says);
    }

    [Fact]
    public void A_trunk_that_a_tape_between_places_of_the_file_only_checks_is_moved()
    {
        var (placement, moved) = Move(Taped, "E", 10, -80);

        Assert.False(placement.IsRefused, placement.Says);
        Assert.Equal(Taped.Replace("at 0, -90 mm", "at 10, -80 mm", StringComparison.Ordinal), moved);
    }

    [Fact]
    public void Once_the_others_have_a_place_of_their_own_it_is_moved() =>
        Assert.False(Move(Taped.Replace("trunk G", "trunk G at 0, 0 mm", StringComparison.Ordinal), "A", -90, 20).Placement.IsRefused);

    [Fact]
    public void A_trunk_with_too_few_readings_to_be_placed_holds_no_other() =>
        Assert.False(Move(Taped.Replace("tape C to G 100 mm\n", "", StringComparison.Ordinal), "A", -90, 20).Placement.IsRefused);

    [Fact]
    public void A_trunk_that_tape_readings_place_is_not_moved() =>
        Assert.Equal("G is placed by tape readings: change those, or write at into its line.", Move(Taped, "G", 0, 0).Placement.Says);

    [Fact]
    public void A_run_that_is_written_out_goes_with_its_foot()
    {
        var (placement, moved) = Move("trunk A at 10, 20 mm   diameter 20 mm   line (10,20,0) (15,22.5,100) (-3,20,240) mm   # the elder\n", "A", 4, 50);

        Assert.Equal("trunk A at 4, 50 mm   diameter 20 mm   line (4,50,0) (9,52.5,100) (-9,50,240) mm   # the elder\n", moved);
        Assert.Equal(2, placement.Edits.Length);
        Assert.Equal("A at 4, 50 mm", placement.Says);
    }

    [Fact]
    public void A_trunk_whose_run_alone_says_where_it_stands_keeps_its_run()
    {
        var (placement, moved) = Move("trunk A diameter 20 mm line (10,20,0) (15,22.5,100) mm crown 80 mm\n", "A", 4, 50);

        Assert.Equal("trunk A diameter 20 mm line (4,50,0) (9,52.5,100) mm crown 80 mm\n", moved);
        Assert.Equal("A at 4, 50 mm", placement.Says);
    }

    [Fact]
    public void A_run_is_shifted_in_inches_for_one_who_works_in_them()
    {
        var moved = Move("trunk A at 1, 2 in diameter 1 in line (1,2,0) (1.5,2,4) in\n", "A", 25.4 * 2, 25.4, UnitSystem.Inch).Moved;

        Assert.Equal("trunk A at 2, 1 in diameter 1 in line (2,1,0) (2.5,1,4) in\n", moved);
    }

    [Fact]
    public void A_trunk_that_is_let_go_where_it_stood_leaves_the_text_as_it_is() =>
        Assert.Empty(Move("trunk A at 10, 20 mm line (10,20,0) (15,22,100) mm\n", "A", 10.2, 19.8).Placement.Edits);

    private static (Placement Placement, string Moved) Move(string trunks, string name, double right, double back, UnitSystem units = UnitSystem.Metric)
    {
        const string Head = "planting \"Quiet corner\"\nhabit group\ncontainer oval 360 x 240 x 40 mm\n";
        var text = Head + trunks;
        var assessment = Assessment.Of("a.grove", SourceText.FromText(text), new NoFiles(), null, units, TestContext.Current.CancellationToken);
        var placement = TrunkPlacing.Move(assessment, name, PlanPoint.FromMillimetres(right, back));
        foreach (var edit in placement.Edits.OrderByDescending(edit => edit.Place.Span.Start))
        {
            text = string.Concat(text.AsSpan(0, edit.Place.Span.Start), edit.NewText, text.AsSpan(edit.Place.Span.End));
        }

        return (placement, text[Head.Length..]);
    }
}
