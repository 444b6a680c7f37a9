using System.ComponentModel;
using System.Diagnostics;
using Xunit;

namespace GroveSpec.Syntax.Tests;

public sealed class RegenerationTests
{
    [Fact]
    public void The_committed_parser_is_what_the_grammar_gives()
    {
        Assert.SkipUnless(Answers("java", "-version"), "Java is missing, so the parser cannot be made anew from the grammar.");
        Assert.SkipUnless(Answers("npm", "--version"), "npm is missing, so the generator of the parser cannot be fetched.");
        var target = Directory.CreateTempSubdirectory("grove-parser");
        try
        {
            var (status, output) = Run("sh", Path.Combine(Repository.Root, "grammar", "regenerate.sh"), target.FullName);
            Assert.SkipWhen(status != 0 && output.Contains("npm", StringComparison.OrdinalIgnoreCase), "npm could not fetch the generator of the parser.");
            Assert.True(status == 0, output);
            var committed = Path.Combine(Repository.Root, "src", "GroveSpec.Syntax", "Parsing", "Generated", "Grove.cs");
            Assert.Equal(File.ReadAllText(committed).ReplaceLineEndings(), File.ReadAllText(Path.Combine(target.FullName, "Grove.cs")).ReplaceLineEndings());
        }
        finally
        {
            target.Delete(recursive: true);
        }
    }

    [Fact]
    public void The_committed_table_of_compositions_is_what_its_script_gives()
    {
        Assert.SkipUnless(Answers("python3", "--version"), "Python is missing, so the table of compositions cannot be made anew.");
        var target = Path.GetTempFileName();
        try
        {
            var (status, output) = Run("python3", Path.Combine(Repository.Root, "grammar", "compositions.py"), target);
            Assert.True(status == 0, output);

            // Another Python may bring another version of Unicode; its compositions are the same by Unicode's stability policy.
            Assert.Equal(WithoutVersion(Path.Combine(Repository.Root, "src", "GroveSpec.Syntax", "Text", "Compositions.cs")), WithoutVersion(target));
        }
        finally
        {
            File.Delete(target);
        }
    }

    [Fact]
    public void Every_word_of_the_vocabulary_has_its_type()
    {
        for (var type = 1; type <= Parsing.Vocabulary.LastWord; type++)
        {
            var word = Parsing.Vocabulary.TextOf(type);
            Assert.Equal($"'{word}'", Parsing.Generated.Grove.DefaultVocabulary.GetLiteralName(type));
            Assert.Equal(type, Parsing.Vocabulary.TypeOf(word));
        }
    }

    private static string[] WithoutVersion(string path) =>
        [.. File.ReadAllLines(path).Where(static line => !line.Contains("/// Unicode ", StringComparison.Ordinal))];

    private static bool Answers(string program, string argument)
    {
        try
        {
            return Run(program, argument).Status == 0;
        }
        catch (Win32Exception)
        {
            return false;
        }
    }

    private static (int Status, string Output) Run(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true, RedirectStandardOutput = true })!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output + errors.Result);
    }
}
