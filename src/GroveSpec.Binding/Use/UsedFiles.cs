using GroveSpec.Binding.Names;
using GroveSpec.Checks;
using GroveSpec.Syntax.Parsing;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Binding.Use;

/// <summary>Follows the use statements of a file, and of the files it uses.</summary>
internal sealed class UsedFiles
{
    /// <summary>How many files deep a chain is followed.</summary>
    public const int Deepest = 32;

    /// <summary>How many times a file is read in all, whether it is there, is another or is one that was read before.</summary>
    public const int Most = 256;

    /// <summary>How many characters all used files may have together.</summary>
    public const int LargestTogether = 4 * 1024 * 1024;

    private readonly IFileReader reader;
    private readonly List<Finding> findings;
    private readonly Dictionary<string, UsedFile> read = new(StringComparer.Ordinal);
    private readonly Stack<Open> open = new();
    private int characters;
    private int asked;

    private UsedFiles(IFileReader reader, List<Finding> findings)
    {
        this.reader = reader;
        this.findings = findings;
    }

    /// <summary>Reads every file that a tree uses, one after the other and each once.</summary>
    /// <param name="tree">The tree of the planting's own file.</param>
    /// <param name="file">Its path.</param>
    /// <param name="reader">What reads files.</param>
    /// <param name="findings">Where findings go.</param>
    /// <returns>The files, a file before those that it uses in turn.</returns>
    public static List<UsedFile> Follow(SyntaxTree tree, string file, IFileReader reader, List<Finding> findings)
    {
        var found = new List<UsedFile>();
        if (!HasUse(tree))
        {
            return found;
        }

        var files = new UsedFiles(reader, findings);
        files.open.Push(new Open(file, IdentityOf(file), tree));
        while (files.open.TryPeek(out var top))
        {
            if (top.NextUse() is not { } use)
            {
                files.open.Pop();
            }
            else if (files.Read(top, use) is { } next)
            {
                found.Add(next.File);
                files.open.Push(new Open(next.File.Path, next.Identity, next.File.Tree));
            }
        }

        return found;
    }

    private static string IdentityOf(string file)
    {
        try
        {
            return file == "-" ? file : Path.GetFullPath(file);
        }
        catch (ArgumentException)
        {
            return file;
        }
    }

    private static bool HasUse(SyntaxTree tree)
    {
        foreach (var statement in tree.Statements)
        {
            if (statement is Statement.Use)
            {
                return true;
            }
        }

        return false;
    }

    private (UsedFile File, string Identity)? Read(Open top, Statement.Use use)
    {
        if (use.Path is not { } path)
        {
            return null;
        }

        if (UsePath.Fault(path.Value) is { } fault)
        {
            return Tell(fault.Check, top, path.Span, fault.Message);
        }

        if (open.Count > Deepest || asked >= Most)
        {
            return Tell(
                FileDescriptions.UseTooDeep,
                top,
                path.Span,
                open.Count > Deepest
                    ? $"\"{Saying.Short(path.Value)}\" is used more than {Deepest} files deep and was not read."
                    : $"\"{Saying.Short(path.Value)}\" was not read: more than {Most} files are used.");
        }

        var name = path.Value.StartsWith("./", StringComparison.Ordinal) ? path.Value[2..] : path.Value;
        asked++;
        switch (reader.Read(top.Path, name))
        {
            case FileReading.Found found:
                return Take(top, path, found);
            case FileReading.Outside:
                return Tell(FileDescriptions.UseOutsideFolder, top, path.Span, $"\"{Saying.Short(path.Value)}\" is a link that leads out of this file's folder; copy the file itself here.");
            case FileReading.NotAFile other:
                return Tell(FileDescriptions.UseNotFound, top, path.Span, $"\"{Saying.Short(path.Value)}\" is {other.What}, not a file of roles, tolerances or profiles.");
            case FileReading.TooLarge:
                return Tell(FileDescriptions.UseTooLarge, top, path.Span, $"\"{Saying.Short(path.Value)}\" is larger than the {FolderFiles.LargestFile / 1024 / 1024} MB that are read of a used file.");
            case FileReading.Unreadable unreadable:
                return Tell(FileDescriptions.UseNotFound, top, path.Span, $"\"{Saying.Short(path.Value)}\" cannot be read: {unreadable.Why}.");
            default:
                return Tell(FileDescriptions.UseNotFound, top, path.Span, $"There is no file \"{Saying.Short(path.Value)}\" beside this one or in a folder below it.");
        }
    }

    private (UsedFile File, string Identity)? Take(Open top, TextSyntax path, FileReading.Found found)
    {
        foreach (var above in open)
        {
            if (above.Identity == found.Identity)
            {
                return Tell(
                    FileDescriptions.UseCircle,
                    top,
                    path.Span,
                    above == top
                        ? $"\"{Saying.Short(path.Value)}\" is this file itself."
                        : $"\"{Saying.Short(path.Value)}\" uses this file in turn, so the two go round in a circle; take one use out.");
            }
        }

        if (read.ContainsKey(found.Identity))
        {
            return null;
        }

        characters += found.Text.Length;
        if (characters > LargestTogether || found.Text.Length > FolderFiles.LargestFile)
        {
            return Tell(FileDescriptions.UseTooLarge, top, path.Span, $"\"{Saying.Short(path.Value)}\" was not read: the used files are too large together.");
        }

        var file = new UsedFile(found.Path, GroveParser.Parse(found.Text));
        read.Add(found.Identity, file);
        return (file, found.Identity);
    }

    private (UsedFile File, string Identity)? Tell(CheckDescription check, Open top, TextSpan span, string message)
    {
        findings.Add(new Finding { Check = check, Severity = check.Severity, Place = new SourceSpan(top.Path, span), Message = message });
        return null;
    }

    /// <summary>A file whose use statements are being followed.</summary>
    private sealed class Open(string path, string identity, SyntaxTree tree)
    {
        private int next;

        public string Path => path;

        public string Identity => identity;

        public Statement.Use? NextUse()
        {
            while (next < tree.Statements.Length)
            {
                if (tree.Statements[next++] is Statement.Use use)
                {
                    return use;
                }
            }

            return null;
        }
    }
}
