using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

public sealed class DepthReversedTests
{
    [Fact]
    public void Small_before_large_is_reported_where_the_file_chose_large_near()
    {
        var found = Check.Expect("depth-reversed", Check.Head.Replace("eye 200 mm", "eye 200 mm, near", StringComparison.Ordinal) + """
            trunk A at -60, -100 mm diameter 10 mm
            trunk B at 10, 0 mm diameter 20 mm
            trunk C at 80, 100 mm diameter 30 mm
            """, "");
        Assert.Equal(-1, Assert.Single(found).Measured!.Value, 9);
        Assert.Contains("meant as large near and small far, but the thicker trunks stand further back", found[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Large_before_small_is_reported_where_the_file_chose_far()
    {
        Check.Expect("depth-reversed", Check.Head.Replace("eye 200 mm", "eye 200 mm, far", StringComparison.Ordinal) + """
            trunk A at -60, -100 mm diameter 30 mm
            trunk B at 10, 0 mm diameter 20 mm
            trunk C at 80, 100 mm diameter 10 mm
            """, "");
    }

    [Fact]
    public void An_order_as_chosen_is_let_be()
    {
        Check.Expect("depth-reversed", Check.Head.Replace("eye 200 mm", "eye 200 mm, near", StringComparison.Ordinal) + """
            trunk A at -60, -100 mm diameter 30 mm
            trunk B at 10, 0 mm diameter 20 mm
            trunk C at 80, 100 mm diameter 10 mm
            """);
        Check.Expect("depth-reversed", Check.Head.Replace("eye 200 mm", "eye 200 mm, far", StringComparison.Ordinal) + """
            trunk A at -60, -100 mm diameter 10 mm
            trunk B at 10, 0 mm diameter 20 mm
            trunk C at 80, 100 mm diameter 30 mm
            """);
    }

    [Fact]
    public void Where_the_file_chose_nothing_any_order_is_let_be()
    {
        Check.Expect("depth-reversed", """
            trunk A at -60, -100 mm diameter 10 mm
            trunk B at 10, 0 mm diameter 20 mm
            trunk C at 80, 100 mm diameter 30 mm
            """);
    }

    // Three sizes in the order small, large, middle from the front have Spearman's coefficient 1 − 6·6/(3·8) = −0.5.
    [Fact]
    public void At_the_very_limit_it_is_reported_and_under_it_is_not()
    {
        Check.Expect("depth-reversed", Check.Head.Replace("eye 200 mm", "eye 200 mm, near", StringComparison.Ordinal) + """
            trunk A at -60, -100 mm diameter 10 mm
            trunk B at 10, 0 mm diameter 30 mm
            trunk C at 80, 100 mm diameter 20 mm
            tolerance depth-reversed 0.5
            """, "");
        Check.Expect("depth-reversed", Check.Head.Replace("eye 200 mm", "eye 200 mm, near", StringComparison.Ordinal) + """
            trunk A at -60, -100 mm diameter 10 mm
            trunk B at 10, 0 mm diameter 30 mm
            trunk C at 80, 100 mm diameter 20 mm
            tolerance depth-reversed 0.500001
            """);
    }

    [Fact]
    public void It_says_all_of_it_in_whole_sentences()
    {
        var source = Check.Head.Replace("eye 200 mm", "eye 200 mm, near", StringComparison.Ordinal) + """
            trunk A at -60, -100 mm diameter 10 mm
            trunk B at 10, 0 mm diameter 20 mm
            trunk C at 80, 100 mm diameter 30 mm
            """;
        Assert.Equal(
            "The view is meant as large near and small far, but the thicker trunks stand further back: from 1, just as chosen, to -1, just the reverse, the order comes to -1. Bring C and the thick ones forward, or write far if that is what you mean.",
            Check.Message("depth-reversed", source));
    }
}
