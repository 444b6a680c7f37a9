using System.Collections.Immutable;
using System.Globalization;
using GroveSpec.Binding;
using GroveSpec.Binding.Names;
using GroveSpec.Binding.Profiles;
using GroveSpec.Checks;
using GroveSpec.Model.Judgement;
using GroveSpec.Model.Tasks;
using GroveSpec.Syntax.Parsing;

namespace GroveSpec.Editing.Completing;

/// <summary>Finds what fits at the caret.</summary>
public static class Completer
{
    /// <summary>What fits at a place.</summary>
    /// <param name="assessment">The file.</param>
    /// <param name="offset">The caret, in UTF-16 code units from the start.</param>
    /// <returns>What fits, the likeliest first; nothing in comments and quoted texts.</returns>
    public static CompletionList At(Assessment assessment, int offset)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        var place = CaretPlace.At(assessment.Tree, Math.Clamp(offset, 0, assessment.Tree.Text.Length));
        var fits = new Fits(assessment, place);
        if (!place.IsInText)
        {
            fits.Collect();
        }

        return new(place.Replaced, fits.Found);
    }

    /// <summary>Collects what fits at one place.</summary>
    private sealed class Fits(Assessment assessment, CaretPlace place)
    {
        private readonly ImmutableArray<Completion>.Builder found = ImmutableArray.CreateBuilder<Completion>();
        private readonly HashSet<string> labels = new(StringComparer.Ordinal);

        public ImmutableArray<Completion> Found => found.ToImmutable();

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

        private void Site()
        {
            Units(place.Near.Contains("means") ? Syntax.Parsing.Units.Temperatures : []);
            if (IsAfterNumber && place.Back(2) == "latitude")
            {
                Choices(true, KnownWords.Hemispheres, "a hemisphere");
            }
            else if (IsAfterNumber && place.Back(2) == "frost")
            {
                Choices(true, KnownWords.Months, "a month");
            }
            else if (place.Back(1) is "last" or "first")
            {
                Word(true, "frost", "of the year");
            }
            else
            {
                Clauses("site");
            }
        }

        private void Trunk()
        {
            if (place.Words.Length == 1)
            {
                var next = NextNames.Trunk(assessment.Planting);
                Add(next, CompletionKind.Trunk, "the next free name", next);
                return;
            }

            switch (place.Back(1))
            {
                case "role":
                    Roles();
                    return;
                case "species":
                    Species(true);
                    return;
                case "planned" or "removed":
                    Moments();
                    return;
                default:
                    break;
            }

            if (IsSeason())
            {
                return;
            }

            Units(place.Back(2) is "toward" or "lean" ? Angles : KnownLengths);
            Word(place.Near.Contains("lean") && !place.Near.Contains("toward") && !IsOpen("lean"), "toward", "the bearing it leans to");
            Clauses("trunk");
        }

        private void Tape()
        {
            if (place.Words.Length == 1 || place.Back(1) == "to")
            {
                Trunks(except: place.Words.Length > 1 ? [place.Words[1]] : []);
                return;
            }

            Word(place.Words.Length == 2, "to", "the other trunk");
            Units(KnownLengths);
            Word(place.Words.Length >= 5 && !place.Words.Contains("between"), "between bark", "read with calipers");
        }

        private void Role()
        {
            if (place.Words.Length == 1)
            {
                // The names that trunks use and nobody has described yet.
                foreach (var name in assessment.Planting.Trunks.Select(trunk => trunk.Role?.Value).OfType<string>().Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal))
                {
                    if (!assessment.Planting.Roles.Any(role => role.Name == name))
                    {
                        Add(name, CompletionKind.Role, "not described yet", name);
                    }
                }

                return;
            }

            switch (place.Back(1))
            {
                case "form":
                    Choices(true, KnownWords.Forms, "a form");
                    break;
                case "vigour":
                    Choices(true, KnownWords.Vigours, "a vigour");
                    break;
                case "aim" or "keep":
                    Choices(true, ["diameter", "height"], "a size");
                    break;
                case "diameter" or "height" when place.Back(2) == "keep":
                    Word(true, "under", "the size to stay under");
                    break;
                default:
                    Units(KnownLengths);
                    Word(place.Near.Contains("aim") && !place.Near.Contains("by"), "by", "the year");
                    Clauses(place.IsInBraces ? "role" : "");
                    break;
            }
        }

        private void Task()
        {
            var planting = assessment.Planting;
            if (place.Words.Length == 1)
            {
                foreach (var kind in new[] { TaskKind.Wire, TaskKind.Prune, TaskKind.Repot, TaskKind.Feed })
                {
                    var name = NextNames.Task(planting, kind);
                    Add(name, CompletionKind.Task, $"the next free name, for {Words.TaskKinds[(int)kind]}", name);
                }

                return;
            }

            if (place.Words.Length == 2)
            {
                Choices(true, KnownWords.TaskKinds, "a kind of work");
                return;
            }

            switch (place.Back(1))
            {
                case "on":
                    Trunks(except: []);
                    Word(true, "all", "every trunk");
                    Word(true, "role", "all trunks of a role");
                    return;
                case "role" when place.Back(2) == "on":
                    Roles();
                    return;
                case "of":
                    Tasks(place.Words[1]);
                    return;
                case "in":
                    Choices(true, [.. KnownWords.SeasonParts, .. KnownWords.Seasons], "a season");
                    return;
                case "after" or "before" or "until" or "from" or "to" when place.Near.Contains("span") is false:
                    Moments();
                    return;
                case "with" or "x":
                    Choices(true, KnownWords.Metals, "a metal");
                    return;
                case "facing":
                    Choices(true, KnownWords.Sides, "a side");
                    return;
                default:
                    break;
            }

            if (IsSeason())
            {
                return;
            }

            if (IsAfterNumber)
            {
                Units(place.Back(2) is "coil" or "bend" or "toward" or "facing" ? Angles
                    : KnownWords.Metals.Contains(place.Back(2)) || place.Back(2) is "span" or "over" || place.Near.Contains("span") ? KnownLengths
                    : Syntax.Parsing.Units.Times);
            }

            if (Syntax.Parsing.Units.Times.Contains(place.Back(1)) && !place.Near.Contains("every"))
            {
                Word(true, "after", "another task");
                Word(true, "before", "another task");
            }

            if (place.Near.Contains("on") && planting.Trunks.Any(trunk => trunk.Name == place.Back(1)))
            {
                Trunks(except: place.Near);
            }

            Word(place.Near.Contains("bend") && !place.Near.Contains("toward") && !IsOpen("bend"), "toward", "the bearing");
            Word(place.Near.Contains("from") && !place.Near.Contains("to") && !IsOpen("from"), "to", "the end");
            Clauses("task");
        }

        private void Measured()
        {
            if (!place.IsInBraces)
            {
                return;
            }

            if (place.Row.IsEmpty)
            {
                Trunks(except: []);
                return;
            }

            Units(KnownLengths);
            Clauses("measured");
        }

        private void Accept()
        {
            if (place.Words.Length == 1)
            {
                Checks(true);
                return;
            }

            if (!place.Words.Contains("because"))
            {
                Trunks(except: place.Words);
                Add("because", CompletionKind.Keyword, "why it may stand", "because \"‹why›\"");
            }
        }

        private void Profile()
        {
            if (place.Words.Length == 1)
            {
                Species(true);
                return;
            }

            if (!place.IsInBraces)
            {
                return;
            }

            switch (place.Back(1))
            {
                case "leaves":
                    Choices(true, KnownWords.LeafHabits, "a leaf habit");
                    break;
                case "growth":
                    Choices(true, KnownWords.Paces, "a pace");
                    break;
                case "flush":
                    Choices(true, KnownWords.Flushes, "a flush");
                    break;
                case "stage":
                    Choices(true, KnownWords.Stages, "a stage of the year");
                    break;
                case "before" or "after":
                    Choices(true, ["last frost", "first frost", "solstice"], "a day of the year");
                    break;
                case "common" when place.Row.Length > 1:
                    Word(true, "practice", "a rule of thumb");
                    break;
                case "from" when place.Row.Length > 1:
                    Word(true, "memory", "not looked up");
                    break;
                default:
                    Units(place.Near.Contains("stage") ? ["days"] : []);
                    if (place.Row.Length > 1)
                    {
                        Word(true, "source", "where it comes from");
                        Word(true, "common practice", "a rule of thumb");
                        Word(true, "from memory", "not looked up");
                    }

                    Clauses("profile");
                    break;
            }
        }

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
}
