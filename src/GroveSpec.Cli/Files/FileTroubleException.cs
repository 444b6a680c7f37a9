namespace GroveSpec.Cli.Files;

/// <summary>A file that cannot be read or written. Its message is for the person who named it.</summary>
internal sealed class FileTroubleException : Exception
{
    /// <summary>Makes one.</summary>
    /// <param name="file">The file as the person named it.</param>
    /// <param name="message">A sentence without the file's name.</param>
    public FileTroubleException(string file, string message)
        : base(message) => File = file;

    /// <summary>The file as the person named it.</summary>
    public string File { get; }

    /// <summary>Says in a grower's words what the system said about a file.</summary>
    /// <param name="file">The file as the person named it.</param>
    /// <param name="exception">What was thrown.</param>
    /// <param name="writing">Whether it was being written.</param>
    /// <returns>The trouble.</returns>
    public static FileTroubleException From(string file, Exception exception, bool writing) => new(file, (writing ? "it cannot be written: " : "it cannot be read: ") + exception switch
    {
        FileNotFoundException => "there is no such file",
        DirectoryNotFoundException => "there is no such folder",
        UnauthorizedAccessException => "the system does not allow it",
        PathTooLongException => "its path is too long",
        IOException io when io.HResult == 28 => "the disk is full",
        IOException io when io.HResult == 36 => "its name is too long",
        IOException io when io.HResult == 40 => "its links lead round in a circle",
        IOException io when io.HResult is 20 or 21 => writing ? "it is a folder, or lies under something that is none" : "it is a folder, or lies under something that is none",
        ArgumentException => "no file can have such a name",
        _ => "the system refused",
    } + ".");
}
