using GroveSpec.Binding.Names;
using GroveSpec.Model.Tasks;
using GroveSpec.Syntax.Parsing;

namespace GroveSpec.Editing.Completing;

/// <content>What each statement takes.</content>
internal sealed partial class CompletionSearch
{
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
}
