using System.Globalization;
using GroveSpec.Checks;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Binding.Names;

/// <summary>The names of one kind of thing in a file: names that look the same are the same, however their accents are stored.</summary>
/// <param name="what">The kind, such as "trunk".</param>
/// <param name="expected">About how many there will be.</param>
internal sealed class NameTable(string what, int expected = 0)
{
    private readonly Dictionary<string, Declared> byForm = new(expected, StringComparer.Ordinal);
    private readonly Dictionary<string, Declared> byFoldedForm = new(expected, StringComparer.Ordinal);
    private readonly List<(int Finding, NameSyntax Name)> seconds = [];

    /// <summary>The names as their own statements spell them, in the order of the file.</summary>
    public IEnumerable<string> All => byForm.Values.Select(declared => declared.Spelling);

    /// <summary>Takes a name. A second of the same name is told, and so is one that differs only in case.</summary>
    /// <param name="name">The name.</param>
    /// <param name="scope">The file.</param>
    /// <returns>True when the name is new.</returns>
    public bool Add(NameSyntax name, BindingScope scope)
    {
        var place = scope.Place(name.Span);
        var declared = new Declared(name.Text, place);
        var form = NameForm.Of(name.Text);
        if (!byForm.TryAdd(form, declared))
        {
            var first = byForm[form];
            var finding = scope.Tell(
                FileDescriptions.TwiceNamed,
                name.Span,
                first.Spelling == name.Text
                    ? $"There is a {what} {Saying.Short(name.Text)} already; this one is left out until it has a name of its own."
                    : $"There is a {what} {Saying.Short(name.Text)} already, spelt the same to the eye but with its accents stored in another way; this one is left out until it has a name of its own.");
            scope.Amend(finding with { Related = [new RelatedPlace(first.Place, $"the first {what} {Saying.Short(first.Spelling)}")] });
            seconds.Add((scope.Findings.Count - 1, name));
            return false;
        }

        if (!byFoldedForm.TryAdd(form.ToLowerInvariant(), declared))
        {
            var other = byFoldedForm[form.ToLowerInvariant()];
            var finding = scope.Tell(FileDescriptions.SimilarNames, name.Span, $"The {what}s {Saying.Short(name.Text)} and {Saying.Short(other.Spelling)} differ only in capital and small letters; a name that also sounds different is easier to keep apart.");
            scope.Amend(finding with { Related = [new RelatedPlace(other.Place, $"the {what} {Saying.Short(other.Spelling)}")] });
        }

        return true;
    }

    /// <summary>
    /// Gives each finding about a name given twice the remedy of calling the second by the next name that is free: B2 for B, W3 for W1
    /// where there is a W2. To be called when all names of the file are taken.
    /// </summary>
    /// <param name="scope">The file.</param>
    public void OfferFreeNames(BindingScope scope)
    {
        var next = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var (at, name) in seconds)
        {
            var stem = name.Text.TrimEnd(['0', '1', '2', '3', '4', '5', '6', '7', '8', '9']);
            var number = Math.Max(2, next.GetValueOrDefault(stem));
            while (Has(Numbered(stem, number)))
            {
                number++;
            }

            next[stem] = number + 1;
            var free = Numbered(stem, number);
            scope.Findings[at] = scope.Findings[at] with { Remedies = [new Remedy($"call it {Saying.Short(free)}", [new TextEdit(scope.Place(name.Span), free)])] };
        }
    }

    /// <summary>Takes a name from a used file, unless the planting's own file has it.</summary>
    /// <param name="name">The name.</param>
    /// <param name="scope">The used file.</param>
    /// <param name="isFromUsed">Tells whether a name that was taken before came from a used file too.</param>
    /// <returns>True when the name is new.</returns>
    public bool AddShared(NameSyntax name, BindingScope scope, Func<string, bool> isFromUsed)
    {
        var form = NameForm.Of(name.Text);
        var place = scope.Place(name.Span);
        if (byForm.TryAdd(form, new Declared(name.Text, place)))
        {
            return true;
        }

        // The planting's own statement comes before a shared one, and that is as it should be.
        var first = byForm[form];
        if (isFromUsed(first.Place.File))
        {
            var finding = scope.Tell(FileDescriptions.TwiceNamed, name.Span, $"There is a {what} {Saying.Short(name.Text)} already in the used files; this one is left out.");
            scope.Amend(finding with { Related = [new RelatedPlace(first.Place, $"the first {what} {Saying.Short(first.Spelling)}")] });
        }

        return false;
    }

    /// <summary>Whether a name is known; nothing is told.</summary>
    /// <param name="name">The name.</param>
    /// <returns>True when it is.</returns>
    public bool Has(string name) => byForm.ContainsKey(NameForm.Of(name));

    /// <summary>A name as its own statement spells it. An unknown one is told and given back as written.</summary>
    /// <param name="name">The name where it is used.</param>
    /// <param name="scope">The file.</param>
    /// <param name="more">Further remedies for an unknown name.</param>
    /// <returns>The name.</returns>
    public string Resolve(NameSyntax name, BindingScope scope, Func<IEnumerable<Remedy>>? more = null)
    {
        if (byForm.TryGetValue(NameForm.Of(name.Text), out var declared))
        {
            return declared.Spelling;
        }

        var near = scope.Near(name.Text, All);
        var finding = scope.Tell(
            FileDescriptions.UnknownName,
            name.Span,
            near is null
                ? $"There is no {what} {Saying.Short(name.Text)}{Known()}."
                : $"There is no {what} {Saying.Short(name.Text)}; perhaps {Saying.Short(near)} is meant.");
        var remedies = new List<Remedy>();
        if (near is not null)
        {
            remedies.Add(scope.Replace(name.Span, near));
            finding = finding with { Related = [new RelatedPlace(byForm[NameForm.Of(near)].Place, $"the {what} {Saying.Short(near)}")] };
        }

        if (more is not null)
        {
            remedies.AddRange(more());
        }

        scope.Amend(finding with { Remedies = [.. remedies] });
        return name.Text;
    }

    private static string Numbered(string stem, int number) => string.Create(CultureInfo.InvariantCulture, $"{stem}{number}");

    private string Known() => byForm.Count switch
    {
        0 => $": the file has no {what}s",
        <= 6 => $": the {what}s are {string.Join(", ", All.Select(Saying.Short))}",
        _ => "",
    };

    private readonly record struct Declared(string Spelling, SourceSpan Place);
}
