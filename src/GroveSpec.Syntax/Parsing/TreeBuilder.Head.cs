using System.Collections.Immutable;
using Antlr4.Runtime;
using GroveSpec.Syntax.Parsing.Generated;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Syntax.Parsing;

/// <summary>The head of a file and the profiles of species.</summary>
internal sealed partial class TreeBuilder
{
    private Statement.Container Container(Grove.ContainerContext context)
    {
        var shape = Choice(context.containerShape(), "a shape of container", KnownWords.ContainerShapes);
        var dimensions = ImmutableArray<QuantitySyntax>.Empty;
        var corners = ImmutableArray<PlanPointSyntax>.Empty;
        QuantitySyntax? depth = null;
        if (context.dimensions() is { } measures && Quantities(measures.distance()) is { } read)
        {
            dimensions = read;
        }

        if (context.outline() is { } outline)
        {
            corners = Corners(outline);
            depth = Quantity(outline.distance());
        }

        if (shape is not null && !report.IsBroken)
        {
            TellWrongMeasures(context, shape, dimensions.Length, corners.Length);
        }

        return new Statement.Container(shape, dimensions, corners, depth) { Span = default, FirstToken = 0, TokenCount = 0 };
    }

    private void TellWrongMeasures(Grove.ContainerContext context, NameSyntax shape, int dimensions, int corners)
    {
        var message = shape.Text switch
        {
            "slab" when corners == 0 => "A slab is given by its corners and its depth, such as slab (-90,-60) (90,-60) (0,80) mm, 22 mm deep.",
            "oval" or "rectangle" when dimensions != 3 => $"An {shape.Text} has three measures, width x breadth x depth, such as 420 x 300 x 60 mm.".Replace("An rectangle", "A rectangle", StringComparison.Ordinal),
            "round" when dimensions != 2 => "A round container has two measures, width x depth, such as 320 x 55 mm.",
            _ => null,
        };
        if (message is not null)
        {
            report.Add(SyntaxProblemKind.NotUnderstood, SpanOf(context), message);
        }
    }

    /// <summary>All quantities of a list; null where one of them could not be read, because a gap would shift the others.</summary>
    private ImmutableArray<QuantitySyntax>? Quantities(ParserRuleContext[] contexts)
    {
        var quantities = ImmutableArray.CreateBuilder<QuantitySyntax>(contexts.Length);
        foreach (var context in contexts)
        {
            if (Quantity(context) is not { } quantity)
            {
                return null;
            }

            quantities.Add(quantity);
        }

        return quantities.MoveToImmutable();
    }

    private ImmutableArray<PlanPointSyntax> Corners(Grove.OutlineContext context)
    {
        var corners = ImmutableArray.CreateBuilder<PlanPointSyntax>();
        foreach (var corner in context.corner())
        {
            if (IsRead(corner) && Quantities(corner.coordinate()) is { Length: 2 } both)
            {
                corners.Add(new PlanPointSyntax(both[0], both[1]) { Span = SpanOf(corner) });
            }
        }

        if (IsRead(context.unit()) && corners.Count > 0 && corners[^1] is { Y.Unit: null } last)
        {
            corners[^1] = last with { Y = last.Y with { Unit = UnitOf((GrammarToken)context.unit().Start) } };
        }

        return corners.DrainToImmutable();
    }

    private Statement.Site Site(Grove.SiteContext context)
    {
        var clauses = ImmutableArray.CreateBuilder<Clause>();
        foreach (var part in context.siteClause())
        {
            if (IsRead(part) && SiteClause(FirstRule(part)) is { } clause)
            {
                clauses.Add(clause);
            }
        }

        return new Statement.Site(clauses.DrainToImmutable()) { Span = default, FirstToken = 0, TokenCount = 0 };
    }

    private Clause? SiteClause(ParserRuleContext? context)
    {
        if (!IsRead(context))
        {
            return null;
        }

        var span = SpanOf(context);
        switch (context)
        {
            case Grove.LatitudeContext latitude when Quantity(latitude.degrees()) is { } quantity:
                return Latitude(latitude, quantity, span);
            case Grove.ZoneContext { } zone when ZoneNumber(zone.zoneNumber()) is { } number:
                return new Clause.Zone(number) { Span = span };
            case Grove.FrostContext frost when DayOfYear(frost.dayOfYear()) is { } date:
                return new Clause.Frost(frost.LAST() is not null, date) { Span = span };
            case Grove.MeansContext means when Quantities(means.temperature()) is { } temperatures:
                return new Clause.Means(temperatures) { Span = span };
            case Grove.SunContext sun when Quantity(sun.bearing()) is { } from:
                return new Clause.Sun(from) { Span = span };
            default:
                return null;
        }
    }

    /// <summary>The hemisphere may stand right behind the number, where a unit would.</summary>
    private Clause.Latitude? Latitude(Grove.LatitudeContext context, QuantitySyntax quantity, TextSpan span)
    {
        var hemisphere = Choice(context.hemisphere(), "a hemisphere", KnownWords.Hemispheres);
        if (context.hemisphere() is not null && hemisphere is null)
        {
            return null;
        }

        if (hemisphere is null && quantity.Unit is { } unit && (KnownWords.Has(KnownWords.Hemispheres, unit.Text.ToUpperInvariant()) || unit.Text is "E" or "W" or "north" or "south"))
        {
            hemisphere = Choice(unit, "a hemisphere", KnownWords.Hemispheres);
            if (hemisphere is null)
            {
                return null;
            }

            quantity = quantity with { Unit = null, Span = new TextSpan(quantity.Span.Start, quantity.Number.Length) };
        }

        return new Clause.Latitude(quantity, hemisphere) { Span = span };
    }

    /// <summary>A zone such as 8b, one word though it is scanned as a number and what follows it.</summary>
    private NameSyntax? ZoneNumber(Grove.ZoneNumberContext? context)
    {
        if (!IsRead(context) || TokenOf(context.NUMBER()) is not { IsOdd: false } number)
        {
            return null;
        }

        var span = SpanOf(context);
        if (TokenOf(context.UNIT()) is { } half && half.Start != number.End)
        {
            report.Add(SyntaxProblemKind.NotUnderstood, span, $"A hardiness zone is written as one word such as 8b, not \"{content[span.Start..Math.Min(span.End, span.Start + 40)]}\".");
            return null;
        }

        return new NameSyntax(content[span.Start..span.End]) { Span = span };
    }

    private AnnualDateSyntax? DayOfYear(Grove.DayOfYearContext? context)
    {
        if (!IsRead(context) || TokenOf(context.NUMBER()) is not { IsOdd: false } day || Choice(context.month(), "a month", KnownWords.Months) is not { } month)
        {
            return null;
        }

        return new AnnualDateSyntax(content[day.Start..day.End], month) { Span = SpanOf(context) };
    }

    private Statement.Viewed Viewed(Grove.ViewedContext context)
    {
        var clauses = ImmutableArray.CreateBuilder<Clause>();
        foreach (var part in context.viewedClause())
        {
            if (!IsRead(part) || FirstRule(part) is not { } inner || !IsRead(inner))
            {
                continue;
            }

            var span = SpanOf(inner);
            Clause? clause = inner switch
            {
                Grove.ViewedFromContext from when Quantity(from.bearing()) is { } bearing => new Clause.ViewedFrom(bearing) { Span = span },
                Grove.ViewedAtContext at when Quantity(at.distance()) is { } distance => new Clause.ViewedAt(distance) { Span = span },
                Grove.EyeContext eye when Quantity(eye.distance()) is { } height => new Clause.Eye(height) { Span = span },
                Grove.DepthContext depth => new Clause.Depth(NameOf((GrammarToken)depth.Start) with { Text = Vocabulary.TextOf(depth.Start.Type) }) { Span = span },
                _ => null,
            };
            if (clause is not null)
            {
                clauses.Add(clause);
            }
        }

        return new Statement.Viewed(clauses.DrainToImmutable()) { Span = default, FirstToken = 0, TokenCount = 0 };
    }

    private Statement.Profile Profile(Grove.ProfileContext context)
    {
        var entries = ImmutableArray.CreateBuilder<ProfileEntrySyntax>();
        foreach (var entry in context.entry())
        {
            if (IsRead(entry) && IsRead(entry.entryValue()) && Entry(entry) is { } read)
            {
                entries.Add(read);
            }
        }

        return new Statement.Profile(Name(context.speciesName()), entries.DrainToImmutable()) { Span = default, FirstToken = 0, TokenCount = 0 };
    }

    private ProfileEntrySyntax? Entry(Grove.EntryContext context)
    {
        var value = context.entryValue();
        var keyword = (GrammarToken)value.Start;
        var values = EntryValues(value, keyword.Type);
        if (values.IsDefaultOrEmpty)
        {
            return null;
        }

        var source = context.entrySource();
        TextSyntax? from = null;
        if (IsRead(source))
        {
            from = source.text() is { } text
                ? Text(text)
                : new TextSyntax(source.MEMORY() is not null ? "from memory" : "common practice") { Span = SpanOf(source) };
        }

        return new ProfileEntrySyntax(NameOf(keyword) with { Text = Vocabulary.TextOf(keyword.Type) }, values, from) { Span = SpanOf(context) };
    }

    private ImmutableArray<SyntaxNode> EntryValues(Grove.EntryValueContext value, int keyword)
    {
        switch (keyword)
        {
            case Grove.BOTANICAL or Grove.COMMON or Grove.CAUTION when Text(value.text()) is { } text:
                return [text];
            case Grove.LEAVES when Choice(value.leafHabit(), "a leaf habit", KnownWords.LeafHabits) is { } leaves:
                return [leaves];
            case Grove.HARDINESS when value.zoneNumber() is { Length: 2 } zones && ZoneNumber(zones[0]) is { } coldest && ZoneNumber(zones[1]) is { } warmest:
                return [coldest, warmest];
            case Grove.GROWTH when Choice(value.pace(), "a pace of growth", KnownWords.Paces) is { } pace:
                return [pace];
            case Grove.FLUSH when Choice(value.flushWord(), "a flush", KnownWords.Flushes) is { } flush:
                return [flush];
            case Grove.BEND_LIMIT when Quantity(value.share()) is { } share:
                return [share];
            case Grove.STAGE when Choice(value.stage(), "a stage of the year", KnownWords.Stages) is { } stage:
                return value.stageEdge() is { Length: 2 } edges && Edge(edges[0]) is { } earliest && Edge(edges[1]) is { } latest
                    ? [stage, .. earliest, .. latest]
                    : [];
            default:
                return [];
        }
    }

    /// <summary>How many days before or after which day of the site's year.</summary>
    private SyntaxNode[]? Edge(Grove.StageEdgeContext context)
    {
        if (!IsRead(context) || !IsRead(context.anchor()) || Quantity(context.timeSpan()) is not { } span)
        {
            return null;
        }

        var side = TokenOf(context.BEFORE() ?? context.AFTER());
        if (side is null)
        {
            return null;
        }

        var anchor = context.anchor();
        var name = anchor.FROST() is null
            ? Choice(NameOf((GrammarToken)anchor.Start), "a day to count from", ["last frost", "first frost", "solstice"])
            : new NameSyntax(anchor.LAST() is not null ? "last frost" : "first frost") { Span = SpanOf(anchor) };
        return name is null ? null : [span, NameOf(side) with { Text = Vocabulary.TextOf(side.Type) }, name];
    }
}
