using GroveSpec.Cli.Beginnings;

namespace GroveSpec.Cli.Tests;

public sealed class StartCommandTests : IDisposable
{
    private readonly Workplace work = new();

    public void Dispose() => work.Dispose();

    public static TheoryData<string, int> Wishes()
    {
        var wishes = new TheoryData<string, int>();
        foreach (var habit in new[] { "group", "clump", "raft" })
        {
            for (var trunks = FirstPlanting.FewestTrunks; trunks <= FirstPlanting.MostTrunks; trunks++)
            {
                wishes.Add(habit, trunks);
            }
        }

        return wishes;
    }

    [Theory]
    [MemberData(nameof(Wishes))]
    public void A_first_planting_has_nothing_to_warn_of(string habit, int trunks)
    {
        var text = work.Run("start", "-", "--habit", habit, "--trunks", $"{trunks}", "--species", "larix-kaempferi").Output;
        Assert.Equal(trunks, text.Split('\n').Count(line => line.StartsWith("trunk ", StringComparison.Ordinal)));
        var answer = work.RunWithInput(text, "check", "-", "--strict", "--as", "lines");
        Assert.True(answer.Status == ExitStatus.Good, answer.Output);
    }

    [Fact]
    public void A_first_planting_is_written_under_its_name_and_never_over_another()
    {
        Assert.Equal(ExitStatus.Good, work.Run("start", "salt-bank").Status);
        var text = work.Read("salt-bank.grove");
        Assert.Contains("planting  \"Salt bank\"", text, StringComparison.Ordinal);
        var again = work.Run("start", "salt-bank.grove");
        Assert.Equal(ExitStatus.Files, again.Status);
        Assert.Contains("it is there already, and is left as it is", again.Errors, StringComparison.Ordinal);
        Assert.Equal(text, work.Read("salt-bank.grove"));
    }

    [Fact]
    public void A_link_that_leads_nowhere_is_not_written_through()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Making links needs a right that Windows does not give to everyone.");
        File.CreateSymbolicLink(work["first.grove"], work["elsewhere.grove"]);
        Assert.Equal(ExitStatus.Files, work.Run("start", "first").Status);
        Assert.False(File.Exists(work["elsewhere.grove"]));
    }

    [Fact]
    public void The_same_wishes_give_the_same_bytes() =>
        Assert.Equal(work.Run("start", "-", "--trunks", "9").Bytes, work.Run("start", "-", "--trunks", "9").Bytes);

    [Theory]
    [InlineData("a\"b\\c")]
    [InlineData("nl\nplanting \"x\"")]
    [InlineData("\u202ereversed")]
    [InlineData("#not a remark")]
    public void Any_name_gives_a_file_that_can_be_read(string name)
    {
        Assert.Equal(ExitStatus.Good, work.Run("start", "--", name).Status);
        var answer = work.Run("check", "--strict", "--as", "lines", "--", name + ".grove");
        Assert.True(answer.Status == ExitStatus.Good, answer.Output);
    }

    [Theory]
    [InlineData("--trunks", "2")]
    [InlineData("--trunks", "16")]
    [InlineData("--trunks", "many")]
    [InlineData("--species", "two words")]
    [InlineData("--species", "a\nb")]
    [InlineData("--habit", "hedge")]
    public void A_wish_that_cannot_be_met_is_wrong_usage(string option, string value)
    {
        Assert.Equal(ExitStatus.Usage, work.Run("start", "first", option, value).Status);
        Assert.Empty(Directory.GetFiles(work.Folder));
    }

    [Fact]
    public void One_name_is_needed()
    {
        Assert.Equal(ExitStatus.Usage, work.Run("start").Status);
        Assert.Equal(ExitStatus.Usage, work.Run("start", "a", "b").Status);
    }
}
