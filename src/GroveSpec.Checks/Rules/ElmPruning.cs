using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Care;
using GroveSpec.Model.Tasks;

namespace GroveSpec.Checks.Rules;

/// <summary>An elm or zelkova pruned in the half year in which beetles that carry disease fly.</summary>
internal sealed class ElmPruning : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "elm-pruning",
        Severity = Severity.Hint,
        Meaning = "An elm or zelkova is pruned in the warm half of the year.",
        Explanation = "Fresh cuts draw the beetles that carry elm disease, and in some places elms may be pruned only while those do not fly: Alberta allows it from 1 October to 31 March, and tools are disinfected between trees. South of the equator the half year is turned round. Ask your local plant-health authority what holds where you are, also before a plant leaves the garden.",
        Source = "Alberta rules on elm pruning",
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        var isSouthern = context.Planting.Site?.IsSouthern ?? false;
        foreach (var work in context.Work)
        {
            if (work.Kind == TaskKind.Prune && work.Kinds.FirstOrDefault(kind => kind.IsElmKin) is { } kind
                && work.ToCome.Any(days => ElmSeason.Touches(days, isSouthern)))
            {
                var half = isSouthern ? "October to March" : "April to September";
                yield return WorkDraft.Of(context, Description, work, $"{WorkDraft.Name(work)} on {WorkDraft.Trunks(work)} may fall into {half}, when fresh cuts on {kind.Said} draw beetles that carry elm disease, and some places forbid it. Prune in the other half of the year, or ask your local plant-health authority.");
            }
        }
    }
}
