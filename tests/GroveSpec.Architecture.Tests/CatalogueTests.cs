using GroveSpec.Checks;

namespace GroveSpec.Architecture.Tests;

public sealed class CatalogueTests
{
    [Fact]
    public void Every_check_has_a_page_of_its_name()
    {
        var pages = Directory.GetFiles(Path.Combine(House.Root, "docs", "checks"), "*.md")
            .Select(path => Path.GetFileNameWithoutExtension(path))
            .Where(name => name != "README");
        Assert.Equal(Catalogue.All.Select(check => check.Name).Order(StringComparer.Ordinal), pages.Order(StringComparer.Ordinal));
        foreach (var check in Catalogue.All)
        {
            Assert.StartsWith($"# {check.Name}\n", File.ReadAllText(Path.Combine(House.Root, check.Page)), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Every_check_of_the_composition_has_a_rule_and_tests_of_its_name()
    {
        var tests = House.SourcesBelow(Path.Combine(House.Root, "tests", "GroveSpec.Checks.Tests")).Select(source => source.Stem).ToHashSet(StringComparer.Ordinal);
        foreach (var check in Catalogue.All.Where(check => check.IsComposition))
        {
            var name = string.Concat(check.Name.Split('-').Select(part => char.ToUpperInvariant(part[0]) + part[1..]));
            Assert.True(File.Exists(Path.Combine(House.Root, "src", "GroveSpec.Checks", "Rules", name + ".cs")), $"{check.Name} has no rule {name}.cs");
            Assert.True(tests.Contains(name + "Tests"), $"{check.Name} has no tests {name}Tests.cs");
        }
    }

    [Fact]
    public void Every_rule_is_in_the_catalogue()
    {
        var names = Catalogue.All.Select(check => check.Name.Replace("-", "", StringComparison.Ordinal)).ToHashSet(StringComparer.OrdinalIgnoreCase);
        foreach (var source in House.SourcesOf("Checks").Where(source => source.Folders == "GroveSpec.Checks.Rules" && source.Code.Contains(": IRule", StringComparison.Ordinal)))
        {
            Assert.Contains(source.Stem, names);
        }
    }

    [Fact]
    public void Every_check_says_what_it_means_and_where_its_measure_comes_from()
    {
        Assert.Equal(Catalogue.All.Length, Catalogue.All.Select(check => check.Name).Distinct(StringComparer.Ordinal).Count());
        foreach (var check in Catalogue.All)
        {
            Assert.Matches("^[a-z]+(-[a-z]+)*$", check.Name);
            Assert.EndsWith(".", check.Meaning, StringComparison.Ordinal);
            Assert.EndsWith(".", check.Explanation, StringComparison.Ordinal);
            Assert.NotEmpty(check.Source);
            Assert.True(check.Limit is null || (check.Limit.Amount >= check.Limit.Smallest && check.Limit.Amount <= check.Limit.Largest), check.Name);
        }
    }
}
