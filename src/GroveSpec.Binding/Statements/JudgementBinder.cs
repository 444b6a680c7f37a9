using System.Collections.Immutable;
using GroveSpec.Binding.Names;
using GroveSpec.Binding.Origins;
using GroveSpec.Binding.Quantities;
using GroveSpec.Checks;
using GroveSpec.Model.Judgement;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Binding.Statements;

/// <summary>Binds the limits that a file sets and the findings that it lets stand.</summary>
/// <param name="scope">The file.</param>
internal sealed class JudgementBinder(BindingScope scope)
{
    private readonly Dictionary<string, Statement> accepted = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Statement> muted = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Statement> tolerated = new(StringComparer.Ordinal);

    /// <summary>Binds a limit.</summary>
    /// <param name="statement">The statement.</param>
    /// <returns>The limit; null where it cannot be taken, which is told.</returns>
    public Tolerance? Tolerance(Statement.Tolerance statement)
    {
        if (statement is not { Check: { } check, Limit: { } limit })
        {
            return null;
        }

        TellUnknown(check);
        TellTwice(tolerated, check.Text, statement, FileDescriptions.SaidTwice, $"A limit for {Saying.Short(check.Text)} was set already, and the first holds; take one of the two out.");
        if (!scope.Quantities.IsNumber(limit) || Unit(limit) is not { } unit)
        {
            return null;
        }

        double amount;
        if (UnitTable.KindOf(unit) == QuantityKind.Length)
        {
            if (scope.Quantities.Length(limit, "The limit") is not { } length)
            {
                return null;
            }

            amount = length.Millimetres;
        }
        else
        {
            amount = DecimalNumber.AsDouble(limit.Number) * (unit == UnitWord.Week ? 7 : 1);
        }

        return new Tolerance
        {
            Check = check.Text,
            Origin = scope.Origin("tolerance:" + OriginTable.Piece(check.Text), statement),
            Amount = amount,
            Unit = UnitTable.KindOf(unit) switch
            {
                QuantityKind.Length => ToleranceUnit.Millimetres,
                QuantityKind.Angle => ToleranceUnit.Degrees,
                QuantityKind.Share => ToleranceUnit.Percent,
                QuantityKind.Time => ToleranceUnit.Days,
                _ => ToleranceUnit.Ratio,
            },
        };
    }

    /// <summary>Binds a finding that is let stand.</summary>
    /// <param name="statement">The statement.</param>
    /// <param name="trunks">The trunks of the file.</param>
    /// <returns>The statement's meaning; null where it has none, which is told.</returns>
    public AcceptedFinding? Accept(Statement.Accept statement, NameTable trunks)
    {
        if (statement.Check is not { } check || (statement.IsBroken && statement.Reason is null))
        {
            return null;
        }

        TellUnknown(check);
        TellReason(statement, statement.Reason, "accept");
        var names = ImmutableArray.CreateBuilder<string>(statement.Trunks.Length);
        foreach (var trunk in statement.Trunks)
        {
            names.Add(trunks.Resolve(trunk, scope));
        }

        var key = check.Text + '\n' + string.Join('\n', names.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
        if (TellTwice(accepted, key, statement, FileDescriptions.TwiceAccepted, "The same finding is accepted already: one reason is enough, take one of the two out."))
        {
            return null;
        }

        return new AcceptedFinding(
            check.Text,
            names.ToImmutable(),
            statement.Reason?.Value ?? "",
            scope.Origin($"accept:{OriginTable.Piece(check.Text)}:{string.Join('-', names.Select(OriginTable.Piece))}", statement));
    }

    /// <summary>Binds a check that is turned off.</summary>
    /// <param name="statement">The statement.</param>
    /// <returns>The statement's meaning; null where it has none, which is told.</returns>
    public MutedCheck? Mute(Statement.Mute statement)
    {
        if (statement.Check is not { } check || (statement.IsBroken && statement.Reason is null))
        {
            return null;
        }

        TellUnknown(check);
        TellReason(statement, statement.Reason, "mute");
        TellTwice(muted, check.Text, statement, FileDescriptions.SaidTwice, $"{Saying.Short(check.Text)} is muted already: take one of the two out.");
        return new MutedCheck(check.Text, statement.Reason?.Value ?? "", scope.Origin("mute:" + OriginTable.Piece(check.Text), statement));
    }

    private UnitWord? Unit(QuantitySyntax limit)
    {
        if (limit.Unit is not { } word)
        {
            return UnitWord.None;
        }

        if (UnitTable.Exact(word.Text) is { } exact && exact is not (UnitWord.Celsius or UnitWord.Fahrenheit or UnitWord.Month or UnitWord.Year))
        {
            return exact;
        }

        UnitWord? meant = null;
        foreach (var kind in (ReadOnlySpan<QuantityKind>)[QuantityKind.Length, QuantityKind.Angle, QuantityKind.Share])
        {
            meant ??= UnitTable.Meant(word.Text, kind);
        }

        if (!scope.IsTold(word.Span))
        {
            scope.Tell(
                FileDescriptions.OddUnit,
                word.Span,
                meant is { } found
                    ? $"\"{Saying.Short(word.Text)}\" is written {UnitTable.Spelling(found)} here."
                    : $"\"{Saying.Short(word.Text)}\" is no unit of a limit: limits are in %, deg, days or weeks, or a length in mm, cm, m, in or ft, or bare numbers.",
                meant is { } unit ? UnitTable.Spelling(unit) : null);
        }

        return meant;
    }

    private void TellUnknown(NameSyntax check)
    {
        if (Catalogue.Find(check.Text) is not null)
        {
            return;
        }

        var near = scope.Near(check.Text, Catalogue.All.Select(known => known.Name));
        scope.Tell(
            FileDescriptions.UnknownCheck,
            check.Span,
            near is null ? $"There is no check {Saying.Short(check.Text)}." : $"There is no check {Saying.Short(check.Text)}; perhaps {near} is meant.",
            near);
    }

    private void TellReason(Statement statement, TextSyntax? reason, string word)
    {
        if (reason is null || reason.Value.AsSpan().Trim().IsEmpty)
        {
            scope.Tell(FileDescriptions.EmptyReason, reason?.Span ?? statement.Span, $"Say why, for whoever reads this {word} in a year: because \"…\".");
        }
    }

    private bool TellTwice(Dictionary<string, Statement> seen, string key, Statement statement, CheckDescription check, string message)
    {
        if (seen.TryAdd(key, statement))
        {
            return false;
        }

        var finding = scope.Tell(check, statement.Span, message);
        scope.Amend(finding with
        {
            Related = [new RelatedPlace(scope.Place(seen[key].Span), "the first")],
            Remedies = [scope.TakeOut("take the second out", statement.Span)],
        });
        return true;
    }
}
