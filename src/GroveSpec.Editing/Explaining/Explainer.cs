using System.Collections.Immutable;
using System.Globalization;
using GroveSpec.Binding;
using GroveSpec.Binding.Names;
using GroveSpec.Binding.Profiles;
using GroveSpec.Binding.Quantities;
using GroveSpec.Checks;
using GroveSpec.Editing.Completing;
using GroveSpec.Editing.Names;
using GroveSpec.Model.Judgement;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Roles;
using GroveSpec.Model.Times;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Editing.Explaining;

/// <summary>Tells what is known of the word at a place.</summary>
public static class Explainer
{
    /// <summary>What is known of a place.</summary>
    /// <param name="assessment">The file.</param>
    /// <param name="offset">The place, in UTF-16 code units from the start.</param>
    /// <returns>What is known; null where nothing is, as between words.</returns>
    public static Explanation? At(Assessment assessment, int offset)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        if (NameUses.At(assessment.Tree, offset) is { } use)
        {
            return OfName(assessment, use);
        }

        var tokens = assessment.Tree.Tokens;
        for (var index = 0; index < tokens.Length && tokens[index].Span.Start <= offset; index++)
        {
            if (tokens[index].Span.Touches(offset))
            {
                var found = tokens[index].Kind switch
                {
                    TokenKind.Keyword => OfKeyword(assessment, tokens[index]),
                    TokenKind.Number => OfNumber(assessment, index),
                    TokenKind.Word when OfStage(assessment, index) is { } stage => stage,
                    TokenKind.Word => index > 1 && OfNumber(assessment, index - 2) is { } quantity && quantity.Span.Touches(offset) ? quantity : null,
                    _ => null,
                };
                if (found is not null)
                {
                    return found;
                }
            }
        }

        return null;
    }

    private static Explanation? OfName(Assessment assessment, NameUse use)
    {
        var planting = assessment.Planting;
        switch (use.Kind)
        {
            case NameKind.Trunk:
                return assessment.State.Trunks.FirstOrDefault(trunk => NameForm.Of(trunk.Name) == use.Name) is { } trunk
                    ? new(use.Span, $"Trunk {trunk.Name}", TrunkLines.Of(assessment, trunk))
                    : new(use.Span, $"Trunk {use.Name}", ["There is no such trunk in this file."]);
            case NameKind.Role:
                return planting.Roles.FirstOrDefault(role => NameForm.Of(role.Name) == use.Name) is { } role
                    ? new(use.Span, $"Role {role.Name}", RoleLines(assessment, role))
                    : new(use.Span, $"Role {use.Name}", ["No role of this name is described."]);
            case NameKind.Task:
                return planting.Tasks.FirstOrDefault(task => NameForm.Of(task.Name) == use.Name) is { } task
                    ? new(use.Span, $"Task {task.Name}", TaskLines.Of(assessment, task))
                    : new(use.Span, $"Task {use.Name}", ["There is no such task in this file."]);
            case NameKind.Species:
                return planting.ProfileOf(use.Name) is { } profile
                    ? new(use.Span, $"Species {use.Name}", SpeciesLines.Of(profile))
                    : new(use.Span, $"Species {use.Name}", [$"There is no profile of it. {BuiltInProfiles.Names.Count()} species come with the program; a profile of your own can add more."]);
            case NameKind.Check:
                return Catalogue.Find(use.Name) is { } check ? OfCheck(assessment, use.Span, check) : null;
            default:
                return NamedFile.Of(assessment, use.Name) is { } file
                    ? new(use.Span, $"File {use.Name}", [$"Gives {Count(file.Tree, "role", statement => statement is Statement.Role)}, {Count(file.Tree, "tolerance", statement => statement is Statement.Tolerance)} and {Count(file.Tree, "profile", statement => statement is Statement.Profile)}."])
                    : new(use.Span, $"File {use.Name}", ["It could not be read."]);
        }
    }

    private static Explanation OfCheck(Assessment assessment, TextSpan span, CheckDescription check)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        lines.Add(check.Meaning);
        lines.Add(check.Explanation);
        if (check.Limit is { } limit)
        {
            var own = assessment.Planting.Tolerances.Any(tolerance => tolerance.Check == check.Name) ? "; this file sets its own" : "";
            lines.Add($"Limit: {LengthWording.Say(limit.Amount, 3)}{UnitOf(limit.Unit)}{own}.");
        }

        lines.Add($"Source: {check.Source}.");
        return new(span, $"Check {check.Name}", lines.ToImmutable(), check.IsComposition ? CheckExamples.Sketch(check.Name) : null);
    }

    private static string UnitOf(ToleranceUnit unit) => unit switch
    {
        ToleranceUnit.Percent => " %",
        ToleranceUnit.Millimetres => " mm",
        ToleranceUnit.Degrees => " deg",
        ToleranceUnit.Days => " days",
        _ => "",
    };

    private static ImmutableArray<string> RoleLines(Assessment assessment, Role role)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        if (role.Story is { } story)
        {
            lines.Add(story.Value);
        }

        var traits = new List<string>();
        if (role.Form is { } form)
        {
            traits.Add(form.Value switch
            {
                Form.Stout => "stout: wide but short",
                Form.Slender => "slender: tall but thin",
                _ => "balanced: as wide as it is tall for this planting",
            });
        }

        if (role.Vigour is { } vigour)
        {
            traits.Add($"vigour {Words.Vigours[(int)vigour.Value]}");
        }

        traits.AddRange(role.Aims.Select(aim => string.Create(CultureInfo.InvariantCulture, $"{Words.Dimensions[(int)aim.Dimension]} {LengthWording.Say(aim.Target, assessment.Units)} by {aim.ByYear}")));
        traits.AddRange(role.Ceilings.Select(ceiling => $"{Words.Dimensions[(int)ceiling.Dimension]} under {LengthWording.Say(ceiling.Limit, assessment.Units)}"));
        if (traits.Count > 0)
        {
            lines.Add($"{string.Join("; ", traits)}.");
        }

        var trunks = assessment.Planting.Trunks.Where(trunk => trunk.Role?.Value == role.Name).Select(trunk => trunk.Name).ToList();
        lines.Add(trunks.Count == 0 ? "No trunk of this file plays it." : $"Played by {string.Join(", ", trunks)}.");
        return lines.ToImmutable();
    }

    private static Explanation? OfKeyword(Assessment assessment, SyntaxToken token)
    {
        var tree = assessment.Tree;
        var word = tree.Text.Slice(token.Span);
        if (tree.Statements.FirstOrDefault(statement => statement.Span.Touches(token.Span.Start)) is not { } statement)
        {
            return null;
        }

        if (token.Span.Start == statement.Span.Start)
        {
            foreach (var (name, purpose, form) in StatementForms.Statements)
            {
                if (name == word)
                {
                    return new(token.Span, word, [$"{char.ToUpperInvariant(purpose[0])}{purpose[1..]}.", $"Such as: {Plain(form)}", .. statement is Statement.Site ? SiteLines.Of(assessment) : []]);
                }
            }
        }

        var head = HeadOf(tree, statement);
        foreach (var (owner, name, purpose, form) in StatementForms.Clauses)
        {
            if (owner == head && name == word)
            {
                return new(token.Span, word, [$"{char.ToUpperInvariant(purpose[0])}{purpose[1..]}.", $"Such as: {Plain(form)}"]);
            }
        }

        return null;
    }

    /// <summary>A stage of a year, in a task's time or in a note of what was seen.</summary>
    private static Explanation? OfStage(Assessment assessment, int index)
    {
        var (tree, tokens) = (assessment.Tree, assessment.Tree.Tokens);
        var word = tree.Text.Slice(tokens[index].Span);
        var stage = Words.IndexOf(Words.Stages, word);
        if (stage < 0 || index + 2 >= tokens.Length || tokens[index + 1].Kind != TokenKind.Blank || tokens[index + 2].Kind is not (TokenKind.Number or TokenKind.Date))
        {
            return null;
        }

        var digits = tree.Text.Slice(tokens[index + 2].Span);
        var dash = digits.IndexOf('-', StringComparison.Ordinal);
        if (!int.TryParse(dash < 0 ? digits : digits[..dash], NumberStyles.None, CultureInfo.InvariantCulture, out var year))
        {
            return null;
        }

        var statement = tree.Statements.FirstOrDefault(one => one.Span.Touches(tokens[index].Span.Start));
        var task = statement is Statement.Task { Name: { } name } ? assessment.Planting.Tasks.FirstOrDefault(one => NameForm.Of(one.Name) == NameForm.Of(name.Text)) : null;
        return statement is Statement.Task or Statement.Seen
            ? new(TextSpan.FromBounds(tokens[index].Span.Start, tokens[index + 2].Span.End), string.Create(CultureInfo.InvariantCulture, $"{word} {year}"), StageLines.Of(assessment.Planting, task, (Stage)stage, year))
            : null;
    }

    private static string HeadOf(SyntaxTree tree, Statement statement)
    {
        var text = tree.Text.Slice(statement.Span);
        var end = text.AsSpan().IndexOfAny(" \t\r\n{");
        return end < 0 ? text : text[..end];
    }

    private static string Plain(string form) => form.Replace("‹NAME›", "A", StringComparison.Ordinal).Replace("‹", "", StringComparison.Ordinal).Replace("›", "", StringComparison.Ordinal).Replace('\n', ' ');

    /// <summary>A number and its unit, in the other units that a grower may think in.</summary>
    private static Explanation? OfNumber(Assessment assessment, int index)
    {
        var tokens = assessment.Tree.Tokens;
        if (tokens[index].Kind != TokenKind.Number || index + 2 >= tokens.Length || tokens[index + 1].Kind != TokenKind.Blank || tokens[index + 2].Kind != TokenKind.Word)
        {
            return null;
        }

        var text = assessment.Tree.Text;
        if (UnitTable.Exact(text.Slice(tokens[index + 2].Span)) is not { } unit || UnitTable.KindOf(unit) != QuantityKind.Length
            || !double.TryParse(text.Slice(tokens[index].Span), NumberStyles.Float, CultureInfo.InvariantCulture, out var number) || !(Math.Abs(number) < 1e9))
        {
            return null;
        }

        var millimetres = number * UnitTable.Nanometres(unit) / Length.NanometresPerMillimetre;
        var span = TextSpan.FromBounds(tokens[index].Span.Start, tokens[index + 2].Span.End);
        return new(span, text.Slice(span), [$"{LengthWording.Say(millimetres, 2)} mm = {LengthWording.Say(millimetres / 10, 3)} cm = {LengthWording.Say(millimetres / 25.4, 3)} in"]);
    }

    private static string Count(SyntaxTree tree, string thing, Func<Statement, bool> isCounted) =>
        tree.Statements.Count(isCounted) is var count && count == 1 ? $"1 {thing}" : string.Create(CultureInfo.InvariantCulture, $"{count} {thing}s");
}
