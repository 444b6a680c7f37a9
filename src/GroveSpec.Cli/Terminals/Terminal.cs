using System.Text;

namespace GroveSpec.Cli.Terminals;

/// <summary>What the program reads from and speaks to: three streams and what is known of who is there. Tests make their own.</summary>
internal sealed class Terminal : IDisposable
{
    /// <summary>The width that is taken where nobody can be asked, in characters.</summary>
    public const int UsualWidth = 100;

    private Stream? input;
    private readonly Func<Stream> openInput;

    /// <summary>Makes one.</summary>
    /// <param name="input">Opens what is read as <c>-</c>; asked for at most once.</param>
    /// <param name="output">Where results go.</param>
    /// <param name="errors">Where messages about the run itself go.</param>
    public Terminal(Func<Stream> input, Stream output, Stream errors)
    {
        openInput = input;
        Output = output;
        Errors = errors;
    }

    /// <summary>Standard input.</summary>
    public Stream Input => input ??= openInput();

    /// <summary>Standard output, not buffered.</summary>
    public Stream Output { get; }

    /// <summary>Standard error, not buffered.</summary>
    public Stream Errors { get; }

    /// <summary>Whether a person watches standard output.</summary>
    public bool IsOutputWatched { get; init; }

    /// <summary>Whether a person watches standard error.</summary>
    public bool IsErrorsWatched { get; init; }

    /// <summary>Whether colour is welcome on standard output: a person watches and has not declined it.</summary>
    public bool IsColourWelcome { get; init; }

    /// <summary>How many characters fit into a line of standard output; at least 40.</summary>
    public int Width { get; init; } = UsualWidth;

    /// <summary>The folder that relative paths start from.</summary>
    public string Folder { get; init; } = Environment.CurrentDirectory;

    /// <summary>The terminal this process was started from.</summary>
    /// <returns>The terminal.</returns>
    public static Terminal OfProcess()
    {
        var isWatched = !Console.IsOutputRedirected;
        return new Terminal(Console.OpenStandardInput, Opened(Console.OpenStandardOutput), Opened(Console.OpenStandardError))
        {
            IsOutputWatched = isWatched,
            IsErrorsWatched = !Console.IsErrorRedirected,

            // NO_COLOR is the convention of no-color.org: set and not empty means no colour.
            IsColourWelcome = isWatched
                && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"))
                && Environment.GetEnvironmentVariable("TERM") != "dumb",
            Width = isWatched ? Math.Clamp(WidthOfWindow(), 40, 140) : UsualWidth,
        };
    }

    /// <summary>Writes a line of text to standard error; nothing happens where nobody listens.</summary>
    /// <param name="line">The line, without its end.</param>
    public void Tell(string line)
    {
        try
        {
            Errors.Write(Encoding.UTF8.GetBytes(line + "\n"));
            Errors.Flush();
        }
        catch (Exception closed) when (closed is IOException or UnauthorizedAccessException or ObjectDisposedException)
        {
            // There is nobody left to tell that nobody can be told.
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        input?.Dispose();
        Output.Dispose();
        Errors.Dispose();
    }

    /// <summary>Opens a stream to write to, or stands in for one that was closed before the program began.</summary>
    /// <param name="open">Opens it.</param>
    /// <returns>The stream; a stand-in tells whoever writes to it that it is closed.</returns>
    internal static Stream Opened(Func<Stream> open)
    {
        try
        {
            return open();
        }
        catch (Exception closed) when (closed is IOException or UnauthorizedAccessException)
        {
            var standIn = new MemoryStream();
            standIn.Dispose();
            return standIn;
        }
    }

    private static int WidthOfWindow()
    {
        try
        {
            return Console.WindowWidth is var width and > 0 ? width : UsualWidth;
        }
        catch (IOException)
        {
            return UsualWidth;
        }
    }
}
