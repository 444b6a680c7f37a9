using System.Diagnostics;
using GroveSpec.Binding.Use;
using Xunit;

namespace GroveSpec.Binding.Tests.Use;

public sealed class FolderFilesTests : IDisposable
{
    private readonly string root = Directory.CreateTempSubdirectory("grove").FullName;
    private readonly string main;

    public FolderFilesTests()
    {
        Directory.CreateDirectory(Path.Combine(root, "in", "lib"));
        File.WriteAllText(Path.Combine(root, "secret.grove"), "role secret { }");
        File.WriteAllText(Path.Combine(root, "in", "lib", "roles.grove"), "role lee { }");
        main = Path.Combine(root, "in", "main.grove");
    }

    public void Dispose() => Directory.Delete(root, recursive: true);

    [Fact]
    public void A_file_below_the_folder_is_read()
    {
        var found = Assert.IsType<FileReading.Found>(new FolderFiles().Read(main, "lib/roles.grove"));
        Assert.Equal("role lee { }", found.Text.Content);
    }

    [Fact]
    public void A_file_is_found_from_the_file_that_uses_it_and_not_from_the_working_folder()
    {
        var found = Assert.IsType<FileReading.Found>(new FolderFiles().Read(Path.Combine(root, "in", "lib", "x.grove"), "roles.grove"));
        Assert.EndsWith("roles.grove", found.Identity, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_file_is_missing() => Assert.IsType<FileReading.Missing>(new FolderFiles().Read(main, "none.grove"));

    [Fact]
    public void A_link_out_of_the_folder_is_not_followed()
    {
        File.CreateSymbolicLink(Path.Combine(root, "in", "out.grove"), Path.Combine(root, "secret.grove"));
        Directory.CreateSymbolicLink(Path.Combine(root, "in", "up"), "..");
        Assert.IsType<FileReading.Outside>(new FolderFiles().Read(main, "out.grove"));
        Assert.IsType<FileReading.Outside>(new FolderFiles().Read(main, "up/secret.grove"));
    }

    [Fact]
    public void A_link_within_the_folder_is_followed()
    {
        File.CreateSymbolicLink(Path.Combine(root, "in", "short.grove"), "lib/roles.grove");
        var found = Assert.IsType<FileReading.Found>(new FolderFiles().Read(main, "short.grove"));
        var straight = Assert.IsType<FileReading.Found>(new FolderFiles().Read(main, "lib/roles.grove"));
        Assert.Equal(straight.Identity, found.Identity);
    }

    [Fact]
    public void A_link_to_itself_is_missing()
    {
        File.CreateSymbolicLink(Path.Combine(root, "in", "loop.grove"), "loop.grove");
        Assert.IsType<FileReading.Missing>(new FolderFiles().Read(main, "loop.grove"));
    }

    [Fact]
    public void A_folder_is_no_file() => Assert.Equal("a folder", Assert.IsType<FileReading.NotAFile>(new FolderFiles().Read(main, "lib")).What);

    [Fact]
    public void A_pipe_is_not_waited_for()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Named pipes are made with the mkfifo of Linux.");
        using var made = Process.Start("mkfifo", Path.Combine(root, "in", "pipe.grove"));
        made.WaitForExit();
        Assert.Equal("a pipe", Assert.IsType<FileReading.NotAFile>(new FolderFiles().Read(main, "pipe.grove")).What);
    }

    [Fact]
    public void A_device_is_no_file()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "The device is one of Linux.");
        Assert.Equal("a device", Assert.IsType<FileReading.NotAFile>(new FolderFiles().Read("/dev/main.grove", "zero")).What);
    }

    [Fact]
    public void A_file_of_a_gigabyte_is_too_large()
    {
        using (var stream = File.Create(Path.Combine(root, "in", "huge.grove")))
        {
            stream.SetLength(1L << 30);
        }

        Assert.IsType<FileReading.TooLarge>(new FolderFiles().Read(main, "huge.grove"));
    }

    [Fact]
    public void Four_megabytes_are_read_and_one_byte_more_is_not()
    {
        File.WriteAllBytes(Path.Combine(root, "in", "full.grove"), new byte[FolderFiles.LargestFile]);
        File.WriteAllBytes(Path.Combine(root, "in", "over.grove"), new byte[FolderFiles.LargestFile + 1]);
        Assert.IsType<FileReading.Found>(new FolderFiles().Read(main, "full.grove"));
        Assert.IsType<FileReading.TooLarge>(new FolderFiles().Read(main, "over.grove"));
    }

    [Fact]
    public void Paths_that_no_disk_can_hold_are_no_fault()
    {
        Assert.IsNotType<FileReading.Found>(new FolderFiles().Read(main, new string('a', 5000)));
        Assert.IsNotType<FileReading.Found>(new FolderFiles().Read(main, "a\0b"));
        Assert.IsNotType<FileReading.Found>(new FolderFiles().Read("", "none"));
    }
}
