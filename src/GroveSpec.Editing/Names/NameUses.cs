using System.Collections.Immutable;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Editing.Names;

/// <summary>Finds every place of a file where a name stands.</summary>
public static class NameUses
{
    /// <summary>Every name of a file.</summary>
    /// <param name="tree">The file's tree.</param>
    /// <returns>The names in the order of the text.</returns>
    public static ImmutableArray<NameUse> Of(SyntaxTree tree)
    {
        ArgumentNullException.ThrowIfNull(tree);
        var found = ImmutableArray.CreateBuilder<NameUse>();
        foreach (var statement in tree.Statements)
        {
            Collect(statement, found);
        }

        found.Sort(static (left, right) => left.Span.CompareTo(right.Span));
        return found.ToImmutable();
    }

    /// <summary>The name at a place.</summary>
    /// <param name="tree">The file's tree.</param>
    /// <param name="offset">A place; one just behind a name counts as in it.</param>
    /// <returns>The name, or null where none stands.</returns>
    public static NameUse? At(SyntaxTree tree, int offset)
    {
        ArgumentNullException.ThrowIfNull(tree);
        var found = ImmutableArray.CreateBuilder<NameUse>();
        foreach (var statement in tree.Statements)
        {
            if (statement.Span.Touches(offset))
            {
                Collect(statement, found);
            }
        }

        foreach (var use in found)
        {
            if (use.Span.Touches(offset))
            {
                return use;
            }
        }

        return null;
    }

    private static void Collect(Statement statement, ImmutableArray<NameUse>.Builder found)
    {
        switch (statement)
        {
            case Statement.Species species:
                Add(NameKind.Species, species.Name);
                break;
            case Statement.Use { Path: { } path }:
                found.Add(new(NameKind.File, path.Value, path.Span, IsDeclaration: false));
                break;
            case Statement.Trunk trunk:
                Add(NameKind.Trunk, trunk.Name, isDeclaration: true);
                foreach (var clause in trunk.Clauses)
                {
                    switch (clause)
                    {
                        case Clause.Role role:
                            Add(NameKind.Role, role.Name);
                            break;
                        case Clause.Species species:
                            Add(NameKind.Species, species.Name);
                            break;
                        case Clause.Planned planned:
                            AddMoment(planned.Moment);
                            break;
                        case Clause.Removed removed:
                            AddMoment(removed.Moment);
                            break;
                        default:
                            break;
                    }
                }

                break;
            case Statement.Tape tape:
                Add(NameKind.Trunk, tape.From);
                Add(NameKind.Trunk, tape.To);
                break;
            case Statement.Role role:
                Add(NameKind.Role, role.Name, isDeclaration: true);
                break;
            case Statement.Task task:
                CollectTask(task);
                break;
            case Statement.Measured measured:
                foreach (var reading in measured.Readings)
                {
                    Add(NameKind.Trunk, reading.Trunk);
                }

                break;
            case Statement.Tolerance tolerance:
                Add(NameKind.Check, tolerance.Check);
                break;
            case Statement.Accept accept:
                Add(NameKind.Check, accept.Check);
                foreach (var trunk in accept.Trunks)
                {
                    Add(NameKind.Trunk, trunk);
                }

                break;
            case Statement.Mute mute:
                Add(NameKind.Check, mute.Check);
                break;
            case Statement.Profile profile:
                Add(NameKind.Species, profile.Name, isDeclaration: true);
                break;
            default:
                break;
        }

        void CollectTask(Statement.Task task)
        {
            Add(NameKind.Task, task.Name, isDeclaration: true);
            switch (task.Target)
            {
                case TargetSyntax.OnTrunks on:
                    foreach (var trunk in on.Names)
                    {
                        Add(NameKind.Trunk, trunk);
                    }

                    break;
                case TargetSyntax.OnRole role:
                    Add(NameKind.Role, role.Name);
                    break;
                case TargetSyntax.OfTask of:
                    Add(NameKind.Task, of.Name);
                    break;
                default:
                    break;
            }

            foreach (var clause in task.Clauses)
            {
                switch (clause)
                {
                    case Clause.During during:
                        AddMoment(during.Moment);
                        break;
                    case Clause.FromTo span:
                        AddMoment(span.Start);
                        AddMoment(span.End);
                        break;
                    case Clause.After after:
                        AddMoment(after.Moment);
                        break;
                    case Clause.Before before:
                        AddMoment(before.Moment);
                        break;
                    case Clause.Until until:
                        AddMoment(until.Moment);
                        break;
                    case Clause.Offset offset:
                        Add(NameKind.Task, offset.Task);
                        break;
                    default:
                        break;
                }
            }
        }

        void Add(NameKind kind, NameSyntax? name, bool isDeclaration = false)
        {
            if (name is { Span.Length: > 0 })
            {
                found.Add(new(kind, NameForm.Of(name.Text), name.Span, isDeclaration));
            }
        }

        void AddMoment(MomentSyntax? moment)
        {
            if (moment is MomentSyntax.Task task)
            {
                Add(NameKind.Task, task.Name);
            }
        }
    }
}
