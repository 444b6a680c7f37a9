using System.Text.RegularExpressions;

namespace GroveSpec.Architecture.Tests;

/// <summary>A source file as text.</summary>
internal sealed partial class SourceFile(string path)
{
    private readonly string text = File.ReadAllText(path);

    /// <summary>Its path below the project's root.</summary>
    public string Name { get; } = System.IO.Path.GetRelativePath(House.Root, path);

    /// <summary>Its name up to the first dot.</summary>
    public string Stem { get; } = System.IO.Path.GetFileName(path).Split('.')[0];

    /// <summary>The folders it lies in below src or tests, with dots between them.</summary>
    public string Folders => System.IO.Path.GetDirectoryName(Name)!.Split(System.IO.Path.DirectorySeparatorChar, 2)[1].Replace(System.IO.Path.DirectorySeparatorChar, '.');

    /// <summary>The text without comments and without what stands between quotes.</summary>
    public string Code => NotCode().Replace(text, match => match.Value[0] == '/' ? "" : "\"\"");

    /// <summary>The namespace it declares for the whole file; null where it declares none so.</summary>
    public string? Namespace => FileNamespace().Match(text) is { Success: true } match ? match.Groups[1].Value : null;

    /// <summary>The types it declares outside others, and whether each is public.</summary>
    public IReadOnlyList<(string Type, bool IsPublic)> Types => [.. TopType().Matches(Code).Select(match => (match.Groups["name"].Value, match.Groups["access"].Value == "public"))];

    [GeneratedRegex("//[^\\n]*|/\\*.*?\\*/|\"\"\"+.*?\"\"\"+|@\"(?:[^\"]|\"\")*\"|\"(?:\\\\.|[^\"\\\\\\n])*\"", RegexOptions.Singleline)]
    private static partial Regex NotCode();

    [GeneratedRegex("(?m)^namespace ([\\w.]+);")]
    private static partial Regex FileNamespace();

    [GeneratedRegex("(?m)^(?<access>public|internal|file) (?:(?:sealed|static|abstract|readonly|partial|ref|unsafe) )*(?:class|struct|interface|enum|record struct|record class|record|delegate \\S+) (?<name>\\w+)")]
    private static partial Regex TopType();
}
