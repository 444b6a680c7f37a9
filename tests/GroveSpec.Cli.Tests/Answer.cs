using System.Text;

namespace GroveSpec.Cli.Tests;

/// <summary>What a run of the program gave.</summary>
/// <param name="Status">How it ended.</param>
/// <param name="Bytes">What it wrote to standard output.</param>
/// <param name="Errors">What it wrote to standard error.</param>
internal sealed record Answer(ExitStatus Status, byte[] Bytes, string Errors)
{
    public string Output => Encoding.UTF8.GetString(Bytes);
}
