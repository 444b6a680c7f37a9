using GroveSpec.Binding.Names;
using GroveSpec.Binding.Origins;
using GroveSpec.Binding.Quantities;
using GroveSpec.Checks;
using GroveSpec.Model;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Binding;

/// <summary>One file while it is bound: what was found wrong with it, and where its facts stand.</summary>
internal sealed class BindingScope
{
    /// <summary>After so many unknown names no near one is looked for: a file with more was not mistyped.</summary>
    private const int MostSuggestions = 50;

    private readonly string suffix;
    private int suggestions;

    /// <summary>Begins to bind a file.</summary>
    /// <param name="tree">Its tree.</param>
    /// <param name="file">Its path, as findings name it.</param>
    /// <param name="origins">Where facts are written down.</param>
    /// <param name="findings">Where findings go.</param>
    /// <param name="suffix">What is put behind the origins of a file that is not the planting's own.</param>
    public BindingScope(SyntaxTree tree, string file, OriginTable origins, List<Finding> findings, string suffix)
    {
        Tree = tree;
        File = file;
        Origins = origins;
        Findings = findings;
        this.suffix = suffix;
        Quantities = new QuantityReader(this);
        Dates = new DateReader(this);
    }

    /// <summary>The file's tree.</summary>
    public SyntaxTree Tree { get; }

    /// <summary>The file's path.</summary>
    public string File { get; }

    /// <summary>Where facts are written down.</summary>
    public OriginTable Origins { get; }

    /// <summary>What was found.</summary>
    public List<Finding> Findings { get; }

    /// <summary>Reads numbers with their units.</summary>
    public QuantityReader Quantities { get; }

    /// <summary>Reads dates.</summary>
    public DateReader Dates { get; }

    /// <summary>Gives a statement its origin.</summary>
    /// <param name="id">Its name among the origins.</param>
    /// <param name="statement">The statement.</param>
    /// <param name="row">A row of it.</param>
    /// <returns>The origin.</returns>
    public Origin Origin(string id, Statement statement, ReadingSyntax? row = null) => Origins.Add(id + suffix, new OriginEntry(this, statement, row));

    /// <summary>A place in this file.</summary>
    /// <param name="span">Where in it.</param>
    /// <returns>The place.</returns>
    public SourceSpan Place(TextSpan span) => new(File, span);

    /// <summary>Whether the parser has already told of a problem at a place.</summary>
    /// <param name="span">The place.</param>
    /// <returns>True when it has.</returns>
    public bool IsTold(TextSpan span)
    {
        var problems = Tree.Problems;
        var low = 0;
        var high = problems.Length;
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (problems[middle].Span.End < span.Start)
            {
                low = middle + 1;
            }
            else
            {
                high = middle;
            }
        }

        return low < problems.Length && problems[low].Span.Start < span.End && problems[low].Span.End > span.Start;
    }

    /// <summary>Tells a finding.</summary>
    /// <param name="check">Which check.</param>
    /// <param name="span">Where in this file.</param>
    /// <param name="message">The sentence.</param>
    /// <returns>The finding, to be completed through <see cref="Amend"/>.</returns>
    public Finding Tell(CheckDescription check, TextSpan span, string message)
    {
        var finding = new Finding { Check = check, Severity = check.Severity, Place = Place(span), Message = message };
        Findings.Add(finding);
        return finding;
    }

    /// <summary>Puts a fuller finding in the place of the one told last.</summary>
    /// <param name="finding">The fuller finding.</param>
    public void Amend(Finding finding) => Findings[^1] = finding;

    /// <summary>Tells a finding that is mended by writing something else in its place.</summary>
    /// <param name="check">Which check.</param>
    /// <param name="span">Where in this file.</param>
    /// <param name="message">The sentence.</param>
    /// <param name="replacement">What would be right there; null when unknown.</param>
    public void Tell(CheckDescription check, TextSpan span, string message, string? replacement)
    {
        var finding = Tell(check, span, message);
        if (replacement is not null)
        {
            Amend(finding with { Remedies = [Replace(span, replacement)] });
        }
    }

    /// <summary>The remedy of writing something else.</summary>
    /// <param name="span">What is replaced.</param>
    /// <param name="replacement">By what.</param>
    /// <returns>The remedy.</returns>
    public Remedy Replace(TextSpan span, string replacement) => new($"write {Saying.Short(replacement)}", [new TextEdit(Place(span), replacement)]);

    /// <summary>The remedy of taking something out.</summary>
    /// <param name="title">What it does, as an order.</param>
    /// <param name="span">What is taken out.</param>
    /// <returns>The remedy.</returns>
    public Remedy TakeOut(string title, TextSpan span) => new(title, [new TextEdit(Place(span), "")]);

    /// <summary>The nearest of some names, while suggestions last.</summary>
    /// <param name="written">The name as written.</param>
    /// <param name="known">The names that would be right.</param>
    /// <returns>The nearest, or null.</returns>
    public string? Near(string written, IEnumerable<string> known) => suggestions++ < MostSuggestions ? NearWord.Of(written, known) : null;

    /// <summary>Tells of a word that is not among those that can stand here, unless the parser did.</summary>
    /// <param name="word">The word.</param>
    /// <param name="what">What stands here, such as "a habit".</param>
    /// <param name="known">The words that can.</param>
    public void TellWord(NameSyntax word, string what, IReadOnlyList<string> known)
    {
        if (IsTold(word.Span))
        {
            return;
        }

        var near = NearWord.Of(word.Text, known);
        Tell(
            FileDescriptions.MisspeltWord,
            word.Span,
            near is null
                ? $"\"{Saying.Short(word.Text)}\" is not {what}: it is one of {Saying.Either(known)}."
                : $"\"{Saying.Short(word.Text)}\" is not {what}; perhaps \"{near}\" is meant. It is one of {Saying.Either(known)}.",
            near);
    }
}
