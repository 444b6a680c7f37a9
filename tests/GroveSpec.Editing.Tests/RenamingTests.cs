using GroveSpec.Editing.Names;
using GroveSpec.Syntax.Text;
using Xunit;

namespace GroveSpec.Editing.Tests;

public sealed class RenamingTests
{
    [Fact]
    public void A_refusal_of_a_long_name_cuts_it_between_characters()
    {
        var refusal = Renaming.Refusal(new NameUse(NameKind.Trunk, "A", new TextSpan(0, 1), IsDeclaration: true), new string('a', 39) + "🌲 and more", [])!;

        Assert.Contains($"\"{new string('a', 39)}…\"", refusal, StringComparison.Ordinal);
    }

    /// <summary>"after leaf-out" means the tree's leaves, whatever tasks there are.</summary>
    [Theory]
    [InlineData("leaf-out", false)]
    [InlineData("W2", true)]
    [InlineData("Spring-wiring", true)]
    public void A_task_cannot_bear_the_name_of_a_stage_of_the_year(string name, bool isGood) =>
        Assert.Equal(isGood, Renaming.Refusal(new NameUse(NameKind.Task, "W1", new TextSpan(0, 2), IsDeclaration: true), name, []) is null);
}
