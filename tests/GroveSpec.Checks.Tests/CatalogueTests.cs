using Xunit;

namespace GroveSpec.Checks.Tests;

public sealed class CatalogueTests
{
    [Fact]
    public void Every_check_has_a_name_of_its_own_and_says_what_it_means_and_where_it_comes_from()
    {
        Assert.Equal(Catalogue.All.Length, Catalogue.All.Select(check => check.Name).Distinct().Count());
        Assert.All(Catalogue.All, check =>
        {
            Assert.Matches("^[a-z]+(-[a-z]+)*$", check.Name);
            Assert.NotEmpty(check.Meaning);
            Assert.NotEmpty(check.Explanation);
            Assert.NotEmpty(check.Source);
            Assert.Same(check, Catalogue.Find(check.Name));
            Assert.True(check.Limit is not { } limit || (limit.Smallest <= limit.Amount && limit.Amount <= limit.Largest));
        });
    }

    [Fact]
    public void Every_check_of_composition_has_a_rule_and_a_test_class_of_its_name()
    {
        Assert.All(Catalogue.All.Where(check => check.IsComposition), check =>
        {
            var name = string.Concat(check.Name.Split('-').Select(word => char.ToUpperInvariant(word[0]) + word[1..]));
            Assert.NotNull(typeof(Catalogue).Assembly.GetType($"GroveSpec.Checks.Rules.{name}"));
            Assert.NotNull(typeof(CatalogueTests).Assembly.GetType($"GroveSpec.Checks.Tests.Rules.{name}Tests"));
        });
    }
}
