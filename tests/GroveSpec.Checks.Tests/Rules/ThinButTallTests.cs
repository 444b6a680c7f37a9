using GroveSpec.Model.Quantities;
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

    [Fact]
    public void It_says_all_of_it_in_whole_sentences()
    {
        var source = """
            trunk A at 0, 0 mm diameter 25 mm height 184 mm
            trunk B at 90, 40 mm diameter 26 mm height 183 mm
            trunk T at -70, 60 mm diameter 12 mm height 200 mm
            """;
        Assert.Equal(
            "T is tall but thin: 200 mm high, 1st of 3, but 12 mm thick, 3rd, while A and B are wider and yet shorter. Shorten it or let it thicken; if it is meant so, give it a role with form slender.",
            Check.Message("thin-but-tall", source));
        Assert.Equal(
            "T is tall but thin: 7.87 in high, 1st of 3, but 0.47 in thick, 3rd, while A and B are wider and yet shorter. Shorten it or let it thicken; if it is meant so, give it a role with form slender.",
            Check.Message("thin-but-tall", source, UnitSystem.Inch));
    }

    [Fact]
    public void Heights_that_differ_by_just_the_limit_count_and_a_nanometre_less_does_not()
    {
        Check.Expect("thin-but-tall", """
            trunk A at 0, 0 mm diameter 25 mm height 184 mm
            trunk B at 90, 40 mm diameter 26 mm height 183 mm
            trunk T at -70, 60 mm diameter 12 mm height 200 mm
            """, "T");
        Check.Expect("thin-but-tall", """
            trunk A at 0, 0 mm diameter 25 mm height 184 mm
            trunk B at 90, 40 mm diameter 26 mm height 183 mm
            trunk T at -70, 60 mm diameter 12 mm height 199.999999 mm
            """);
    }

    [Fact]
    public void A_role_of_form_stout_of_the_others_explains_it()
    {
        Check.Expect("thin-but-tall", """
            trunk A at 0, 0 mm diameter 25 mm height 184 mm role squat
            trunk B at 90, 40 mm diameter 26 mm height 183 mm role squat
            trunk T at -70, 60 mm diameter 12 mm height 200 mm
            role squat { form stout }
            """);
    }

    [Fact]
    public void A_role_of_form_stout_of_one_of_the_others_explains_that_one_alone()
    {
        var found = Check.Expect("thin-but-tall", """
            trunk A at 0, 0 mm diameter 25 mm height 184 mm
            trunk B at 90, 40 mm diameter 26 mm height 183 mm
            trunk C at 90, -40 mm diameter 27 mm height 182 mm role squat
            trunk T at -70, 60 mm diameter 12 mm height 200 mm
            role squat { form stout }
            """, "T");
        Assert.Contains("while A and B are wider and yet shorter", Assert.Single(found).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("balanced", "plain", "plain")]
    [InlineData("stout", "squat", "plain")]
    [InlineData("slender", "plain", "lanky")]
    public void A_form_that_says_something_else_explains_nothing(string form, string ofThin, string ofWide)
    {
        // Stout on the tall one, and slender on the wide ones, are not what is seen.
        Check.Expect("thin-but-tall", $$"""
            trunk A at 0, 0 mm diameter 25 mm height 184 mm role {{ofWide}}
            trunk B at 90, 40 mm diameter 26 mm height 183 mm role {{ofWide}}
            trunk T at -70, 60 mm diameter 12 mm height 200 mm role {{ofThin}}
            role {{(ofThin == "plain" ? ofWide : ofThin)}} { form {{form}} }
            {{(ofThin == ofWide ? "" : "role plain { form balanced }")}}
            """, "T");
    }
}
