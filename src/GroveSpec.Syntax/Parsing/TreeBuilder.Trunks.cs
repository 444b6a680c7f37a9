using System.Collections.Immutable;
using Antlr4.Runtime;
using GroveSpec.Syntax.Parsing.Generated;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Syntax.Parsing;

/// <summary>Trunks, tapes, roles and readings.</summary>
internal sealed partial class TreeBuilder
{
    private Statement.Trunk Trunk(Grove.TrunkContext context)
    {
        var clauses = ImmutableArray.CreateBuilder<Clause>();
        for (var index = 0; index < context.ChildCount; index++)
        {
            if (context.GetChild(index) is Grove.TrunkClauseContext part && IsRead(part) && TrunkClause(FirstRule(part)) is { } clause)
            {
                clauses.Add(clause);
            }
        }

        return new Statement.Trunk(Name(context.trunkName()), clauses.DrainToImmutable()) { Span = default, FirstToken = 0, TokenCount = 0 };
    }

    private Clause? TrunkClause(ParserRuleContext? context)
    {
        if (!IsRead(context))
        {
            return null;
        }

        var span = SpanOf(context);
        switch (context)
        {
            case Grove.AtContext at when at.place() is { } place && IsRead(place) && Quantities(place.coordinate()) is { Length: 2 } both:
                return new Clause.At(new PlanPointSyntax(both[0], both[1]) { Span = SpanOf(place) }) { Span = span };
            case Grove.ThicknessContext thickness when Quantity(thickness.distance()) is { } quantity:
                return new Clause.Thickness(thickness.Start.Type == Grove.GIRTH, quantity) { Span = span };
            case Grove.HeightContext height when Quantity(height.distance()) is { } quantity:
                return new Clause.Height(quantity) { Span = span };
            case Grove.CrownContext crown when Quantity(crown.distance()) is { } quantity:
                return new Clause.Crown(quantity) { Span = span };
            case Grove.LeanContext lean when Quantity(lean.angle()) is { } angle && Quantity(lean.bearing()) is { } toward:
                return new Clause.Lean(angle, toward) { Span = span };
            case Grove.LineContext line:
                return Line(line, span);
            case Grove.OfRoleContext role when Name(role.roleName()) is { } name:
                return new Clause.Role(name) { Span = span };
            case Grove.OfSpeciesContext species when Name(species.speciesName()) is { } name:
                return new Clause.Species(name) { Span = span };
            case Grove.RaisedContext raised when Year(raised.year()) is { } year:
                return new Clause.Raised(year) { Span = span };
            case Grove.PlannedContext planned when Moment(planned.moment()) is { } moment:
                return new Clause.Planned(moment) { Span = span };
            case Grove.RemovedContext removed when Moment(removed.moment()) is { } moment:
                return new Clause.Removed(moment) { Span = span };
            case Grove.FixedContext:
                return new Clause.Fixed { Span = span };
            default:
                return null;
        }
    }

    private Clause.Line? Line(Grove.LineContext context, TextSpan span)
    {
        var points = ImmutableArray.CreateBuilder<SpacePointSyntax>();
        foreach (var point in context.spacePoint())
        {
            if (!IsRead(point) || Quantities(point.coordinate()) is not { Length: 3 } all)
            {
                return null;
            }

            points.Add(new SpacePointSyntax(all[0], all[1], all[2]) { Span = SpanOf(point) });
        }

        if (IsRead(context.unit()) && points.Count > 0 && points[^1] is { Z.Unit: null } last)
        {
            points[^1] = last with { Z = last.Z with { Unit = UnitOf((GrammarToken)context.unit().Start) } };
        }

        return new Clause.Line(points.DrainToImmutable()) { Span = span };
    }

    private Statement.Tape Tape(Grove.TapeContext context)
    {
        var names = context.trunkName();
        return new Statement.Tape(
            names.Length > 0 ? Name(names[0]) : null,
            names.Length > 1 ? Name(names[1]) : null,
            Quantity(context.distance()),
            context.BETWEEN() is not null)
        { Span = default, FirstToken = 0, TokenCount = 0 };
    }

    private Statement.Role Role(Grove.RoleContext context)
    {
        var clauses = ImmutableArray.CreateBuilder<Clause>();
        foreach (var part in context.roleClause())
        {
            if (IsRead(part) && RoleClause(FirstRule(part)) is { } clause)
            {
                clauses.Add(clause);
            }
        }

        return new Statement.Role(Name(context.roleName()), clauses.DrainToImmutable()) { Span = default, FirstToken = 0, TokenCount = 0 };
    }

    private Clause? RoleClause(ParserRuleContext? context)
    {
        if (!IsRead(context))
        {
            return null;
        }

        var span = SpanOf(context);
        return context switch
        {
            Grove.FormContext form when Choice(form.formWord(), "a form", KnownWords.Forms) is { } value => new Clause.Form(value) { Span = span },
            Grove.VigourContext vigour when Choice(vigour.vigourWord(), "a vigour", KnownWords.Vigours) is { } value => new Clause.Vigour(value) { Span = span },
            Grove.AimContext aim when Dimension(aim.dimension()) is { } dimension && Quantity(aim.distance()) is { } target && Year(aim.year()) is { } year =>
                new Clause.Aim(dimension, target, year) { Span = span },
            Grove.KeepContext keep when Dimension(keep.dimension()) is { } dimension && Quantity(keep.distance()) is { } limit =>
                new Clause.Keep(dimension, limit) { Span = span },
            Grove.RankContext rank when Quantity(rank.wholeNumber()) is { } number => new Clause.Rank(number) { Span = span },
            Grove.StoryContext story when Text(story.text()) is { } text => new Clause.Story(text) { Span = span },
            _ => null,
        };
    }

    private NameSyntax? Dimension(Grove.DimensionContext? context) =>
        IsRead(context) && context.Start is GrammarToken { Place: >= 0 } token ? NameOf(token) with { Text = Vocabulary.TextOf(token.Type) } : null;

    private Statement.Measured Measured(Grove.MeasuredContext context)
    {
        var readings = ImmutableArray.CreateBuilder<ReadingSyntax>();
        foreach (var reading in context.reading())
        {
            if (!IsRead(reading) || Name(reading.trunkName()) is not { } trunk)
            {
                continue;
            }

            var values = ImmutableArray.CreateBuilder<Clause>();
            foreach (var part in reading.readingClause())
            {
                if (IsRead(part) && TrunkClause(FirstRule(part)) is { } clause)
                {
                    values.Add(clause);
                }
            }

            readings.Add(new ReadingSyntax(trunk, values.DrainToImmutable()) { Span = SpanOf(reading) });
        }

        return new Statement.Measured(Day(context.day()), readings.DrainToImmutable()) { Span = default, FirstToken = 0, TokenCount = 0 };
    }
}
