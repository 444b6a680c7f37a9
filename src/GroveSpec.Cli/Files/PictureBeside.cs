using GroveSpec.Cli.Commands;
using GroveSpec.Cli.Judging;
using GroveSpec.Cli.Terminals;
using GroveSpec.Publishing.Raster;

namespace GroveSpec.Cli.Files;

/// <summary>The picture that a command writes beside its report, where one is asked for with <c>--picture</c>.</summary>
internal sealed class PictureBeside
{
    private readonly string? path;
    private readonly string subject;
    private readonly PictureFormat form;
    private readonly OutputFolder? folder;
    private readonly InputSearch search;
    private readonly Terminal terminal;

    private PictureBeside(string? path, string subject, PictureFormat form, OutputFolder? folder, InputSearch search, Terminal terminal) =>
        (this.path, this.subject, this.form, this.folder, this.search, this.terminal) = (path, subject, form, folder, search, terminal);

    /// <summary>Whether it goes to standard output, so that nothing else may.</summary>
    public bool IsAlone => path is InputFile.StandardInput;

    /// <summary>Reads what was asked for, and refuses what cannot be.</summary>
    /// <param name="written">What stands behind <c>--picture</c>; null where it was left out.</param>
    /// <param name="subject">What the pictures show, as a part of file names such as "ground".</param>
    /// <param name="report">Where the report goes; null for standard output.</param>
    /// <param name="isJson">Whether the report is for programs.</param>
    /// <param name="search">The files that are read.</param>
    /// <param name="terminal">The terminal.</param>
    /// <returns>The picture.</returns>
    /// <exception cref="UsageException">It cannot be written so.</exception>
    public static PictureBeside Of(string? written, string subject, string? report, bool isJson, InputSearch search, Terminal terminal)
    {
        if (written is "")
        {
            throw new UsageException("--picture needs the name of a file or folder.");
        }

        var form = PictureFile.FormatOf(written);
        if (written is InputFile.StandardInput && (isJson || report is not null || search.Files.Count > 1))
        {
            throw new UsageException("--picture - writes one drawing to standard output, and nothing else then does. Name a file or a folder for --picture.");
        }

        if (written is not (null or InputFile.StandardInput) && search.Files.Count > 1 && Path.GetExtension(written).ToLowerInvariant() is ".svg" or ".png" or ".pdf" && !Directory.Exists(Path.GetFullPath(written, terminal.Folder)))
        {
            throw new UsageException($"{HarmlessText.OneLine(written)} is the name of one picture, and there are {search.Files.Count} plantings; name a folder for them.");
        }

        Delivery.RefuseSame([report, written], search.Files, terminal);
        var folder = written is not (null or InputFile.StandardInput) && OutputFolder.IsMeant(written, terminal.Folder, search.Files.Count) ? new OutputFolder(written, search.Files, terminal) : null;
        return new(written, subject, form, folder, search, terminal);
    }

    /// <summary>Draws and writes the picture of a planting, where one was asked for; tells where there is none to draw.</summary>
    /// <param name="file">The planting's file.</param>
    /// <param name="run">Keeps what is told.</param>
    /// <param name="obstacle">Why there is nothing to draw, in a sentence; null where there is something.</param>
    /// <param name="draw">Draws it.</param>
    public void Write(InputFile file, FileRun run, string? obstacle, Func<string> draw)
    {
        if (path is null)
        {
            return;
        }

        if (obstacle is not null)
        {
            // Beside a report the obstacle stands there.
            run.Tell($"{file.Name}: no picture was drawn.{(IsAlone ? $" {obstacle}" : "")}");
            return;
        }

        var bytes = Guard.Run(file.Name, $"drawing its {subject}", () => PictureFile.Render(draw(), form, PdfPage.Drawing));
        if (folder is not null)
        {
            folder.Write(file, $"-{subject}.{PictureFile.Word(form)}", bytes);
        }
        else
        {
            Delivery.Write(path, bytes, search.Files, terminal);
        }
    }
}
