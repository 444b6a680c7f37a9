using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class NoPlantingTests
{
    [Fact]
    public void A_file_that_names_its_planting_is_not_told() => Assert.Empty(Planted.Under("trunk A at 0, 0 mm").Found("no-planting"));

    [Fact]
    public void Trunks_without_a_planting_are_told_with_the_line_to_add()
    {
        var assessment = Planted.Of("trunk A at 0, 0 mm\n");
        var finding = assessment.Only("no-planting");
        Assert.Equal(0, finding.Place.Span.Start);
        Assert.Empty(Planted.Of(assessment.Mended(finding)).Found("no-planting"));
    }

    [Fact]
    public void A_file_of_roles_needs_no_planting() => Assert.Empty(Planted.Of("role lee { rank 1 }").Found("no-planting"));
}
