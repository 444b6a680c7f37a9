using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

public sealed class NearRimTests
{
    [Fact]
    public void Bark_close_to_the_rim_is_reported_with_the_room_that_is_left()
    {
        var found = Check.Expect("near-rim", """
            trunk A at 285, 0 mm diameter 20 mm
            """, "A");
        Assert.Contains("A leaves only 5 mm between its bark and the rim. Move it 5 mm or more inward", Assert.Single(found).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Bark_with_room_is_let_be()
    {
        Check.Expect("near-rim", """
            trunk A at 200, 0 mm diameter 20 mm
            """);
    }

    [Fact]
    public void Room_of_just_the_limit_is_let_be_and_a_nanometre_less_is_reported()
    {
        Check.Expect("near-rim", """
            trunk A at 280, 0 mm diameter 20 mm
            """);
        Check.Expect("near-rim", """
            trunk A at 280.000001, 0 mm diameter 20 mm
            """, "A");
    }

    [Fact]
    public void Bark_past_the_rim_is_told_by_off_container_alone()
    {
        Check.Expect("near-rim", """
            trunk A at 295, 0 mm diameter 20 mm
            """);
        Check.Expect("off-container", """
            trunk A at 295, 0 mm diameter 20 mm
            """, "A");
    }
}
