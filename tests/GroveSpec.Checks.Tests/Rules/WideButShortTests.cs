using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

public sealed class WideButShortTests
{
    [Fact]
    public void A_trunk_that_is_wider_and_yet_shorter_is_reported()
    {
        var found = Check.Expect("wide-but-short", """
            trunk W at 0, 0 mm diameter 25 mm height 184 mm
            trunk T at 90, 40 mm diameter 15 mm height 200 mm
            """, "W");
        Assert.Contains("W is wide but short: 25 mm thick, 1st of 2, but 184 mm high, 2nd, while T is thinner and yet taller", Assert.Single(found).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wide_trunk_that_is_tall_is_let_be()
    {
        Check.Expect("wide-but-short", """
            trunk W at 0, 0 mm diameter 25 mm height 260 mm
            trunk T at 90, 40 mm diameter 15 mm height 200 mm
            """);
    }

    [Fact]
    public void Sizes_that_differ_by_just_the_limit_count_and_a_nanometre_less_does_not()
    {
        Check.Expect("wide-but-short", """
            trunk W at 0, 0 mm diameter 25 mm height 184 mm
            trunk T at 90, 40 mm diameter 23 mm height 200 mm
            """, "W");
        Check.Expect("wide-but-short", """
            trunk W at 0, 0 mm diameter 25 mm height 184 mm
            trunk T at 90, 40 mm diameter 23.000001 mm height 200 mm
            """);
    }

    [Fact]
    public void A_role_of_form_stout_explains_it()
    {
        Check.Expect("wide-but-short", """
            trunk W at 0, 0 mm diameter 25 mm height 184 mm role squat
            trunk T at 90, 40 mm diameter 15 mm height 200 mm
            role squat { form stout }
            """);
    }

    [Fact]
    public void A_role_of_form_slender_of_the_other_explains_it()
    {
        Check.Expect("wide-but-short", """
            trunk W at 0, 0 mm diameter 25 mm height 184 mm
            trunk T at 90, 40 mm diameter 15 mm height 200 mm role lanky
            role lanky { form slender }
            """);
    }

    [Fact]
    public void A_balanced_role_explains_nothing()
    {
        Check.Expect("wide-but-short", """
            trunk W at 0, 0 mm diameter 25 mm height 184 mm role plain
            trunk T at 90, 40 mm diameter 15 mm height 200 mm
            role plain { form balanced }
            """, "W");
    }

    [Fact]
    public void One_odd_trunk_among_five_is_one_finding()
    {
        Check.Expect("wide-but-short", """
            trunk A at 0, 0 mm diameter 40 mm height 150 mm
            trunk B at 90, 40 mm diameter 30 mm height 400 mm
            trunk C at -80, 50 mm diameter 25 mm height 340 mm
            trunk D at 20, -90 mm diameter 20 mm height 290 mm
            trunk E at 150, -60 mm diameter 15 mm height 240 mm
            """, "A");
        Check.Expect("thin-but-tall", """
            trunk A at 0, 0 mm diameter 40 mm height 150 mm
            trunk B at 90, 40 mm diameter 30 mm height 400 mm
            trunk C at -80, 50 mm diameter 25 mm height 340 mm
            """);
    }

    [Fact]
    public void It_says_all_of_it_in_whole_sentences()
    {
        var source = """
            trunk W at 0, 0 mm diameter 25 mm height 184 mm
            trunk T at 90, 40 mm diameter 15 mm height 200 mm
            """;
        Assert.Equal(
            "W is wide but short: 25 mm thick, 1st of 2, but 184 mm high, 2nd, while T is thinner and yet taller. Let it run up or hold T back; if it is meant so, give it a role with form stout.",
            Check.Message("wide-but-short", source));
        Assert.Equal(
            "W is wide but short: 0.98 in thick, 1st of 2, but 7.24 in high, 2nd, while T is thinner and yet taller. Let it run up or hold T back; if it is meant so, give it a role with form stout.",
            Check.Message("wide-but-short", source, UnitSystem.Inch));
    }

    [Fact]
    public void Heights_that_differ_by_just_the_limit_count_and_a_nanometre_less_does_not()
    {
        Check.Expect("wide-but-short", """
            trunk W at 0, 0 mm diameter 25 mm height 184 mm
            trunk T at 90, 40 mm diameter 15 mm height 200 mm
            """, "W");
        Check.Expect("wide-but-short", """
            trunk W at 0, 0 mm diameter 25 mm height 184.000001 mm
            trunk T at 90, 40 mm diameter 15 mm height 200 mm
            """);
    }

    [Fact]
    public void A_role_of_form_slender_of_one_of_the_others_explains_that_one_alone()
    {
        var found = Check.Expect("wide-but-short", """
            trunk W at 0, 0 mm diameter 25 mm height 150 mm
            trunk S at -90, 40 mm diameter 14 mm height 190 mm
            trunk T at 90, 40 mm diameter 15 mm height 200 mm role lanky
            role lanky { form slender }
            """, "W");
        Assert.Contains("while S is thinner and yet taller", Assert.Single(found).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_kind_has_a_limit_of_its_own_and_the_other_moves_neither()
    {
        // W differs from T by 10 % in height; nothing else is out of order.
        const string source = """
            trunk W at 0, 0 mm diameter 25 mm height 180 mm
            trunk T at 90, 40 mm diameter 15 mm height 200 mm

            """;
        Check.Expect("wide-but-short", source + "tolerance thin-but-tall 40 %", "W");
        Check.Expect("wide-but-short", source + "tolerance thin-but-tall 2 %", "W");
        Check.Expect("wide-but-short", source + "tolerance wide-but-short 11 %");
        Check.Expect("thin-but-tall", source + "tolerance wide-but-short 11 %");
    }

    [Fact]
    public void With_limits_apart_two_trunks_are_neither_told_twice_nor_passed_over()
    {
        // W and Y are wide against both others; W and S differ by 10 % only. A limit of 20 % for tall and thin, taken alone,
        // would leave W nothing but T, of which T is the odder, and T would be told against W as well.
        const string source = """
            trunk Y at 0, 90 mm diameter 40 mm height 135 mm
            trunk W at 0, 0 mm diameter 25 mm height 140 mm
            trunk S at -90, 40 mm diameter 22.5 mm height 210 mm
            trunk T at 90, 40 mm diameter 15 mm height 200 mm
            tolerance thin-but-tall 20 %

            """;
        Check.Expect("wide-but-short", source, "W", "Y");
        Check.Expect("thin-but-tall", source);
    }
}
