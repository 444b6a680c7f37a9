using GroveSpec.Checks;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Binding;

/// <summary>Turns what the parser could not read into findings.</summary>
internal static class SyntaxFindings
{
    /// <summary>Adds a finding for each problem of a tree.</summary>
    /// <param name="tree">The tree.</param>
    /// <param name="file">Its file's path.</param>
    /// <param name="findings">Where they go.</param>
    public static void Add(SyntaxTree tree, string file, List<Finding> findings)
    {
        foreach (var problem in tree.Problems)
        {
            var check = CheckOf(problem.Kind);
            var place = new SourceSpan(file, problem.Span);
            findings.Add(new Finding
            {
                Check = check,
                Severity = check.Severity,
                Place = place,
                Message = problem.Message,
                Remedies = problem.Replacement is { } right ? [new Remedy(right.Length == 0 ? "take it out" : $"write {Names.Saying.Short(right)}", [new TextEdit(place, right)])] : [],
            });
        }
    }

    private static CheckDescription CheckOf(SyntaxProblemKind kind) => kind switch
    {
        SyntaxProblemKind.MisspeltWord => FileDescriptions.MisspeltWord,
        SyntaxProblemKind.NotClosed => FileDescriptions.NotClosed,
        SyntaxProblemKind.OddCharacter => FileDescriptions.OddCharacter,
        SyntaxProblemKind.OddNumber => FileDescriptions.OddNumber,
        SyntaxProblemKind.TooLarge => FileDescriptions.TooLarge,
        _ => FileDescriptions.NotUnderstood,
    };
}
