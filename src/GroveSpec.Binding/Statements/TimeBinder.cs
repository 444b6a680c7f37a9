using GroveSpec.Checks;
using GroveSpec.Model;
using GroveSpec.Model.Times;
using GroveSpec.Syntax.Tree;
using NodaTime;

namespace GroveSpec.Binding.Statements;

/// <summary>Binds when one task is due.</summary>
/// <param name="scope">The file.</param>
/// <param name="names">The names of the file.</param>
/// <param name="isSouthern">Whether the seasons are those of the south.</param>
internal sealed class TimeBinder(BindingScope scope, FileNames names, bool isSouthern)
{
    private (LocalDate Day, Clause Clause)? begin;
    private (LocalDate Day, Clause Clause)? end;

    /// <summary>Binds a clause of time.</summary>
    /// <param name="clause">The clause.</param>
    /// <param name="origin">Its origin.</param>
    /// <returns>What it says; null for any other clause, and for one that cannot be taken, which is told.</returns>
    public TimeClause? Bind(Clause clause, Origin origin)
    {
        switch (clause)
        {
            case Clause.During during:
                return Moment(during.Moment) is { } moment ? new TimeClause.During(moment) { Origin = origin } : null;
            case Clause.FromTo fromTo:
                return FromTo(fromTo, origin);
            case Clause.After after:
                if (Moment(after.Moment) is not { } earlier)
                {
                    return null;
                }

                Begins(SeasonCalendar.Days(earlier, isSouthern)?.Start, clause);
                return new TimeClause.After(earlier) { Origin = origin };
            case Clause.Before before:
                if (Moment(before.Moment) is not { } later)
                {
                    return null;
                }

                Ends(SeasonCalendar.Days(later, isSouthern)?.End, clause);
                return new TimeClause.Before(later) { Origin = origin };
            case Clause.Until until:
                if (Moment(until.Moment) is not { } last)
                {
                    return null;
                }

                Ends(SeasonCalendar.Days(last, isSouthern)?.End, clause);
                return new TimeClause.Until(last) { Origin = origin };
            case Clause.Offset offset:
                return Offset(offset, origin);
            case Clause.Every every:
                return scope.Quantities.Time(every.Interval, "The time between", 1) is { } interval
                    ? new TimeClause.Every(interval.Count, interval.Unit) { Origin = origin }
                    : null;
            default:
                return null;
        }
    }

    /// <summary>Tells when the clauses of the task together leave no day, such as after May and before April of one year.</summary>
    /// <param name="statement">The task.</param>
    public void TellEmptyWindows(Statement.Task statement)
    {
        if (begin is { } first && end is { } last && first.Clause != last.Clause && last.Day < first.Day && !statement.IsBroken)
        {
            Tell(last.Clause, "The task would have to be over before it may begin: one of the two times is wrong.", first.Clause);
        }
    }

    private TimeClause.FromTo? FromTo(Clause.FromTo written, Origin origin)
    {
        var finish = written.End is { } last ? Moment(last) : null;
        var year = finish switch
        {
            Model.Times.Moment.StageOfYear stage => stage.Number,
            Model.Times.Moment.SeasonOfYear season => season.Number,
            _ => (int?)null,
        };
        if (Moment(written.Start, year) is not { } start)
        {
            return null;
        }

        var from = SeasonCalendar.Days(start, isSouthern)?.Start;
        var to = finish is null ? null : SeasonCalendar.Days(finish, isSouthern)?.End;
        var isTurned = to < from || (start, finish) is (Model.Times.Moment.StageOfYear first, Model.Times.Moment.StageOfYear second)
            && (second.Number < first.Number || (!isSouthern && second.Number == first.Number && second.Stage < first.Stage));
        if (isTurned)
        {
            var finding = scope.Tell(
                FileDescriptions.EndsBeforeStart,
                written.Span,
                $"The time ends ({Written(written.End!)}) before it begins ({Written(written.Start)}): turn the two round, or mend the year.");
            scope.Amend(finding with
            {
                Remedies =
                [
                    new Remedy("turn the two ends round",
                    [
                        new(scope.Place(written.Start.Span), Written(written.End!)),
                        new(scope.Place(written.End!.Span), Written(written.Start)),
                    ]),
                ],
            });
            return null;
        }

        Begins(from, written);
        Ends(to, written);
        return new TimeClause.FromTo(start, finish) { Origin = origin };
    }

    private TimeClause.Offset? Offset(Clause.Offset written, Origin origin)
    {
        var task = names.Tasks.Resolve(written.Task, scope);
        if (scope.Quantities.Time(written.Most, "The time between the two tasks", 0) is not { } most)
        {
            return null;
        }

        var least = written.Least is { } from ? scope.Quantities.Time(from, "The time between the two tasks", 0, written.Most.Unit) : most;
        if (least is not { } fewest)
        {
            return null;
        }

        if (fewest.Unit != most.Unit)
        {
            scope.Tell(FileDescriptions.OddUnit, written.Least!.Span, "Both numbers of a span of time are counted in one unit, such as 6 to 8 weeks.");
            return null;
        }

        if (fewest.Count > most.Count)
        {
            var finding = scope.Tell(FileDescriptions.EndsBeforeStart, written.Span, $"\"{fewest.Count} to {most.Count}\" runs backwards: write {most.Count} to {fewest.Count}.");
            scope.Amend(finding with
            {
                Remedies =
                [
                    new Remedy($"write {most.Count} to {fewest.Count}",
                    [
                        new(scope.Place(written.Least!.Span), written.Most.Number),
                        new(scope.Place(new(written.Most.Span.Start, written.Most.Number.Length)), written.Least.Number),
                    ]),
                ],
            });
            return null;
        }

        return new TimeClause.Offset(fewest.Count, most.Count, most.Unit, written.IsAfter, task) { Origin = origin };
    }

    private Moment? Moment(MomentSyntax moment, int? year = null) => scope.Dates.Moment(moment, year, name => names.Tasks.Resolve(name, scope));

    private void Begins(LocalDate? day, Clause clause)
    {
        if (day is { } known && (begin is null || known > begin.Value.Day))
        {
            begin = (known, clause);
        }
    }

    private void Ends(LocalDate? day, Clause clause)
    {
        if (day is { } known && (end is null || known < end.Value.Day))
        {
            end = (known, clause);
        }
    }

    private void Tell(Clause clause, string message, Clause other)
    {
        var finding = scope.Tell(FileDescriptions.EndsBeforeStart, clause.Span, message);
        scope.Amend(finding with { Related = [new RelatedPlace(scope.Place(other.Span), "when it may begin")] });
    }

    private string Written(MomentSyntax moment) => scope.Tree.Text.Slice(moment.Span);
}
