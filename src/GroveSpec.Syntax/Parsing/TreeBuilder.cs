using System.Collections.Immutable;
using Antlr4.Runtime;
using Antlr4.Runtime.Tree;
using GroveSpec.Syntax.Parsing.Generated;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Syntax.Parsing;

/// <summary>Makes a statement of what the generated parser read, leaving out what it could not.</summary>
internal sealed partial class TreeBuilder
{
    private readonly string content;
    private readonly TroubleReport report;
    private ImmutableArray<SyntaxToken> tokens;
    private SyntaxToken[]? changedTokens;

    public TreeBuilder(string content, TroubleReport report, ImmutableArray<SyntaxToken> tokens)
    {
        this.content = content;
        this.report = report;
        this.tokens = tokens;
    }

    /// <summary>The tokens; a word of the language that stands as a name is a plain word.</summary>
    public ImmutableArray<SyntaxToken> Tokens => tokens;

    /// <summary>Makes the statement.</summary>
    /// <param name="context">What was read of it; null when nothing was.</param>
    /// <param name="slice">Its tokens.</param>
    /// <param name="span">What it covers.</param>
    public Statement Build(ParserRuleContext? context, StatementSlice slice, TextSpan span)
    {
        var statement = context switch
        {
            Grove.TrunkContext trunk => Trunk(trunk),
            Grove.TapeContext tape => Tape(tape),
            Grove.RoleContext role => Role(role),
            Grove.TaskContext task => Task(task),
            Grove.MeasuredContext measured => Measured(measured),
            Grove.PlantingContext planting => new Statement.Planting(Text(planting.text())) { Span = default, FirstToken = 0, TokenCount = 0 },
            Grove.HabitContext habit => new Statement.Habit(Choice(habit.habitWord(), "a habit", KnownWords.Habits)) { Span = default, FirstToken = 0, TokenCount = 0 },
            Grove.SpeciesContext species => new Statement.Species(Name(species.speciesName())) { Span = default, FirstToken = 0, TokenCount = 0 },
            Grove.ContainerContext container => Container(container),
            Grove.SiteContext site => Site(site),
            Grove.ViewedContext viewed => Viewed(viewed),
            Grove.ConceptContext concept => new Statement.Concept(Text(concept.text())) { Span = default, FirstToken = 0, TokenCount = 0 },
            Grove.UseContext use => new Statement.Use(Text(use.text())) { Span = default, FirstToken = 0, TokenCount = 0 },
            Grove.SeenContext seen => new Statement.Seen(Choice(seen.stage(), "a stage of the year", KnownWords.Stages), Day(seen.day())) { Span = default, FirstToken = 0, TokenCount = 0 },
            Grove.ToleranceContext tolerance => new Statement.Tolerance(Name(tolerance.checkName()), Quantity(tolerance.amount())) { Span = default, FirstToken = 0, TokenCount = 0 },
            Grove.AcceptContext accept => new Statement.Accept(Name(accept.checkName()), Names(accept.trunkName()), Text(accept.text())) { Span = default, FirstToken = 0, TokenCount = 0 },
            Grove.MuteContext mute => new Statement.Mute(Name(mute.checkName()), Text(mute.text())) { Span = default, FirstToken = 0, TokenCount = 0 },
            Grove.ProfileContext profile => Profile(profile),
            _ => (Statement)new Statement.Unknown { Span = default, FirstToken = 0, TokenCount = 0 },
        };
        return statement with { Span = span, FirstToken = slice.FirstToken, TokenCount = slice.TokenCount, IsBroken = report.IsBroken };
    }

    /// <summary>Whether a rule was read without trouble.</summary>
    private static bool IsRead([System.Diagnostics.CodeAnalysis.NotNullWhen(true)] ParserRuleContext? context) =>
        context is { exception: null, Start: GrammarToken, Stop: GrammarToken };

    private static TextSpan SpanOf(ParserRuleContext context)
    {
        var start = ((GrammarToken)context.Start).Start;
        return TextSpan.FromBounds(start, Math.Max(start, ((GrammarToken)context.Stop).End));
    }

    private static GrammarToken? TokenOf(ITerminalNode? node) => node is { Symbol: GrammarToken { Place: >= 0 } token } ? token : null;

    private static ParserRuleContext? FirstRule(ParserRuleContext context)
    {
        for (var index = 0; index < context.ChildCount; index++)
        {
            if (context.GetChild(index) is ParserRuleContext rule)
            {
                return rule;
            }
        }

        return null;
    }

    private NameSyntax NameOf(GrammarToken token) => new(content[token.Start..token.End]) { Span = TextSpan.FromBounds(token.Start, token.End) };

    private NameSyntax? Name(ITerminalNode? node) => TokenOf(node) is { } token ? NameOf(token) : null;

    /// <summary>A name; null when there is none, or what stands there cannot be one.</summary>
    private NameSyntax? Name(ParserRuleContext? context)
    {
        if (!IsRead(context) || context.Start is not GrammarToken { Place: >= 0 } token)
        {
            return null;
        }

        if (token.IsOdd)
        {
            return null;
        }

        if (Vocabulary.IsWordOfLanguage(token.Type))
        {
            MakeWord(token.Place);
        }

        return NameOf(token);
    }

    private ImmutableArray<NameSyntax> Names(ParserRuleContext[] contexts)
    {
        var names = ImmutableArray.CreateBuilder<NameSyntax>(contexts.Length);
        foreach (var context in contexts)
        {
            if (Name(context) is { } name)
            {
                names.Add(name);
            }
        }

        return names.DrainToImmutable();
    }

    private void MakeWord(int place)
    {
        changedTokens ??= System.Runtime.InteropServices.ImmutableCollectionsMarshal.AsArray(tokens)!;
        changedTokens[place] = new SyntaxToken(TokenKind.Word, changedTokens[place].Span);
    }

    /// <summary>One of some known words: as written, or the one that was meant where it is near; null where none is.</summary>
    private NameSyntax? Choice(ParserRuleContext? context, string what, IReadOnlyList<string> known) =>
        Name(context) is { } name ? Choice(name, what, known) : null;

    private NameSyntax? Choice(NameSyntax name, string what, IReadOnlyList<string> known)
    {
        if (KnownWords.Has(known, name.Text))
        {
            return name;
        }

        var meant = known.FirstOrDefault(word => word.Equals(name.Text, StringComparison.OrdinalIgnoreCase)) ?? Nearness.Nearest(name.Text, known);
        var shown = name.Text.Length <= 40 ? name.Text : string.Concat(name.Text.AsSpan(0, 40), "…");
        if (meant is not null)
        {
            report.Add(SyntaxProblemKind.MisspeltWord, name.Span, $"\"{shown}\" is not {what}; was {meant} meant?", meant);
            return name with { Text = meant };
        }

        report.Add(SyntaxProblemKind.NotUnderstood, name.Span, $"\"{shown}\" is not {what}; write {KnownWords.Listed(known)}.");
        return null;
    }

    /// <summary>A text; what escapes stand for is put in their place.</summary>
    private TextSyntax? Text(ParserRuleContext? context)
    {
        if (!IsRead(context) || context.Start is not GrammarToken { Place: >= 0 } token)
        {
            return null;
        }

        var first = content[token.Start];
        var isClosed = token.End - token.Start >= 2 && (first == '"' ? !token.IsOdd : content[token.End - 1] is '\u201C' or '\u201D');
        var inner = content.AsSpan(token.Start + 1, token.End - token.Start - (isClosed ? 2 : 1));
        return new TextSyntax(Unescape(isClosed ? inner : inner.TrimEnd())) { Span = TextSpan.FromBounds(token.Start, token.End) };
    }

    private static string Unescape(ReadOnlySpan<char> inner)
    {
        if (inner.IndexOf('\\') < 0)
        {
            return inner.ToString();
        }

        var value = new System.Text.StringBuilder(inner.Length);
        for (var index = 0; index < inner.Length; index++)
        {
            var next = index + 1 < inner.Length ? inner[index + 1] : ' ';
            if (inner[index] == '\\' && next is '"' or '\\' or 'n')
            {
                value.Append(next == 'n' ? '\n' : next);
                index++;
            }
            else
            {
                value.Append(inner[index]);
            }
        }

        return value.ToString();
    }

    /// <summary>A number with its unit, when one was written; null where the number cannot be taken as it stands.</summary>
    private QuantitySyntax? Quantity(ParserRuleContext? context)
    {
        if (!IsRead(context) || context.Start is not GrammarToken { Type: Grove.NUMBER, IsOdd: false } number)
        {
            return null;
        }

        NameSyntax? unit = null;
        if (context.Stop is GrammarToken { Place: >= 0 } last && last.TokenIndex > number.TokenIndex)
        {
            if (last.IsOdd)
            {
                return null;
            }

            unit = UnitOf(last);
        }

        return new QuantitySyntax(content[number.Start..number.End], unit) { Span = SpanOf(context) };
    }

    private NameSyntax UnitOf(GrammarToken token)
    {
        if (tokens[token.Place].Kind == TokenKind.Keyword)
        {
            MakeWord(token.Place);
        }

        return NameOf(token);
    }

    private MomentSyntax.Date? Day(Grove.DayContext? context)
    {
        if (!IsRead(context) || context.Start is not GrammarToken { IsOdd: false } token)
        {
            return null;
        }

        var text = content[token.Start..token.End];
        if (text.Count(static unit => unit == '-') != 2 || text[0] == '-')
        {
            report.Add(SyntaxProblemKind.NotUnderstood, SpanOf(context), $"A day is needed here, such as 2027-04-22, not \"{text}\".");
            return null;
        }

        return new MomentSyntax.Date(text) { Span = SpanOf(context) };
    }

    private NameSyntax? Year(ParserRuleContext? context)
    {
        if (!IsRead(context) || context.Start is not GrammarToken { IsOdd: false } token)
        {
            return null;
        }

        return IsYear(token) ? NameOf(token) : null;
    }

    private bool IsYear(GrammarToken token)
    {
        var text = content.AsSpan(token.Start, token.End - token.Start);
        if (text.Length <= 6 && text.IndexOfAnyExceptInRange('0', '9') < 0)
        {
            return true;
        }

        report.Add(SyntaxProblemKind.NotUnderstood, TextSpan.FromBounds(token.Start, token.End), $"A year is needed here, such as 2031, not \"{(text.Length <= 40 ? text : text[..40])}\".");
        return false;
    }

    private MomentSyntax? Moment(Grove.MomentContext? context)
    {
        if (!IsRead(context) || context.Start is not GrammarToken first)
        {
            return null;
        }

        if (first.Type is Grove.DATE or Grove.NUMBER)
        {
            return first.IsOdd || (first.Type == Grove.NUMBER && !IsYear(first)) ? null : new MomentSyntax.Date(content[first.Start..first.End]) { Span = SpanOf(context) };
        }

        var words = context.word();
        var yearToken = TokenOf(context.NUMBER());
        if (yearToken is not null && (yearToken.IsOdd || !IsYear(yearToken)))
        {
            return null;
        }

        var year = yearToken is null ? null : NameOf(yearToken);
        var name = Name(words[0]);
        if (name is null)
        {
            return null;
        }

        var span = SpanOf(context);
        if (words.Length > 1)
        {
            return Name(words[1]) is { } second ? SeasonWithPart(name, second, year, span) : null;
        }

        if (KnownWords.Has(KnownWords.Stages, name.Text))
        {
            return new MomentSyntax.Stage(name, year) { Span = span };
        }

        if (KnownWords.Has(KnownWords.Seasons, name.Text))
        {
            return year is null ? WithoutYear(name) : new MomentSyntax.Season(null, name, year) { Span = span };
        }

        return year is null ? new MomentSyntax.Task(name) { Span = span } : MeantWithYear(name, year, span);
    }

    private MomentSyntax? SeasonWithPart(NameSyntax part, NameSyntax season, NameSyntax? year, TextSpan span)
    {
        var meantPart = Choice(part, "a part of a season", KnownWords.SeasonParts);
        var meantSeason = meantPart is null ? null : Choice(season, "a season", KnownWords.Seasons);
        if (meantPart is null || meantSeason is null)
        {
            return null;
        }

        return year is null ? WithoutYear(meantSeason) : new MomentSyntax.Season(meantPart, meantSeason, year) { Span = span };
    }

    private MomentSyntax? WithoutYear(NameSyntax season)
    {
        report.Add(SyntaxProblemKind.NotUnderstood, new TextSpan(season.Span.End, 0), $"After \"{season.Text}\" comes a year such as 2027.");
        return null;
    }

    /// <summary>A word with a year behind it can only be a season or a stage.</summary>
    private MomentSyntax? MeantWithYear(NameSyntax name, NameSyntax year, TextSpan span)
    {
        string[] known = [.. KnownWords.Seasons, .. KnownWords.Stages];
        if (name.Text is "fall" or "Fall")
        {
            report.Add(SyntaxProblemKind.MisspeltWord, name.Span, "The season is called autumn here; write autumn.", "autumn");
            return new MomentSyntax.Season(null, name with { Text = "autumn" }, year) { Span = span };
        }

        var month = KnownWords.Months.ToList().FindIndex(word => word.Equals(name.Text, StringComparison.OrdinalIgnoreCase));
        if (month >= 0)
        {
            var number = month < 12 ? month : (month - 12) + (month >= 16 ? 1 : 0);
            var written = $"{year.Text}-{number + 1:00}";
            report.Add(SyntaxProblemKind.NotUnderstood, span, $"A month is written in digits; write {written}.", written);
            return new MomentSyntax.Date(written) { Span = span };
        }

        return Choice(name, "a season or a stage of the year", known) is not { } meant
            ? null
            : KnownWords.Has(KnownWords.Seasons, meant.Text)
                ? new MomentSyntax.Season(null, meant, year) { Span = span }
                : new MomentSyntax.Stage(meant, year) { Span = span };
    }
}
