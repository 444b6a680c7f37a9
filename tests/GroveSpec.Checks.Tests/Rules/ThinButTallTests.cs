using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

public sealed class ThinButTallTests
{
    [Fact]
    public void A_trunk_that_overtops_wider_ones_is_reported()
    {
        var found = Check.Expect("thin-but-tall", """
            trunk A at 0, 0 mm diameter 25 mm height 184 mm
            trunk B at 90, 40 mm diameter 26 mm height 183 mm
            trunk T at -70, 60 mm diameter 12 mm height 200 mm
            """, "T");
        Assert.Contains("T is tall but thin: 200 mm high, 1st of 3, but 12 mm thick, 3rd, while A and B are wider and yet shorter", Assert.Single(found).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_thin_trunk_that_is_short_is_let_be()
    {
        Check.Expect("thin-but-tall", """
            trunk A at 0, 0 mm diameter 25 mm height 184 mm
            trunk B at 90, 40 mm diameter 26 mm height 183 mm
            trunk T at -70, 60 mm diameter 12 mm height 90 mm
            """);
    }

    [Fact]
    public void Sizes_that_differ_by_just_the_limit_count_and_a_nanometre_less_does_not()
    {
        Check.Expect("thin-but-tall", """
            trunk A at 0, 0 mm diameter 25 mm height 184 mm
            trunk B at 90, 40 mm diameter 26 mm height 183 mm
            trunk T at -70, 60 mm diameter 23 mm height 200 mm
            """, "T");
        Check.Expect("thin-but-tall", """
            trunk A at 0, 0 mm diameter 25 mm height 184 mm
            trunk B at 90, 40 mm diameter 26 mm height 183 mm
            trunk T at -70, 60 mm diameter 23.000001 mm height 200 mm
            """);
    }

    [Fact]
    public void A_role_of_form_slender_explains_it()
    {
        Check.Expect("thin-but-tall", """
            trunk A at 0, 0 mm diameter 25 mm height 184 mm
            trunk B at 90, 40 mm diameter 26 mm height 183 mm
            trunk T at -70, 60 mm diameter 12 mm height 200 mm role lanky
            role lanky { form slender }
            """);
    }
}
