using System.Diagnostics;
using System.IO.Compression;
using System.Runtime.InteropServices;
using System.Text;
using System.Xml.Linq;

namespace GroveSpec.Cli.Tests;

/// <summary>The program as a .NET tool: packed, installed from a folder into a place of its own, and run there.</summary>
public sealed class PackedToolTests(PackedToolTests.Tool tool) : IClassFixture<PackedToolTests.Tool>
{
    [Fact]
    public void The_package_says_what_it_is_and_holds_nothing_that_only_its_makers_read()
    {
        using var package = ZipFile.OpenRead(Directory.GetFiles(tool.Work.Folder, "grovespec.*.nupkg").Single());
        var names = package.Entries.Select(entry => entry.FullName).ToList();
        Assert.DoesNotContain(names, name => Path.GetExtension(name) is ".pdb" or ".cs" || name.Contains("Tests", StringComparison.Ordinal));
        Assert.DoesNotContain(names, name => name.EndsWith(".xml", StringComparison.Ordinal) && Path.GetFileName(name) is not ("DotnetToolSettings.xml" or "[Content_Types].xml"));
        Assert.Equal(
            ["linux-arm", "linux-arm64", "linux-musl-arm64", "linux-musl-x64", "linux-x64", "osx", "win-arm64", "win-x64"],
            names.Where(name => name.Contains("/runtimes/", StringComparison.Ordinal)).Select(name => name.Split('/')[4]).Distinct().Order(StringComparer.Ordinal));
        Assert.Contains("README.md", names);
        Assert.Contains("LICENSE", names);

        using var stream = package.GetEntry("grovespec.nuspec")!.Open();
        var metadata = XDocument.Load(stream).Root!.Elements().Single();
        string Of(string name) => metadata.Elements().Single(element => element.Name.LocalName == name).Value;
        Assert.Equal("grovespec", Of("id"));
        Assert.Equal(GroveProgram.Version, Of("version"));
        Assert.Equal("MIT", Of("license"));
        Assert.Equal("README.md", Of("readme"));
        Assert.DoesNotContain(metadata.Elements(), element => element.Name.LocalName is "repository" or "projectUrl");
    }

    [Fact]
    public void No_file_of_ours_in_the_package_tells_where_it_was_built()
    {
        Assert.SkipWhen(tool.Configuration != "Release", "Only what is built for release leaves out where it was built.");
        using var package = ZipFile.OpenRead(Directory.GetFiles(tool.Work.Folder, "grovespec.*.nupkg").Single());
        var root = Encoding.UTF8.GetBytes(Project.Path("src"));
        foreach (var entry in package.Entries.Where(entry => Path.GetFileName(entry.FullName).StartsWith("grovespec", StringComparison.OrdinalIgnoreCase)))
        {
            using var stream = entry.Open();
            using var content = new MemoryStream();
            stream.CopyTo(content);
            Assert.True(content.ToArray().AsSpan().IndexOf(root) < 0, entry.FullName);
        }
    }

    [Fact]
    public void The_installed_tool_checks_and_ends_as_documented()
    {
        tool.Work.Write("quiet.grove", Plantings.Quiet);
        tool.Work.Write("broken.grove", Plantings.Broken);
        Assert.Equal((0, $"grovespec {GroveProgram.Version}\n"), tool.Run("--version"));
        Assert.Equal((0, tool.Work.Run("check", "quiet.grove").Output), tool.Run("check", "quiet.grove"));
        Assert.Equal((1, tool.Work.Run("check", "broken.grove").Output), tool.Run("check", "broken.grove"));
        Assert.Equal(2, tool.Run("chekc").Status);
        Assert.Equal(3, tool.Run("check", "gone.grove").Status);
    }

    [Fact]
    public void The_installed_tool_draws_and_makes_a_book_with_the_faces_it_carries()
    {
        tool.Work.Write("a.grove", Plantings.InLine);
        foreach (var output in new[] { "a.svg", "a.png", "a.pdf" })
        {
            Assert.Equal(0, tool.Run("draw", "a.grove", "--output", output).Status);
        }

        Assert.Equal(0, tool.Run("book", "a.grove", "--output", "a.html").Status);
        Assert.Equal(tool.Work.Run("draw", "a.grove").Bytes, File.ReadAllBytes(tool.Work["a.svg"]));
        Assert.Equal(tool.Work.Run("draw", "a.grove", "--format", "png").Bytes, File.ReadAllBytes(tool.Work["a.png"]));
        Assert.True(File.ReadAllBytes(tool.Work["a.pdf"]).AsSpan().IndexOf("EBGaramond"u8) > 0);
        Assert.Equal(tool.Work.Run("book", "a.grove").Bytes, File.ReadAllBytes(tool.Work["a.html"]));
    }

    /// <summary>The tool, packed from what was built and installed once for all tests here.</summary>
    public sealed class Tool : IDisposable
    {
        private static readonly TimeSpan Patience = TimeSpan.FromMinutes(3);

        /// <summary>Packs and installs it.</summary>
        public Tool()
        {
            Configuration = new DirectoryInfo(AppContext.BaseDirectory).Parent!.Name;
            Dotnet("pack", Project.Path("src/GroveSpec.Cli"), "--no-build", "--configuration", Configuration, "--output", Work.Folder);
            Dotnet("tool", "install", "grovespec", "--tool-path", Work["tool"], "--source", Work.Folder);
        }

        internal Workplace Work { get; } = new();

        internal string Configuration { get; }

        /// <inheritdoc/>
        public void Dispose() => Work.Dispose();

        internal (int Status, string Output) Run(params string[] words)
        {
            var (status, output, _) = Start(Work[OperatingSystem.IsWindows() ? "tool/grovespec.exe" : "tool/grovespec"], words);
            return (status, output);
        }

        private void Dotnet(params string[] words)
        {
            var (status, output, errors) = Start("dotnet", words);
            Assert.True(status == 0, $"dotnet {string.Join(' ', words)} ended with {status}:\n{output}{errors}");
        }

        private (int Status, string Output, string Errors) Start(string program, string[] words)
        {
            var start = new ProcessStartInfo(program, words)
            {
                WorkingDirectory = Work.Folder,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
                StandardOutputEncoding = Encoding.UTF8,
            };

            // The tool finds .NET where these tests found it, wherever it is installed.
            start.Environment["DOTNET_ROOT"] = Path.GetFullPath(Path.Combine(RuntimeEnvironment.GetRuntimeDirectory(), "../../.."));
            start.Environment["DOTNET_CLI_TELEMETRY_OPTOUT"] = "1";
            start.Environment["DOTNET_NOLOGO"] = "1";
            using var process = Process.Start(start)!;
            var output = process.StandardOutput.ReadToEndAsync();
            var errors = process.StandardError.ReadToEndAsync();
            if (!process.WaitForExit(Patience))
            {
                process.Kill(entireProcessTree: true);
                Assert.Fail($"{program} {string.Join(' ', words)} did not end.");
            }

            process.WaitForExit();
            return (process.ExitCode, output.GetAwaiter().GetResult(), errors.GetAwaiter().GetResult());
        }
    }
}
