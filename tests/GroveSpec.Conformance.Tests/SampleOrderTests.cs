using GroveSpec.Checks;
using GroveSpec.Conformance.Tests.Drawn;
using GroveSpec.Conformance.Tests.Outside;
using Xunit;

namespace GroveSpec.Conformance.Tests;

/// <summary>The order in which a grower writes the lines of one kind changes nothing that is found of a sample.</summary>
public sealed class SampleOrderTests
{
    private static readonly string[] Kinds = ["trunk ", "role ", "task ", "accept ", "tolerance "];

    [Fact]
    public void Trunks_roles_and_tasks_in_any_order_have_the_same_findings_in_every_sample()
    {
        Assert.All(SampleFile.All, sample =>
        {
            var text = File.ReadAllText(sample.Path);
            var expected = Told(sample, text);
            for (var seed = 1; seed <= 5; seed++)
            {
                var shuffled = Shuffled(text, seed);
                Assert.NotEqual(text, shuffled);
                Assert.Equal(expected, Told(sample, shuffled));
            }
        });
    }

    /// <summary>The text with the lines of each kind dealt anew over the places of that kind.</summary>
    private static string Shuffled(string text, int seed)
    {
        var random = new Random(seed);
        var lines = text.Split('\n');
        foreach (var kind in Kinds)
        {
            // A statement that runs on over several lines stays where it is.
            var places = Enumerable.Range(0, lines.Length).Where(index => lines[index].StartsWith(kind, StringComparison.Ordinal) && lines[index].Count(sign => sign == '{') == lines[index].Count(sign => sign == '}')).ToArray();
            var dealt = places.Select(index => lines[index]).ToArray();
            random.Shuffle(dealt);
            for (var place = 0; place < places.Length; place++)
            {
                lines[places[place]] = dealt[place];
            }
        }

        return string.Join('\n', lines);
    }

    /// <summary>What is found beside the sample, where the files it uses are.</summary>
    private static List<string> Told(SampleFile sample, string text)
    {
        using var scratch = new ScratchFolder();
        var path = "";
        foreach (var file in Directory.GetFiles(Path.GetDirectoryName(sample.Path)!, "*.grove"))
        {
            var copy = scratch.Write(Path.GetFileName(file), file == sample.Path ? text : File.ReadAllText(file));
            path = file == sample.Path ? copy : path;
        }

        var assessment = Plates.AssessmentOfFile(path);
        return
        [
            .. assessment.Findings.Where(finding => finding.Check.IsComposition).Select(Say),

            // Findings of the file itself come in the order of its lines.
            .. assessment.Findings.Where(finding => !finding.Check.IsComposition).Select(Say).Order(StringComparer.Ordinal),
            .. assessment.Accepted.Select(finding => "accepted " + Say(finding)),
        ];

        static string Say(Finding finding) => $"{finding.Check.Name}: {string.Join(' ', finding.Trunks)} {finding.Measured:R} {finding.Limit:R} {finding.Message}";
    }
}
