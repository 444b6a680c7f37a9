using System.Collections.Immutable;
using GroveSpec.Binding.Names;
using GroveSpec.Binding.Origins;
using GroveSpec.Model;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Times;
using GroveSpec.Syntax.Tree;
using NodaTime;

namespace GroveSpec.Binding.Statements;

/// <summary>Binds tasks.</summary>
/// <param name="scope">The file.</param>
/// <param name="names">The names of the file.</param>
/// <param name="isSouthern">Whether the seasons are those of the south.</param>
internal sealed class TaskBinder(BindingScope scope, FileNames names, bool isSouthern)
{
    private readonly DetailBinder detailBinder = new(scope);

    // Of the task that is being bound: how often each part was said, and what was taken.
    private readonly Dictionary<string, int> counts = new(StringComparer.Ordinal);
    private readonly ImmutableArray<TimeClause>.Builder times = ImmutableArray.CreateBuilder<TimeClause>();
    private readonly ImmutableArray<TaskDetail>.Builder details = ImmutableArray.CreateBuilder<TaskDetail>();
    private readonly ImmutableArray<Stated<LocalDate>>.Builder done = ImmutableArray.CreateBuilder<Stated<LocalDate>>();

    /// <summary>Binds a task.</summary>
    /// <param name="statement">The statement.</param>
    /// <param name="name">Its name.</param>
    /// <returns>The task, with what could be taken; null where its kind is not known, which is told.</returns>
    public PlantingTask? Bind(Statement.Task statement, NameSyntax name)
    {
        if (statement.Kind is not { } kindWord)
        {
            return null;
        }

        var kind = Words.IndexOf(Words.TaskKinds, kindWord.Text);
        if (kind < 0)
        {
            scope.TellWord(kindWord, "a kind of task", Words.TaskKinds);
            return null;
        }

        var origin = scope.Origin("task:" + OriginTable.Piece(name.Text), statement);
        Stated<string>? note = null;
        var timeBinder = new TimeBinder(scope, names, isSouthern);
        counts.Clear();
        times.Clear();
        details.Clear();
        done.Clear();
        foreach (var clause in statement.Clauses)
        {
            var part = PartPlaces.NameOf(clause);
            var count = counts[part] = counts.GetValueOrDefault(part) + 1;
            var own = origin.Part(PartPlaces.Repeated(part, count));
            switch (clause)
            {
                case Clause.Note text:
                    note = note is null ? new Stated<string>(text.Text.Value, own) : new Stated<string>(note.Value.Value + "\n" + text.Text.Value, note.Value.Origin);
                    break;
                case Clause.Done day:
                    if (scope.Dates.Day(day.Date, "What was done") is { } date)
                    {
                        done.Add(new Stated<LocalDate>(date, own));
                    }

                    break;
                default:
                    if (timeBinder.Bind(clause, own) is { } time)
                    {
                        times.Add(time);
                    }
                    else if (detailBinder.Bind(clause, own) is { } detail)
                    {
                        details.Add(detail);
                    }

                    break;
            }
        }

        timeBinder.TellEmptyWindows(statement);
        return new PlantingTask
        {
            Name = name.Text,
            Origin = origin,
            Kind = new Stated<TaskKind>((TaskKind)kind, origin.Part("kind")),
            OtherKind = (TaskKind)kind == TaskKind.Other ? statement.OtherKind?.Value : null,
            Target = Target(statement.Target, origin),
            Times = times.ToImmutable(),
            Details = details.ToImmutable(),
            Done = done.ToImmutable(),
            Note = note,
        };
    }

    private TaskTarget? Target(TargetSyntax? target, Origin origin)
    {
        switch (target)
        {
            case TargetSyntax.OnTrunks on:
                var trunks = ImmutableArray.CreateBuilder<Stated<string>>(on.Names.Length);
                for (var index = 0; index < on.Names.Length; index++)
                {
                    trunks.Add(new Stated<string>(names.Trunks.Resolve(on.Names[index], scope), origin.Part(PartPlaces.Repeated("on", index + 1))));
                }

                return trunks.Count == 0 ? null : new TaskTarget.OnTrunks(trunks.MoveToImmutable());
            case TargetSyntax.OnAll:
                return new TaskTarget.OnAll();
            case TargetSyntax.OnRole role:
                return new TaskTarget.OnRole(new Stated<string>(names.Role(role.Name), origin.Part("on-role")));
            case TargetSyntax.OfTask of:
                return new TaskTarget.OfTask(new Stated<string>(names.Tasks.Resolve(of.Name, scope), origin.Part("of")));
            default:
                return null;
        }
    }
}
