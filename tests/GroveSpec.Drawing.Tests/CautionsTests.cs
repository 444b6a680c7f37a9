using System.Text.RegularExpressions;
using GroveSpec.Drawing.Tests.Timeline;
using GroveSpec.Model;
using GroveSpec.Model.Tasks;
using Xunit;

namespace GroveSpec.Drawing.Tests;

public sealed partial class CautionsTests
{
    [Theory]
    // EPA label 71096-11 and the NLM entry on lime sulphur: corrosive, irreversible eye damage, hydrogen sulphide with acids.
    [InlineData("whiten with lime sulphur", "never near an acid")]
    [InlineData("Lime Sulfur on the deadwood", "Some labels forbid it at home")]
    [InlineData("carve the stump", "protect eyes, ears and lungs")]
    [InlineData("jin on the top", "trained in power tools")]
    [InlineData("send it to the spring exhibition", "ask your local plant-health authority before any of them leaves the garden")]
    public void What_a_growers_own_words_name_brings_its_caution(string words, string caution) =>
        Assert.Contains(Of(words), said => said.Contains(caution, StringComparison.Ordinal));

    [Theory]
    [InlineData("injinia", "power tools")]
    [InlineData("remove the moss", "leaves the garden")]
    [InlineData("water", "sulphur")]
    public void Other_words_do_not(string words, string caution) =>
        Assert.DoesNotContain(Of(words), said => said.Contains(caution, StringComparison.Ordinal));

    [Fact]
    public void A_note_is_looked_through_too()
    {
        var task = SaltBank.Task("X1", TaskKind.Seal, new TaskTarget.OnAll()) with { Note = new("then lime sulphur", new Origin("test")) };
        Assert.Contains(Cautions.Of(SaltBank.Planting(), [task]), said => said.StartsWith("Lime sulphur is corrosive", StringComparison.Ordinal));
    }

    [Fact]
    public void None_names_a_dose() =>
        Assert.All(Of("carve, lime sulphur, move, seal"), said => Assert.DoesNotMatch(Doses(), said));

    [Fact]
    public void Without_work_there_are_none() => Assert.Empty(Cautions.Of(SaltBank.Planting(), []));

    private static IEnumerable<string> Of(string words) =>
        Cautions.Of(SaltBank.Planting(), [SaltBank.Task("X1", TaskKind.Other, new TaskTarget.OnAll()) with { OtherKind = words }]);

    [GeneratedRegex(@"\d\s*(?:ml|g|l|%|drops|parts)\b")]
    private static partial Regex Doses();
}
