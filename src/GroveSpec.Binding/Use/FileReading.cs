using GroveSpec.Syntax.Text;

namespace GroveSpec.Binding.Use;

/// <summary>What came of reading a used file. Closed.</summary>
public abstract record FileReading
{
    private FileReading()
    {
    }

    /// <summary>It was read.</summary>
    /// <param name="Path">Its path as findings name it, and as further files are found from it.</param>
    /// <param name="Identity">Which file it really is: the same for two paths that lead to one file.</param>
    /// <param name="Text">Its text.</param>
    public sealed record Found(string Path, string Identity, SourceText Text) : FileReading;

    /// <summary>There is no such file.</summary>
    public sealed record Missing : FileReading;

    /// <summary>A link on the way leads out of the folder.</summary>
    public sealed record Outside : FileReading;

    /// <summary>It is a folder, a device, a pipe or the like.</summary>
    /// <param name="What">What it is, such as "a folder".</param>
    public sealed record NotAFile(string What) : FileReading;

    /// <summary>It is larger than is read.</summary>
    public sealed record TooLarge : FileReading;

    /// <summary>It may not or cannot be read.</summary>
    /// <param name="Why">Why, as the end of a sentence.</param>
    public sealed record Unreadable(string Why) : FileReading;
}
