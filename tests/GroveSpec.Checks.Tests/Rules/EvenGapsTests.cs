using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

public sealed class EvenGapsTests
{
    [Fact]
    public void Two_gaps_alike_are_reported_once_with_both_lengths()
    {
        var found = Check.Expect("even-gaps", """
            trunk M at 0, 0 mm diameter 20 mm
            trunk A at 97, 0 mm diameter 14 mm
            trunk B at 0, 100 mm diameter 10 mm
            """, "A B M");
        Assert.Contains("M stands as far from A as from B: 97 mm and 100 mm, 3 % apart", Assert.Single(found).Message, StringComparison.Ordinal);
        Assert.Contains("Bring A nearer to M by 5 mm or more", found[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Gaps_well_apart_are_let_be()
    {
        Check.Expect("even-gaps", """
            trunk M at 0, 0 mm diameter 20 mm
            trunk A at 70, 0 mm diameter 14 mm
            trunk B at 0, 100 mm diameter 10 mm
            """);
    }

    [Fact]
    public void Gaps_that_differ_by_just_the_limit_are_let_be_and_a_nanometre_less_is_reported()
    {
        Check.Expect("even-gaps", """
            trunk M at 0, 0 mm diameter 20 mm
            trunk A at 92, 0 mm diameter 14 mm
            trunk B at 0, 100 mm diameter 10 mm
            """);
        Check.Expect("even-gaps", """
            trunk M at 0, 0 mm diameter 20 mm
            trunk A at 92.000001, 0 mm diameter 14 mm
            trunk B at 0, 100 mm diameter 10 mm
            """, "A B M");
    }

    [Fact]
    public void Three_trunks_with_three_equal_gaps_are_one_finding()
    {
        Check.Expect("even-gaps", """
            trunk A at 0, 0 mm diameter 20 mm
            trunk B at 100, 0 mm diameter 14 mm
            trunk C at 50, 86.6 mm diameter 10 mm
            """, "A B C");
    }
}
