using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class UnknownSpeciesTests
{
    [Fact]
    public void A_species_without_a_profile_is_a_hint()
    {
        var assessment = Planted.Under("species larix-kampferi");
        var finding = assessment.Only("unknown-species");
        Assert.Equal("larix-kampferi", assessment.Underlined(finding));
        Assert.Contains("perhaps larix-kaempferi is meant", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_species_of_a_trunk_without_a_profile_is_a_hint()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm species apple");
        var finding = assessment.Only("unknown-species");
        Assert.Equal("apple", assessment.Underlined(finding));
        Assert.Contains("No profile describes apple", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_built_in_species_is_known() => Assert.Empty(Planted.Under("species larix-kaempferi").Found("unknown-species"));

    [Fact]
    public void A_species_with_a_profile_in_the_file_is_known() => Assert.Empty(Planted.Under("species apple\nprofile apple { leaves deciduous from memory }").Found("unknown-species"));
}
