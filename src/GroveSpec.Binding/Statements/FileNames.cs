using GroveSpec.Binding.Names;
using GroveSpec.Checks;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Binding.Statements;

/// <summary>The names that a file gives, all taken before anything that uses one is bound.</summary>
/// <param name="scope">The file.</param>
internal sealed class FileNames(BindingScope scope)
{
    private int? endOfRoles;

    /// <summary>The trunks.</summary>
    public NameTable Trunks { get; } = new("trunk", CountOf<Statement.Trunk>(scope.Tree));

    /// <summary>The roles, those of used files among them.</summary>
    public NameTable Roles { get; } = new("role");

    /// <summary>The tasks.</summary>
    public NameTable Tasks { get; } = new("task", CountOf<Statement.Task>(scope.Tree));

    /// <summary>The species profiles, those of used files among them.</summary>
    public NameTable Profiles { get; } = new("profile");

    /// <summary>Remembers where a role of the file ends, so that a missing one can be put behind the last.</summary>
    /// <param name="end">The first place after it.</param>
    public void RoleEndsAt(int end) => endOfRoles = end;

    /// <summary>The name of a role as its own statement spells it. An unknown one is told, with the remedy of writing it.</summary>
    /// <param name="name">The name where it is used.</param>
    /// <returns>The name.</returns>
    public string Role(NameSyntax name) => Roles.Resolve(name, scope, () => [NewRole(name.Text)]);

    private static int CountOf<T>(SyntaxTree tree)
        where T : Statement
    {
        var count = 0;
        foreach (var statement in tree.Statements)
        {
            count += statement is T ? 1 : 0;
        }

        return count;
    }

    private Remedy NewRole(string name)
    {
        var text = scope.Tree.Text;
        var at = endOfRoles is { } end ? text.EndOfLine(end) : text.Length;
        var line = text.LineBreakAt(at);
        var isOwnLine = at == 0 || text.Content[at - 1] is '\n' or '\r';
        var words = $"{(isOwnLine ? "" : line)}role {name} {{ }}{(at == text.Length ? line : "")}";
        return new Remedy($"add the role {Saying.Short(name)}", [new TextEdit(scope.Place(new TextSpan(at, 0)), words)]);
    }
}
