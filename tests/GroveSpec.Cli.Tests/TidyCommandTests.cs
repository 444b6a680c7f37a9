using System.Runtime.Versioning;

namespace GroveSpec.Cli.Tests;

public sealed class TidyCommandTests : IDisposable
{
    private const string Untidy = "planting \"Three\"   # a remark\ntrunk  A at 1,2   diameter 30   height 300 mm\n\n\ntrunk B at 40 , -12 mm diameter 20 mm height 200 mm";

    private readonly Workplace work = new();

    public void Dispose() => work.Dispose();

    [Fact]
    public void It_prints_and_leaves_the_file_alone()
    {
        work.Write("a.grove", Untidy);
        var answer = work.Run("tidy", "a.grove");
        Assert.Equal(ExitStatus.Good, answer.Status);
        Assert.Contains("# a remark", answer.Output, StringComparison.Ordinal);
        Assert.NotEqual(Untidy, answer.Output);
        Assert.Equal(Untidy, work.Read("a.grove"));
    }

    [Fact]
    public void Written_back_it_is_what_was_printed_and_stays_so()
    {
        work.Write("a.grove", Untidy);
        var printed = work.Run("tidy", "a.grove").Output;
        Assert.Equal(ExitStatus.Good, work.Run("tidy", "a.grove", "--write").Status);
        Assert.Equal(printed, work.Read("a.grove"));
        File.SetLastWriteTimeUtc(work["a.grove"], DateTime.UnixEpoch);
        Assert.Equal(ExitStatus.Good, work.Run("tidy", "a.grove", "--write").Status);
        Assert.Equal(DateTime.UnixEpoch, File.GetLastWriteTimeUtc(work["a.grove"]));
    }

    [Fact]
    public void Telling_names_what_would_change_and_writes_nothing()
    {
        work.Write("a.grove", Untidy);
        work.Write("b.grove", work.Run("tidy", "a.grove").Output);
        var answer = work.Run("tidy", ".", "--tell");
        Assert.Equal(ExitStatus.Findings, answer.Status);
        Assert.Equal("./a.grove\n", answer.Output);
        Assert.Equal(Untidy, work.Read("a.grove"));
        Assert.Equal(ExitStatus.Good, work.Run("tidy", "b.grove", "--tell").Status);
    }

    [Fact]
    public void Bytes_that_are_no_text_stay_as_they_are()
    {
        byte[] bytes = [.. "# caf"u8, 0xE9, .. "\ntrunk A at 1,2 mm diameter 30 mm height 300 mm\n"u8];
        File.WriteAllBytes(work["a.grove"], bytes);
        work.Run("tidy", "a.grove", "--write");
        Assert.Equal(bytes[..7], File.ReadAllBytes(work["a.grove"])[..7]);
    }

    [Fact]
    [UnsupportedOSPlatform("windows")]
    public void Permissions_and_links_are_kept()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows knows neither in this way.");
        work.Write("real.grove", Untidy);
        const UnixFileMode Private = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;
        File.SetUnixFileMode(work["real.grove"], Private);
        File.CreateSymbolicLink(work["link.grove"], work["real.grove"]);
        Assert.Equal(ExitStatus.Good, work.Run("tidy", "link.grove", "--write").Status);
        Assert.NotNull(new FileInfo(work["link.grove"]).LinkTarget);
        Assert.NotEqual(Untidy, work.Read("real.grove"));
        Assert.Equal(Private, File.GetUnixFileMode(work["real.grove"]));
    }

    [Fact]
    public void What_cannot_be_read_stays_and_is_told()
    {
        work.Write("a.grove", Untidy + "\ntrnk ?? 12\n");
        var answer = work.Run("tidy", "a.grove", "--write");
        Assert.Equal(ExitStatus.Findings, answer.Status);
        Assert.Contains("trnk ?? 12", work.Read("a.grove"), StringComparison.Ordinal);
        Assert.Contains("cannot be read", answer.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Several_go_to_a_folder_and_never_into_one_stream()
    {
        work.Write("in/a.grove", Untidy);
        work.Write("in/b/c.grove", Untidy);
        Assert.Equal(ExitStatus.Usage, work.Run("tidy", "in").Status);
        Assert.Equal(ExitStatus.Good, work.Run("tidy", "in", "--output", "out").Status);
        Assert.Equal(work.Run("tidy", "in/a.grove").Output, work.Read("out/b/c.grove"));
        Assert.True(File.Exists(work["out/a.grove"]));
        Assert.Equal(ExitStatus.Usage, work.Run("tidy", "in", "--output", "in").Status);
    }

    [Fact]
    public void Standard_input_goes_to_standard_output_only()
    {
        Assert.Equal(work.RunWithInput(Untidy, "tidy", "-").Output, work.RunWithInput(work.RunWithInput(Untidy, "tidy", "-").Output, "tidy", "-").Output);
        Assert.Equal(ExitStatus.Usage, work.RunWithInput(Untidy, "tidy", "-", "--write").Status);
        Assert.Equal(ExitStatus.Usage, work.RunWithInput(Untidy, "tidy", "-", "--tell", "--write").Status);
    }
}
