using System.Collections.Immutable;
using GroveSpec.Binding.Use;
using GroveSpec.Checks;
using GroveSpec.Craft.Survey;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;
using GroveSpec.Syntax.Parsing;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;
using NodaTime;

namespace GroveSpec.Binding;

/// <summary>Everything that is known of one file: its tree, the planting it states, the planting's state on a day, and what was found.</summary>
public sealed record Assessment
{
    /// <summary>The path of the file, as it was given.</summary>
    public required string File { get; init; }

    /// <summary>The file's tree.</summary>
    public required SyntaxTree Tree { get; init; }

    /// <summary>The planting as written.</summary>
    public required Planting Planting { get; init; }

    /// <summary>The planting on the day, with the places that tape readings give.</summary>
    public required PlantingState State { get; init; }

    /// <summary>What stands, ranked: of the text, of what it states, and of the composition.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>What the file accepts, in the same order.</summary>
    public required ImmutableArray<Finding> Accepted { get; init; }

    /// <summary>Where facts stand.</summary>
    public required IOriginTable Origins { get; init; }

    /// <summary>The day that was judged; null when none was asked for and the file names none.</summary>
    public required LocalDate? Date { get; init; }

    /// <summary>The units in which the messages speak.</summary>
    public required UnitSystem Units { get; init; }

    /// <summary>How the tape readings agree; null where the file has none or did not ask.</summary>
    public required TapeAgreement? Tapes { get; init; }

    /// <summary>The files that facts were taken from besides the planting's own.</summary>
    public required ImmutableArray<UsedFile> Used { get; init; }

    /// <summary>Reads, binds and checks a file. It never throws for anything that the text or a used file holds.</summary>
    /// <param name="file">The file's path as findings are to name it; "-" for standard input.</param>
    /// <param name="text">Its text.</param>
    /// <param name="reader">What reads the files that it uses.</param>
    /// <param name="date">The day to judge; null for the newest that the file names.</param>
    /// <param name="units">The units in which messages speak.</param>
    /// <param name="cancellation">Ends the work between two of its steps.</param>
    /// <returns>What is known of it.</returns>
    /// <exception cref="OperationCanceledException">The work was ended.</exception>
    public static Assessment Of(string file, SourceText text, IFileReader reader, LocalDate? date = null, UnitSystem units = UnitSystem.Metric, CancellationToken cancellation = default)
    {
        cancellation.ThrowIfCancellationRequested();
        return Of(file, GroveParser.Parse(text), reader, date, units, cancellation);
    }

    /// <summary>Binds and checks a file that was read. It never throws for anything that the text or a used file holds.</summary>
    /// <param name="file">The file's path as findings are to name it; "-" for standard input.</param>
    /// <param name="tree">Its tree.</param>
    /// <param name="reader">What reads the files that it uses.</param>
    /// <param name="date">The day to judge; null for the newest that the file names.</param>
    /// <param name="units">The units in which messages speak.</param>
    /// <param name="cancellation">Ends the work between two of its steps.</param>
    /// <param name="tapes">How the tape readings agreed before an edit, which is not worked out again where they are the same; null where that is not known.</param>
    /// <returns>What is known of it.</returns>
    /// <exception cref="OperationCanceledException">The work was ended.</exception>
    public static Assessment Of(string file, SyntaxTree tree, IFileReader reader, LocalDate? date, UnitSystem units, CancellationToken cancellation, TapeAgreement? tapes = null)
    {
        cancellation.ThrowIfCancellationRequested();
        var bound = Binder.Bind(tree, file, reader);
        cancellation.ThrowIfCancellationRequested();
        var day = date ?? bound.Planting.NewestDay;
        var stated = bound.Planting.StateOn(day);
        TapeAgreement? agreement = null;
        TapeAgreement Agree() => agreement ??= TapeAgreement.Of(stated, tapes, cancellation);
        var distrusted = TapePlacement.IsWanted(stated) ? Agree().Distrusted : ImmutableHashSet<int>.Empty;
        var state = TapePlacement.Complete(stated, distrusted);
        var context = new CheckContext(bound.Planting, state, bound.Origins, units) { Tapes = Agree, Distrusted = distrusted };
        var report = Checker.Check(context, bound.Findings, cancellation);
        return new Assessment
        {
            File = file,
            Tree = tree,
            Planting = bound.Planting,
            State = state,
            Findings = report.Findings,
            Accepted = report.Accepted,
            Origins = bound.Origins,
            Date = day,
            Units = units,
            Tapes = agreement,
            Used = bound.Used,
        };
    }

    /// <summary>What the checks of composition were given, for whoever asks them again. Each call makes another, since a context remembers what was told.</summary>
    /// <returns>The context.</returns>
    public CheckContext ToContext() => new(Planting, State, Origins, Units) { Distrusted = Tapes?.Distrusted ?? ImmutableHashSet<int>.Empty };

    /// <summary>The text that a finding's place lies in.</summary>
    /// <param name="file">The file that the place names.</param>
    /// <returns>Its text; that of the planting's own file for an unknown one.</returns>
    public SourceText TextOf(string file)
    {
        if (file != File)
        {
            foreach (var used in Used)
            {
                if (used.Path == file)
                {
                    return used.Tree.Text;
                }
            }
        }

        return Tree.Text;
    }
}
