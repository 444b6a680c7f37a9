using GroveSpec.Syntax.Tree;

namespace GroveSpec.Syntax.Printing;

/// <summary>Says in which column each part of a statement stands. Parts keep the order in which they were written.</summary>
internal sealed class TidyColumns
{
    private const string Apart = "   ";

    private readonly Dictionary<int, (int Column, string? Joiner)> breaks = [];
    private int current;

    /// <summary>The column that begins at a place, or what joins it to the column before when it is the same.</summary>
    public (int Column, string? Joiner)? At(int start) => breaks.TryGetValue(start, out var found) ? found : null;

    /// <summary>Looks through a statement and gives its layout; null for a block of several lines, whose rows have their own.</summary>
    public TidyLayout Collect(Statement statement)
    {
        breaks.Clear();
        current = 0;
        switch (statement)
        {
            case Statement.Trunk trunk:
                foreach (var clause in trunk.Clauses)
                {
                    Place(clause, ColumnOf(clause));
                }

                return TidyLayout.Trunk;
            case Statement.Task task:
                Collect(task);
                return TidyLayout.Task;
            case Statement.Role role:
                Collect(role);
                return TidyLayout.Role;
            case Statement.Tape tape:
                Place(tape.From, 1);
                Place(tape.Distance, 2);
                return TidyLayout.Tape;
            case Statement.Measured measured:
                Collect(measured);
                return TidyLayout.Reading;
            case Statement.Profile profile:
                Collect(profile);
                return TidyLayout.Entry;
            default:
                return TidyLayout.Head;
        }
    }

    private static int ColumnOf(Clause clause) => clause switch
    {
        Clause.At => 1,
        Clause.Thickness => 2,
        Clause.Height => 3,
        Clause.Role => 4,
        _ => 5,
    };

    private static int TaskColumnOf(Clause clause) => clause switch
    {
        Clause.Note or Clause.WithWire or Clause.Coil or Clause.Stretch or Clause.Bend or Clause.Position or Clause.Facing => 4,
        _ => 3,
    };

    private void Collect(Statement.Task task)
    {
        Place(task.Kind, 1);
        var parts = task.Clauses.Select(static clause => ((SyntaxNode)clause, TaskColumnOf(clause))).ToList();
        if (task.Target is { } target)
        {
            parts.Add((target, 2));
        }

        foreach (var (part, column) in parts.OrderBy(static part => part.Item1.Span.Start))
        {
            // Parts of one column stay as they were joined, with a comma or without.
            if (column != current || part is Clause.Note)
            {
                Place(part, column);
            }
        }
    }

    private void Collect(Statement.Role role)
    {
        foreach (var clause in role.Clauses)
        {
            Place(clause, clause switch { Clause.Form => 2, Clause.Vigour => 3, _ => 4 });
        }
    }

    private void Collect(Statement.Measured measured)
    {
        foreach (var reading in measured.Readings)
        {

            current = 0;
            foreach (var value in reading.Values)
            {
                Place(value, value switch { Clause.Thickness => 1, Clause.Height => 2, _ => 3 });
            }
        }
    }

    private void Collect(Statement.Profile profile)
    {
        foreach (var entry in profile.Entries)
        {
            breaks[entry.Span.Start] = (0, Apart);
            current = 0;
            Place(entry.Values[0], 1);
        }
    }

    private void Place(SyntaxNode? part, int column)
    {
        if (part is null)
        {
            return;
        }

        breaks[part.Span.Start] = column > current ? (column, null) : (current, Apart);
        current = Math.Max(current, column);
    }
}
