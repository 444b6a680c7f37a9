using System.Text;

namespace GroveSpec.Cli.Terminals;

/// <summary>
/// Tells a person who watches what takes so long, on standard error, once a run has gone on for a second. Where nobody
/// watches it does nothing at all.
/// </summary>
internal sealed class Progress : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Pace = TimeSpan.FromMilliseconds(250);

    private readonly Lock gate = new();
    private readonly Terminal terminal;
    private readonly Timer? timer;
    private string now = "";
    private bool isShown;
    private bool isOver;

    /// <summary>Begins to watch the time.</summary>
    /// <param name="terminal">Who may be watching.</param>
    public Progress(Terminal terminal)
    {
        this.terminal = terminal;
        timer = terminal.IsErrorsWatched ? new Timer(_ => Show(), null, Patience, Pace) : null;
    }

    /// <summary>Says what is being done from now on.</summary>
    /// <param name="doing">What, such as "reading salt-bank.grove"; it may hold any text.</param>
    /// <param name="number">Which of several things this is, from 1.</param>
    /// <param name="all">How many there are.</param>
    public void Say(string doing, int number, int all)
    {
        if (timer is null)
        {
            return;
        }

        lock (gate)
        {
            now = all > 1 ? $"{number} of {all}: {HarmlessText.OneLine(doing)}" : HarmlessText.OneLine(doing);
        }
    }

    /// <summary>Takes the line away again, so that what is written next stands alone.</summary>
    public void Dispose()
    {
        if (timer is null)
        {
            return;
        }

        lock (gate)
        {
            isOver = true;
            if (isShown)
            {
                Write("\r\u001b[K");
            }
        }

        timer.Dispose();
    }

    private void Show()
    {
        lock (gate)
        {
            if (!isOver && now.Length > 0)
            {
                isShown = true;
                Write("\r\u001b[K" + HarmlessText.Shorten(now, terminal.Width - 4) + " …");
            }
        }
    }

    private void Write(string text)
    {
        try
        {
            terminal.Errors.Write(Encoding.UTF8.GetBytes(text));
        }
        catch (IOException)
        {
            // Nobody watches any longer.
        }
    }
}
