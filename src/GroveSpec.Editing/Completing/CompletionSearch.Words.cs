using System.Globalization;
using GroveSpec.Binding.Profiles;
using GroveSpec.Checks;
using GroveSpec.Model.Judgement;
using GroveSpec.Syntax.Parsing;

namespace GroveSpec.Editing.Completing;

/// <content>The words of a kind.</content>
internal sealed partial class CompletionSearch
{
    private bool IsSeason()
    {
        if (!KnownWords.SeasonParts.Contains(place.Back(1)))
        {
            return false;
        }

        Choices(true, KnownWords.Seasons, "a season");
        return true;
    }

    /// <summary>Whether a clause has only begun: the word itself stands right before the caret.</summary>
    private bool IsOpen(string word) => place.Back(1) == word;

    private void Moments()
    {
        Choices(true, KnownWords.Stages, "a stage of the year");
        Choices(true, [.. KnownWords.SeasonParts, .. KnownWords.Seasons], "a season");
        if (place.Head == "task")
        {
            Tasks(place.Words[1]);
        }
    }

    private void Trunks(IReadOnlyCollection<string> except)
    {
        foreach (var trunk in assessment.Planting.Trunks)
        {
            if (!except.Contains(trunk.Name))
            {
                Add(trunk.Name, CompletionKind.Trunk, trunk.Role is { } role ? $"a trunk, {role.Value}" : "a trunk", trunk.Name);
            }
        }
    }

    private void Roles()
    {
        foreach (var role in assessment.Planting.Roles)
        {
            Add(role.Name, CompletionKind.Role, role.Story?.Value ?? "a role", role.Name);
        }
    }

    private void Tasks(string except)
    {
        foreach (var task in assessment.Planting.Tasks)
        {
            if (task.Name != except)
            {
                Add(task.Name, CompletionKind.Task, "a task", task.Name);
            }
        }
    }

    private void Species(bool isHere)
    {
        foreach (var name in isHere ? assessment.Planting.Profiles.Select(profile => profile.Name).Concat(BuiltInProfiles.Names) : [])
        {
            Add(name, CompletionKind.Species, "a species with a profile", name);
        }
    }

    private void Checks(bool isHere, bool withLimit = false)
    {
        foreach (var check in isHere ? Catalogue.All : [])
        {
            if (check.IsComposition && (!withLimit || check.Limit is not null))
            {
                Add(check.Name, CompletionKind.Check, check.Meaning, check.Name);
            }
        }
    }

    private void LimitUnit()
    {
        if (IsAfterNumber && Catalogue.Find(place.Words[1])?.Limit is { } limit)
        {
            Units(limit.Unit switch
            {
                ToleranceUnit.Percent => ["%"],
                ToleranceUnit.Millimetres => KnownLengths,
                ToleranceUnit.Degrees => Angles,
                ToleranceUnit.Days => ["days"],
                _ => [],
            });
        }
    }

    private void Choices(bool isHere, IEnumerable<string> words, string what)
    {
        foreach (var word in isHere ? words : [])
        {
            Add(word, CompletionKind.Choice, what, word);
        }
    }

    private void Units(IReadOnlyList<string> units)
    {
        foreach (var unit in IsAfterNumber ? units : [])
        {
            Add(unit, CompletionKind.Unit, "a unit", unit);
        }
    }

    private void Word(bool isHere, string word, string what)
    {
        if (isHere)
        {
            Add(word, CompletionKind.Keyword, what, word);
        }
    }

    /// <summary>The clauses of a statement that do not stand in it yet.</summary>
    private void Clauses(string statement)
    {
        var isRepeated = statement is "profile" or "measured";
        foreach (var (owner, word, purpose, form) in StatementForms.Clauses)
        {
            if (owner == statement && (isRepeated || (!place.Near.Contains(word) && !IsRivalled(word))))
            {
                Add(word, CompletionKind.Form, purpose, form);
            }
        }
    }

    private bool IsRivalled(string word) => word switch
    {
        "diameter" => place.Near.Contains("girth"),
        "girth" => place.Near.Contains("diameter"),
        "lean" => place.Near.Contains("line"),
        "line" => place.Near.Contains("lean"),
        "near" => place.Near.Contains("far"),
        "far" => place.Near.Contains("near"),
        _ => false,
    };

    private void Add(string label, CompletionKind kind, string detail, string form)
    {
        if (labels.Add(string.Create(CultureInfo.InvariantCulture, $"{(int)kind} {label}")))
        {
            found.Add(new(label, kind, detail, kind == CompletionKind.Form || form.Contains('‹', StringComparison.Ordinal) ? CompletionPart.Read(form) : [new(form, IsPlace: false)]));
        }
    }
}
