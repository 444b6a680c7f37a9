using System.Xml.Linq;
using GroveSpec.Binding;
using GroveSpec.Binding.Use;
using GroveSpec.Checks;
using GroveSpec.Editing.Explaining;
using GroveSpec.Syntax.Text;
using Xunit;

namespace GroveSpec.Editing.Tests;

public sealed class ExplainerTests
{
    public static TheoryData<string> Checks => [.. Catalogue.All.Where(check => check.IsComposition).Select(check => check.Name)];

    [Theory]
    [MemberData(nameof(Checks))]
    public void A_check_of_the_composition_is_explained_with_its_meaning_its_source_and_a_small_drawing(string check)
    {
        var text = $"mute {check} because \"so\"\n";
        var known = Explainer.At(Assessment.Of("a.grove", SourceText.FromText(text), new NoFiles(), cancellation: TestContext.Current.CancellationToken), 6)!;

        Assert.Equal($"Check {check}", known.Title);
        Assert.Equal(check, text.Substring(known.Span.Start, known.Span.Length));
        Assert.Contains(Catalogue.Find(check)!.Meaning, known.Lines);
        Assert.Contains(known.Lines, line => line.StartsWith("Source: ", StringComparison.Ordinal));
        var picture = XDocument.Parse(known.Picture!);
        Assert.Contains(picture.Descendants(), element => (string?)element.Attribute("stroke") == "#c4582f");
    }
}
