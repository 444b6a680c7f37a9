using System.Text.RegularExpressions;
using GroveSpec.Cli.Commands;

namespace GroveSpec.Cli.Tests;

public sealed class CommandLineTests : IDisposable
{
    private readonly Workplace work = new();

    public void Dispose() => work.Dispose();

    [Fact]
    public void Nothing_asked_ends_with_2_and_the_help_on_standard_error()
    {
        var answer = work.Run();
        Assert.Equal(ExitStatus.Usage, answer.Status);
        Assert.Empty(answer.Output);
        Assert.Equal(work.Run("--help").Output, answer.Errors);
    }

    [Fact]
    public void The_version_is_a_number_in_three_parts() =>
        Assert.Matches(@"^grovespec \d+\.\d+\.\d+\n$", work.Run("--version").Output);

    [Fact]
    public void Help_names_every_command_and_shows_a_planting_that_reads_without_an_error()
    {
        var help = work.Run("--help");
        Assert.Equal(ExitStatus.Good, help.Status);
        foreach (var name in CommandList.Names)
        {
            Assert.Contains($"\n  {name} ", help.Output, StringComparison.Ordinal);
        }

        var planting = string.Join('\n', help.Output.Split('\n')
            .Where(line => Regex.IsMatch(line, "^  (planting|container|viewed|trunk) "))
            .Select(line => line[2..])) + "\n";
        Assert.Equal(6, planting.Count(letter => letter == '\n'));
        var checkedPlanting = work.RunWithInput(planting, "check", "-", "--strict", "--as", "lines");
        Assert.True(checkedPlanting.Status == ExitStatus.Good, checkedPlanting.Output);
    }

    [Fact]
    public void The_help_of_a_command_tells_of_each_of_its_options_and_no_other()
    {
        foreach (var name in CommandList.Names)
        {
            var command = CommandList.Make(name)!;
            var help = work.Run(name, "--help");
            Assert.Equal(ExitStatus.Good, help.Status);
            Assert.Equal(help.Output, work.Run("help", name).Output);
            Assert.StartsWith($"grovespec {name} ", help.Output, StringComparison.Ordinal);
            var told = Regex.Matches(help.Output, "(?m)^--[a-z]+").Select(match => match.Value).Order(StringComparer.Ordinal);
            Assert.Equal(command.Options.Select(option => option.Name).Append("--help").Order(StringComparer.Ordinal), told);
            Assert.All(help.Output.Split('\n'), line => Assert.True(line.Length <= 90, line));
        }
    }

    [Theory]
    [InlineData("There is no command chekc; did you mean check?", "chekc")]
    [InlineData("Say first what to do with bank.grove: grovespec check bank.grove, for one.", "bank.grove")]
    [InlineData("check has no option --strcit; did you mean --strict?. A file of that name is written after --.", "check", "a.grove", "--strcit")]
    [InlineData("--on needs a value behind it: --on DATE.", "check", "a.grove", "--on")]
    [InlineData("--on needs a day such as 2027-05-31; “2027-02-30” is none.", "check", "a.grove", "--on", "2027-02-30")]
    [InlineData("--units can be metric or inch; “metrik” is none of them. Did you mean metric?", "check", "a.grove", "--units", "metrik")]
    [InlineData("--as can be text, lines, json or sarif; “xml” is none of them.", "check", "a.grove", "--as", "xml")]
    [InlineData("--json and --as sarif ask for two forms at once.", "check", "a.grove", "--json", "--as", "sarif")]
    [InlineData("Name a .grove file, a folder that holds some, or - for standard input.", "check")]
    [InlineData("Standard input (-) can be read only once.", "check", "-", "-")]
    [InlineData("--output is given more than once, or with more than one value.", "check", "a.grove", "--output", "a", "--output", "b")]
    public void Wrong_usage_ends_with_2_and_says_what_would_be_right(string message, params string[] words)
    {
        var answer = work.Run(words);
        Assert.Equal(ExitStatus.Usage, answer.Status);
        Assert.Empty(answer.Output);
        Assert.Equal(message, answer.Errors.Split('\n')[0]);
        Assert.Contains("--help tells more.", answer.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void All_behind_two_dashes_are_names()
    {
        work.Write("--strict", Plantings.InLine);
        work.Write("--", Plantings.InLine);
        var answer = work.Run("check", "--as", "lines", "--", "--strict", "--");
        Assert.Equal(ExitStatus.Good, answer.Status);
        Assert.Contains("\n--:", answer.Output, StringComparison.Ordinal);
        Assert.StartsWith("--strict:", answer.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("@more.grove")]
    [InlineData("[x].grove")]
    [InlineData("check")]
    [InlineData("a=b:c.grove")]
    [InlineData("two words.grove")]
    public void A_name_is_a_name_whatever_it_looks_like(string name)
    {
        work.Write(name, Plantings.InLine);
        var answer = work.Run("check", name, "--as", "lines");
        Assert.Equal(ExitStatus.Good, answer.Status);
        Assert.StartsWith(name + ":", answer.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_value_may_follow_an_equals_sign()
    {
        work.Write("fence.grove", Plantings.InLine);
        Assert.StartsWith("fence.grove:", work.Run("check", "--as=lines", "fence.grove").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_repeated_from_the_command_line_is_harmless()
    {
        var answer = work.Run("check", "a\u001b[2J\n\u202e.grove");
        Assert.Equal(ExitStatus.Files, answer.Status);
        Assert.DoesNotContain('\u001b', answer.Errors);
        Assert.DoesNotContain('\u202e', answer.Errors);
        Assert.Single(answer.Errors.TrimEnd('\n').Split('\n'));
    }
}
