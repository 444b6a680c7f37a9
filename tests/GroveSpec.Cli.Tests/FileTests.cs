using System.Runtime.Versioning;
using GroveSpec.Cli.Files;

namespace GroveSpec.Cli.Tests;

public sealed class FileTests : IDisposable
{
    private readonly Workplace work = new();

    public void Dispose() => work.Dispose();

    [Fact]
    public void A_folder_is_searched_in_the_order_of_code_units_without_dot_folders_and_links()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Making links needs a right that Windows does not give to everyone.");
        work.Write("grove/b.grove", Plantings.Quiet);
        work.Write("grove/B.grove", Plantings.Quiet);
        work.Write("grove/a/z.grove", Plantings.Quiet);
        work.Write("grove/a.grove", Plantings.Quiet);
        work.Write("grove/.git/c.grove", Plantings.Quiet);
        work.Write("grove/.hidden.grove", Plantings.Quiet);
        work.Write("grove/notes.txt", "no planting");
        work.Write("outside.grove", Plantings.Quiet);
        File.CreateSymbolicLink(work["grove/link.grove"], work["outside.grove"]);
        Directory.CreateSymbolicLink(work["grove/a/round"], work["grove"]);
        var found = InputSearch.Find(["grove"], work.Folder);
        Assert.Empty(found.Troubles);
        Assert.Equal(["grove/B.grove", "grove/a.grove", "grove/a/z.grove", "grove/b.grove"], found.Files.Select(file => file.Name));
    }

    [Fact]
    public void A_file_named_twice_is_read_once()
    {
        work.Write("a.grove", Plantings.Quiet);
        var found = InputSearch.Find(["a.grove", "./a.grove", "."], work.Folder);
        Assert.Single(found.Files);
    }

    [Fact]
    public void A_folder_without_plantings_ends_with_3()
    {
        Directory.CreateDirectory(work["empty"]);
        var answer = work.Run("check", "empty");
        Assert.Equal(ExitStatus.Files, answer.Status);
        Assert.Equal("empty: there is no file in this folder whose name ends in .grove.\n", answer.Errors);
    }

    [Fact]
    public void A_file_larger_than_is_read_is_told_and_never_taken_into_memory()
    {
        using (var large = File.Create(work["large.grove"]))
        {
            // A hole on the disk: it takes no room there, whatever its length.
            large.SetLength(1L << 30);
        }

        // Of this thread alone, which reads the file: other tests run beside this one.
        var before = GC.GetAllocatedBytesForCurrentThread();
        var answer = work.Run("check", "large.grove");
        Assert.Equal(ExitStatus.Files, answer.Status);
        Assert.Contains("large.grove: it is larger than 16 MB", answer.Errors, StringComparison.Ordinal);
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < 1 << 20);
    }

    [Fact]
    public void Standard_input_without_an_end_is_given_up()
    {
        using var terminal = new Terminals.Terminal(() => new Endless(), new MemoryStream(), new MemoryStream());
        Assert.Equal(ExitStatus.Files, GroveProgram.Run(["check", "-"], terminal));
    }

    [Fact]
    public void An_output_that_is_the_input_is_refused_by_any_name()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Making links needs a right that Windows does not give to everyone.");
        work.Write("a.grove", Plantings.Quiet);
        File.CreateSymbolicLink(work["link.grove"], work["a.grove"]);
        foreach (var output in new[] { "a.grove", "./a.grove", "link.grove", work["a.grove"] })
        {
            var answer = work.Run("check", "a.grove", "--output", output);
            Assert.Equal(ExitStatus.Usage, answer.Status);
            Assert.Equal(Plantings.Quiet, work.Read("a.grove"));
        }
    }

    [Fact]
    public void An_output_replaces_what_was_there_and_leaves_nothing_else()
    {
        work.Write("a.grove", Plantings.Quiet);
        work.Write("found.json", new string('x', 100_000));
        Assert.Equal(ExitStatus.Good, work.Run("check", "a.grove", "--json", "--output", "found.json").Status);
        Assert.StartsWith("{", work.Read("found.json"), StringComparison.Ordinal);
        Assert.Equal(["a.grove", "found.json"], Directory.GetFileSystemEntries(work.Folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void An_output_through_a_link_writes_what_the_link_leads_to()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Making links needs a right that Windows does not give to everyone.");
        work.Write("a.grove", Plantings.Quiet);
        work.Write("there/real.json", "old");
        File.CreateSymbolicLink(work["found.json"], work["there/real.json"]);
        Assert.Equal(ExitStatus.Good, work.Run("check", "a.grove", "--json", "--output", "found.json").Status);
        Assert.NotNull(new FileInfo(work["found.json"]).LinkTarget);
        Assert.StartsWith("{", work.Read("there/real.json"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("gone/found.json", "there is no such folder")]
    [InlineData("a.grove/found.json", "there is no such folder")]
    [InlineData("folder", "it is a folder")]
    public void An_output_that_cannot_be_ends_with_3(string output, string why)
    {
        work.Write("a.grove", Plantings.Quiet);
        Directory.CreateDirectory(work["folder"]);
        var answer = work.Run("check", "a.grove", "--json", "--output", output);
        Assert.Equal(ExitStatus.Files, answer.Status);
        Assert.Contains(why, answer.Errors, StringComparison.Ordinal);
        Assert.Empty(answer.Output);
    }

    [Fact]
    public void A_full_disk_ends_with_3()
    {
        Assert.SkipWhen(!File.Exists("/dev/full"), "This system has no /dev/full.");
        work.Write("a.grove", Plantings.Quiet);
        var answer = work.Run("check", "a.grove", "--json", "--output", "/dev/full");
        Assert.Equal(ExitStatus.Files, answer.Status);
        Assert.Equal("/dev/full: it cannot be written: the disk is full.\n", answer.Errors);
    }

    [Fact]
    [UnsupportedOSPlatform("windows")]
    public void A_protected_file_is_not_replaced()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows() || Environment.IsPrivilegedProcess, "The superuser and Windows know no such protection.");
        work.Write("a.grove", Plantings.Quiet);
        work.Write("found.json", "kept");
        File.SetUnixFileMode(work["found.json"], UnixFileMode.UserRead);
        Assert.Equal(ExitStatus.Files, work.Run("check", "a.grove", "--json", "--output", "found.json").Status);
        Assert.Equal("kept", work.Read("found.json"));
    }

    [Fact]
    public void Many_runs_that_write_one_file_leave_one_whole_result()
    {
        work.Write("a.grove", Plantings.InLine);
        var whole = work.Run("check", "a.grove", "--json").Output;
        Parallel.For(0, 40, _ => Assert.Equal(ExitStatus.Good, work.Run("check", "a.grove", "--json", "--output", "found.json").Status));
        Assert.Equal(whole, work.Read("found.json"));
        Assert.Equal(2, Directory.GetFileSystemEntries(work.Folder).Length);
    }

    [Fact]
    public void A_name_that_no_file_can_have_is_told()
    {
        Assert.Equal(ExitStatus.Files, work.Run("check", "a\0b").Status);
        Assert.Equal(ExitStatus.Files, work.Run("check", "").Status);
        Assert.Equal(ExitStatus.Files, work.Run("check", new string('n', 5000)).Status);
    }

    [Fact]
    public void A_pipe_in_a_folder_is_not_waited_for()
    {
        Assert.SkipWhen(!OperatingSystem.IsLinux(), "Pipes are made by mkfifo.");
        using var made = System.Diagnostics.Process.Start("mkfifo", [work["pipe.grove"]]);
        made.WaitForExit();
        work.Write("a.grove", Plantings.Quiet);
        Assert.Equal(["./a.grove"], InputSearch.Find(["."], work.Folder).Files.Select(file => file.Name));
    }

    [Fact]
    public async Task A_named_pipe_is_told_and_not_waited_for_on_either_side()
    {
        Assert.SkipWhen(!OperatingSystem.IsLinux(), "Pipes are made by mkfifo.");
        using var made = System.Diagnostics.Process.Start("mkfifo", [work["pipe.grove"]]);
        await made.WaitForExitAsync(TestContext.Current.CancellationToken);
        work.Write("a.grove", Plantings.Quiet);
        var read = await Soon("check", "pipe.grove");
        Assert.Equal(ExitStatus.Files, read.Status);
        Assert.Equal("pipe.grove: it cannot be read: it is a named pipe, into which nobody may ever write. Lead it into standard input, and name that: - < PIPE.\n", read.Errors);
        var written = await Soon("draw", "a.grove", "--format", "svg", "--output", "pipe.grove");
        Assert.Equal(ExitStatus.Files, written.Status);
        Assert.Equal("pipe.grove: it cannot be written: it is a named pipe, from which nobody may ever read. Lead standard output into it instead: > PIPE.\n", written.Errors);

        // Waiting for a pipe would not end at all; the minute only lets the test fail instead of hanging.
        Task<Answer> Soon(params string[] words) => Task.Run(() => work.Run(words), TestContext.Current.CancellationToken).WaitAsync(TimeSpan.FromMinutes(1), TestContext.Current.CancellationToken);
    }

    private sealed class Endless : Stream
    {
        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position { get => 0; set => throw new NotSupportedException(); }

        public override int Read(byte[] buffer, int offset, int count)
        {
            Array.Fill(buffer, (byte)' ', offset, count);
            return count;
        }

        public override void Flush()
        {
        }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
