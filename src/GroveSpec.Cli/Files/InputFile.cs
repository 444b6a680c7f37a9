namespace GroveSpec.Cli.Files;

/// <summary>A planting's file that a command works on.</summary>
/// <param name="Name">Its path as the person sees it: as given, or the given folder with the rest behind it; "-" for standard input.</param>
/// <param name="FullPath">Its full path; empty for standard input.</param>
/// <param name="Relative">Its path below the folder that was searched, with <c>/</c> between the parts; only the file's name for one given itself.</param>
internal sealed record InputFile(string Name, string FullPath, string Relative)
{
    /// <summary>The name of standard input.</summary>
    public const string StandardInput = "-";

    /// <summary>Whether it is standard input.</summary>
    public bool IsStandardInput => FullPath.Length == 0;
}
