using System.Collections.Immutable;
using GroveSpec.Binding.Names;
using GroveSpec.Binding.Origins;
using GroveSpec.Binding.Quantities;
using GroveSpec.Checks;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Readings;
using GroveSpec.Model.Sites;
using GroveSpec.Syntax.Tree;
using NodaTime.Text;

namespace GroveSpec.Binding.Statements;

/// <summary>Binds what was measured and seen.</summary>
/// <param name="scope">The file.</param>
/// <param name="names">The names of the file.</param>
internal sealed class ReadingBinder(BindingScope scope, FileNames names)
{
    /// <summary>Binds a distance between two trunks.</summary>
    /// <param name="statement">The statement.</param>
    /// <returns>The reading; null where it cannot be taken, which is told.</returns>
    public TapeReading? Tape(Statement.Tape statement)
    {
        if (statement is not { From: { } fromName, To: { } toName, Distance: { } distance })
        {
            return null;
        }

        var origin = scope.Origin($"tape:{OriginTable.Piece(fromName.Text)}-{OriginTable.Piece(toName.Text)}", statement);
        var from = names.Trunks.Resolve(fromName, scope);
        var to = names.Trunks.Resolve(toName, scope);
        var length = scope.Quantities.Length(distance, new Subject("The distance between the trunks", null), Bound.AboveZero);
        if (from == to)
        {
            scope.Tell(FileDescriptions.OutOfRange, toName.Span, $"This distance is measured from {Saying.Short(from)} to itself: name the other trunk.");
            return null;
        }

        return length is { } read ? new TapeReading(from, to, read, statement.IsBetweenBark, origin) : null;
    }

    /// <summary>Binds a stage of the year as it came.</summary>
    /// <param name="statement">The statement.</param>
    /// <returns>The stage; null where it cannot be taken, which is told.</returns>
    public SeenStage? Seen(Statement.Seen statement)
    {
        if (statement is not { Stage: { } word, Date: { } date })
        {
            return null;
        }

        var stage = scope.Dates.Stage(word);
        var day = scope.Dates.Day(date, "What was seen");
        return stage is { } known && day is { } on
            ? new SeenStage(known, on, scope.Origin($"seen:{word.Text}:{LocalDatePattern.Iso.Format(on)}", statement))
            : null;
    }

    /// <summary>Binds what was read on a day.</summary>
    /// <param name="statement">The statement.</param>
    /// <returns>The day; null where it cannot be taken, which is told.</returns>
    public MeasuredDay? Measured(Statement.Measured statement)
    {
        if (statement.Date is not { } date || scope.Dates.Day(date, "A reading") is not { } day)
        {
            return null;
        }

        var text = LocalDatePattern.Iso.Format(day);
        var origin = scope.Origin("measured:" + text, statement);
        var readings = ImmutableArray.CreateBuilder<TrunkReading>(statement.Readings.Length);
        foreach (var row in statement.Readings)
        {
            var own = scope.Origin($"reading:{text}:{OriginTable.Piece(row.Trunk.Text)}", statement, row);
            readings.Add(Reading(row, own));
        }

        return new MeasuredDay(day, readings.ToImmutable(), origin);
    }

    private TrunkReading Reading(ReadingSyntax row, Origin origin)
    {
        var once = new OnlyOnce(scope, Saying.Short(row.Trunk.Text));
        Stated<Length>? diameter = null;
        Stated<Length>? height = null;
        Stated<Length>? crown = null;
        var isGirth = false;
        foreach (var clause in row.Values)
        {
            if (!once.Take(clause))
            {
                continue;
            }

            switch (clause)
            {
                case Clause.Thickness thickness:
                    isGirth = thickness.IsGirth;
                    var read = scope.Quantities.Length(thickness.Quantity, new Subject(isGirth ? "The girth of" : "The diameter of", row.Trunk.Text), Bound.AboveZero);
                    diameter = read is { } across ? new Stated<Length>(isGirth ? TrunkBinder.DiameterOf(across) : across, origin.Part("diameter")) : null;
                    break;
                case Clause.Height tall:
                    height = scope.Quantities.Length(tall.Quantity, new Subject("The height of", row.Trunk.Text), Bound.AboveZero) is { } up ? new Stated<Length>(up, origin.Part("height")) : null;
                    break;
                case Clause.Crown wide:
                    crown = scope.Quantities.Length(wide.Radius, new Subject("The crown of", row.Trunk.Text), Bound.AboveZero) is { } radius ? new Stated<Length>(radius, origin.Part("crown")) : null;
                    break;
                default:
                    break;
            }
        }

        return new TrunkReading
        {
            Trunk = names.Trunks.Resolve(row.Trunk, scope),
            Origin = origin,
            Diameter = diameter,
            IsGirth = isGirth,
            Height = height,
            Crown = crown,
        };
    }
}
