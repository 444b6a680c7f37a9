using System.Collections.Immutable;
using Antlr4.Runtime;
using GroveSpec.Syntax.Parsing.Generated;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Syntax.Parsing;

/// <summary>Tasks.</summary>
internal sealed partial class TreeBuilder
{
    private Statement.Task Task(Grove.TaskContext context)
    {
        var name = Name(context.taskName());
        var clauses = ImmutableArray.CreateBuilder<Clause>();
        var kind = TaskKind(context.taskKind(), clauses, out var otherKind);
        TargetSyntax? target = null;
        foreach (var part in context.taskClause())
        {
            if (!IsRead(part) || FirstRule(part) is not { } inner || !IsRead(inner))
            {
                continue;
            }

            if (Target(inner) is { } found)
            {
                if (target is null)
                {
                    target = found;
                }
                else
                {
                    report.Add(SyntaxProblemKind.NotUnderstood, found.Span, "A task is done to one thing; name all trunks behind one \"on\".");
                }
            }
            else if (TaskClause(inner) is { } clause)
            {
                clauses.Add(clause);
            }
        }

        return new Statement.Task(name, kind, otherKind, target, clauses.DrainToImmutable()) { Span = default, FirstToken = 0, TokenCount = 0 };
    }

    /// <summary>The kind of work; a text behind <c>other</c> is what it is, a text behind any other kind the note.</summary>
    private NameSyntax? TaskKind(Grove.TaskKindContext? context, ImmutableArray<Clause>.Builder clauses, out TextSyntax? otherKind)
    {
        otherKind = null;
        if (!IsRead(context) || Name(context.word()) is not { } word)
        {
            return null;
        }

        var kind = Choice(word, "a kind of work", KnownWords.TaskKinds);
        var text = Text(context.text());
        if (kind?.Text == "other")
        {
            otherKind = text;
            if (text is null)
            {
                report.Add(SyntaxProblemKind.NotUnderstood, new TextSpan(kind.Span.End, 0), "After \"other\" comes what is done, in quote marks, such as other \"air-layer\".");
            }
        }
        else if (text is not null)
        {
            clauses.Add(new Clause.Note(text) { Span = text.Span });
        }

        return kind;
    }

    private TargetSyntax? Target(ParserRuleContext context)
    {
        var span = SpanOf(context);
        return context switch
        {
            Grove.OnContext on when on.ALL() is not null => new TargetSyntax.OnAll { Span = span },
            Grove.OnContext on when on.ROLE() is not null => Name(on.roleName()) is { } role ? new TargetSyntax.OnRole(role) { Span = span } : null,
            Grove.OnContext on when on.trunkName() is { Length: > 0 } names && Names(names) is { Length: > 0 } read => new TargetSyntax.OnTrunks(read) { Span = span },
            Grove.OfTaskContext of when Name(of.taskName()) is { } task => new TargetSyntax.OfTask(task) { Span = span },
            _ => null,
        };
    }

    private Clause? TaskClause(ParserRuleContext context)
    {
        var span = SpanOf(context);
        switch (context)
        {
            case Grove.OnContext on when on.day() is { } day && OnDate(day) is { } date:
                return new Clause.During(date) { Span = span };
            case Grove.DuringContext during when Moment(during.moment()) is { } moment:
                return new Clause.During(moment) { Span = span };
            case Grove.FromToContext fromTo when fromTo.moment() is { Length: > 0 } moments && Moment(moments[0]) is { } start:
                var end = moments.Length > 1 ? Moment(moments[1]) : null;
                return moments.Length > 1 && end is null ? null : new Clause.FromTo(start, end) { Span = span };
            case Grove.AfterContext after when Moment(after.moment()) is { } moment:
                return new Clause.After(moment) { Span = span };
            case Grove.BeforeContext before when Moment(before.moment()) is { } moment:
                return new Clause.Before(moment) { Span = span };
            case Grove.UntilContext until when Moment(until.moment()) is { } moment:
                return new Clause.Until(moment) { Span = span };
            case Grove.OffsetContext offset when Quantities(offset.timeSpan()) is { Length: > 0 } spans && Name(offset.taskName()) is { } task:
                return new Clause.Offset(spans.Length > 1 ? spans[0] : null, spans[^1], offset.AFTER() is not null, task) { Span = span };
            case Grove.EveryContext every when Quantity(every.timeSpan()) is { } interval:
                return new Clause.Every(interval) { Span = span };
            case Grove.DoneContext done when Day(done.day()) is { } date:
                return new Clause.Done(date) { Span = span };
            case Grove.NoteContext note when Text(note.text()) is { } text:
                return new Clause.Note(text) { Span = span };
            default:
                return Detail(context, span);
        }
    }

    /// <summary>A day, month or year behind <c>on</c>.</summary>
    private MomentSyntax.Date? OnDate(Grove.DayContext context) =>
        IsRead(context) && context.Start is GrammarToken { IsOdd: false } token && (token.Type == Grove.DATE || IsYear(token))
            ? new MomentSyntax.Date(content[token.Start..token.End]) { Span = SpanOf(context) }
            : null;

    private Clause? Detail(ParserRuleContext context, TextSpan span)
    {
        switch (context)
        {
            case Grove.WithWireContext wire when Choice(wire.metal(), "a metal for wire", KnownWords.Metals) is { } metal && Quantity(wire.distance()) is { } diameter:
                var strands = Quantity(wire.wholeNumber());
                return wire.wholeNumber() is not null && strands is null ? null : new Clause.WithWire(strands, metal, diameter) { Span = span };
            case Grove.CoilContext coil when Quantity(coil.angle()) is { } angle:
                return new Clause.Coil(angle) { Span = span };
            case Grove.StretchContext stretch when Quantities(stretch.distance()) is { Length: 2 } both:
                return new Clause.Stretch(both[0], both[1]) { Span = span };
            case Grove.BendContext bend when Quantity(bend.angle()) is { } angle && Quantity(bend.bearing()) is { } toward:
                var over = Quantity(bend.distance());
                return bend.distance() is not null && over is null ? null : new Clause.Bend(angle, toward, over) { Span = span };
            case Grove.PositionContext position:
                return new Clause.Position(NameOf((GrammarToken)position.Start) with { Text = Vocabulary.TextOf(position.Start.Type) }) { Span = span };
            case Grove.FacingContext facing when Choice(facing.side(), "a side", KnownWords.Sides) is { } side:
                return new Clause.Facing(side, null) { Span = span };
            case Grove.FacingContext facing when Quantity(facing.bearing()) is { } bearing:
                return new Clause.Facing(null, bearing) { Span = span };
            default:
                return null;
        }
    }
}
