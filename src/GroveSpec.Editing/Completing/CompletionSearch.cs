using System.Collections.Immutable;
using GroveSpec.Binding;
using GroveSpec.Model.Tasks;
using GroveSpec.Syntax.Parsing;

namespace GroveSpec.Editing.Completing;

/// <summary>Collects what fits at one place.</summary>
/// <param name="assessment">The file.</param>
/// <param name="place">The place.</param>
internal sealed partial class CompletionSearch(Assessment assessment, CaretPlace place)
{
    private readonly ImmutableArray<Completion>.Builder found = ImmutableArray.CreateBuilder<Completion>();
    private readonly HashSet<string> labels = new(StringComparer.Ordinal);

    /// <summary>What fits, the likeliest first.</summary>
    public ImmutableArray<Completion> Found => found.ToImmutable();

    /// <summary>Collects it; in comments and quoted texts nothing is to be asked for.</summary>
    public void Collect()
    {
        if (place.Words.IsEmpty)
        {
            Statements();
            return;
        }

        if (AwaitsNumber())
        {
            return;
        }

        switch (place.Head)
        {
            case "habit":
                Choices(place.Words.Length == 1, KnownWords.Habits, "a habit");
                break;
            case "species":
                Species(place.Words.Length == 1);
                break;
            case "container":
                Choices(place.Words.Length == 1, KnownWords.ContainerShapes, "a shape");
                Units(KnownLengths);
                break;
            case "site":
                Site();
                break;
            case "viewed":
                Units(place.Back(2) == "from" ? Angles : KnownLengths);
                Clauses("viewed");
                break;
            case "trunk":
                Trunk();
                break;
            case "tape":
                Tape();
                break;
            case "role":
                Role();
                break;
            case "task":
                Task();
                break;
            case "seen":
                Choices(place.Words.Length == 1, KnownWords.Stages, "a stage of the year");
                break;
            case "measured":
                Measured();
                break;
            case "tolerance":
                Checks(place.Words.Length == 1, withLimit: true);
                LimitUnit();
                break;
            case "accept":
                Accept();
                break;
            case "mute":
                Checks(place.Words.Length == 1);
                Word(place.Words.Length == 2, "because", "why");
                break;
            case "profile":
                Profile();
                break;
            default:
                break;
        }
    }

    private static IReadOnlyList<string> KnownLengths => Syntax.Parsing.Units.Lengths;

    private static IReadOnlyList<string> Angles => ["deg"];

    private bool IsAfterNumber => place.Back(1) is { Length: > 0 } word && char.IsAsciiDigit(word[^1]) && (char.IsAsciiDigit(word[0]) || word[0] is '-' or '+');

    private void Statements()
    {
        foreach (var (word, purpose, form) in StatementForms.Statements)
        {
            // What stands once only is not offered twice.
            var has = word switch
            {
                "planting" => assessment.Planting.Name is not null,
                "habit" => assessment.Planting.Habit is not null,
                "species" => assessment.Planting.Species is not null,
                "container" => assessment.Planting.Container is not null,
                "site" => assessment.Planting.Site is not null,
                "viewed" => assessment.Planting.Viewed is not null,
                "concept" => assessment.Planting.Concept is not null,
                _ => false,
            };
            if (!has)
            {
                var name = word == "trunk" ? NextNames.Trunk(assessment.Planting) : NextNames.Task(assessment.Planting, TaskKind.Prune);
                Add(word, CompletionKind.Form, purpose, form.Replace("NAME", name, StringComparison.Ordinal));
            }
        }
    }

    /// <summary>Whether the word before the caret wants a number next, so that no word fits.</summary>
    private bool AwaitsNumber()
    {
        var last = place.Back(1);
        var isYear = place.Near.Length > 1 && (KnownWords.Seasons.Contains(last) || KnownWords.Stages.Contains(last));
        return place.Head switch
        {
            "trunk" => last is "at" or "diameter" or "girth" or "height" or "lean" or "toward" or "line" or "crown" or "raised" || isYear,
            "role" => place.IsInBraces && (last is "under" or "by" or "rank" || (last is "diameter" or "height" && place.Back(2) == "aim")),
            "measured" => place.Row.Length > 1 && last is "diameter" or "girth" or "height" or "crown",
            "task" => last is "coil" or "span" or "bend" or "toward" or "every" || (isYear && KnownWords.Seasons.Contains(last)),
            _ => false,
        };
    }
}
