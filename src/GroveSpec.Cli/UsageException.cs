namespace GroveSpec.Cli;

/// <summary>The command line asks for something that cannot be. Its message is for the person who wrote it.</summary>
internal sealed class UsageException : Exception
{
    /// <summary>Makes one.</summary>
    /// <param name="message">A sentence that says what is wrong and what would be right.</param>
    public UsageException(string message)
        : base(message)
    {
    }
}
