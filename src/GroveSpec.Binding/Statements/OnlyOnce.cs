using GroveSpec.Binding.Origins;
using GroveSpec.Checks;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Binding.Statements;

/// <summary>Lets each kind of clause pass once in a statement; a second is told and left out.</summary>
/// <param name="scope">The file.</param>
/// <param name="of">What the statement is about, to end a sentence.</param>
internal struct OnlyOnce(BindingScope scope, string of)
{
    private Clause? first;
    private Dictionary<Type, Clause>? others;

    /// <summary>Takes a clause.</summary>
    /// <param name="clause">The clause.</param>
    /// <returns>True for the first of its kind.</returns>
    public bool Take(Clause clause)
    {
        if (first is null)
        {
            first = clause;
            return true;
        }

        others ??= new() { [KeyOf(first)] = first };
        if (others.TryAdd(KeyOf(clause), clause))
        {
            return true;
        }

        var name = PartPlaces.NameOf(clause);
        var finding = scope.Tell(FileDescriptions.SaidTwice, clause.Span, $"\"{name}\" was said already of {of}, and the first holds; take one of the two out.");
        scope.Amend(finding with
        {
            Related = [new RelatedPlace(scope.Place(others[KeyOf(clause)].Span), $"the first \"{name}\"")],
            Remedies = [scope.TakeOut("take the second out", clause.Span)],
        });
        return false;
    }

    private static Type KeyOf(Clause clause) => clause is Clause.Frost { IsLast: true } ? typeof(OnlyOnce) : clause.GetType();
}
