using System.Text;
using GroveSpec.Cli.Terminals;

namespace GroveSpec.Cli.Tests;

/// <summary>A folder of its own for a test, and the program run in it.</summary>
internal sealed class Workplace : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("grovespec-test-");

    public string Folder => folder.FullName;

    public string this[string name] => Path.Combine(Folder, name);

    public string Write(string name, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(this[name])!);
        File.WriteAllBytes(this[name], GroveSpec.Syntax.Text.SourceText.ToBytes(text));
        return this[name];
    }

    public string Read(string name) => File.ReadAllText(this[name]);

    public Answer Run(params string[] words) => Run("", new Watching(), words);

    public Answer RunWithInput(string input, params string[] words) => Run(input, new Watching(), words);

    public Answer RunWatched(params string[] words) => Run("", new Watching(Output: true, Errors: true, Colour: true), words);

    public Answer Run(string input, Watching watching, params string[] words)
    {
        using var output = new MemoryStream();
        using var errors = new MemoryStream();
        using var terminal = new Terminal(() => new MemoryStream(Encoding.UTF8.GetBytes(input)), output, errors)
        {
            Folder = Folder,
            IsOutputWatched = watching.Output,
            IsErrorsWatched = watching.Errors,
            IsColourWelcome = watching.Colour,
        };
        var status = GroveProgram.Run(words, terminal);
        return new Answer(status, output.ToArray(), Encoding.UTF8.GetString(errors.ToArray()));
    }

    public void Dispose()
    {
        if (!OperatingSystem.IsWindows())
        {
            // A test may have taken away the right to clear up after it.
            foreach (var one in folder.EnumerateDirectories("*", SearchOption.TopDirectoryOnly).Where(one => one.LinkTarget is null))
            {
                File.SetUnixFileMode(one.FullName, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
            }
        }

        folder.Delete(recursive: true);
    }

    /// <summary>Who watches which stream.</summary>
    internal readonly record struct Watching(bool Output = false, bool Errors = false, bool Colour = false);
}
