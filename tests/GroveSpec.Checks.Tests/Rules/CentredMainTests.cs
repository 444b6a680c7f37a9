using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

public sealed class CentredMainTests
{
    [Fact]
    public void The_largest_on_the_centre_line_is_reported()
    {
        var found = Check.Expect("centred-main", """
            trunk M at 12, 0 mm diameter 40 mm
            trunk A at -120, 60 mm diameter 20 mm
            """, "M");
        Assert.Contains("M, the largest trunk, stands 12 mm to the viewer's right of the container's centre line, 2 % of its width of 600 mm. Move it 37 mm or more further to the right", Assert.Single(found).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_largest_well_off_the_middle_is_let_be()
    {
        Check.Expect("centred-main", """
            trunk M at 110, 0 mm diameter 40 mm
            trunk A at -120, 60 mm diameter 20 mm
            """);
    }

    [Fact]
    public void At_the_very_limit_it_is_reported_and_a_nanometre_beyond_it_is_not()
    {
        Check.Expect("centred-main", """
            trunk M at 48, 0 mm diameter 40 mm
            trunk A at -120, 60 mm diameter 20 mm
            """, "M");
        Check.Expect("centred-main", """
            trunk M at 48.000001, 0 mm diameter 40 mm
            trunk A at -120, 60 mm diameter 20 mm
            """);
        Check.Expect("centred-main", """
            trunk M at -48, 0 mm diameter 40 mm
            trunk A at -120, 60 mm diameter 20 mm
            """, "M");
        Check.Expect("centred-main", """
            trunk M at -48.000001, 0 mm diameter 40 mm
            trunk A at -120, 60 mm diameter 20 mm
            """);
    }

    [Fact]
    public void From_the_side_the_depth_of_the_container_is_its_width()
    {
        var side = Check.Head.Replace("from 180 deg", "from 90 deg", StringComparison.Ordinal);
        Check.Expect("centred-main", side + "trunk M at 200, 32 mm diameter 40 mm\ntrunk A at -120, 60 mm diameter 20 mm", "M");
        Check.Expect("centred-main", side + "trunk M at 0, 33 mm diameter 40 mm\ntrunk A at -120, 60 mm diameter 20 mm");
    }

    [Fact]
    public void It_says_all_of_it_in_whole_sentences()
    {
        var source = """
            trunk M at 12, 0 mm diameter 40 mm
            trunk A at -120, 60 mm diameter 20 mm
            """;
        Assert.Equal(
            "M, the largest trunk, stands 12 mm to the viewer's right of the container's centre line, 2 % of its width of 600 mm. Move it 37 mm or more further to the right, or let it stand with a reason.",
            Check.Message("centred-main", source));
        Assert.Equal(
            "M, the largest trunk, stands 0.47 in to the viewer's right of the container's centre line, 2 % of its width of 23.62 in. Move it 1.46 in or more further to the right, or let it stand with a reason.",
            Check.Message("centred-main", source, UnitSystem.Inch));
    }
}
