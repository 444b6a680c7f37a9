using System.Collections.Immutable;
using System.Globalization;
using GroveSpec.Binding.Quantities;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;
using NodaTime;
using NodaTime.Text;

namespace GroveSpec.Editing.Deciding;

/// <summary>Reads what a grower wrote into the fields of a question, and collects the fields as they are to be shown again. What cannot be understood counts as the usual, and its field says so.</summary>
/// <param name="answers">What was written, by the names of the fields; a field that is not named has not been touched.</param>
/// <param name="units">What a bare length is in.</param>
internal sealed class FieldReading(IReadOnlyDictionary<string, string> answers, UnitSystem units)
{
    private const int LongestAnswer = 2000;

    private readonly ImmutableArray<DecisionField>.Builder fields = ImmutableArray.CreateBuilder<DecisionField>();

    /// <summary>The fields that were read, in their order.</summary>
    public ImmutableArray<DecisionField> Fields => fields.ToImmutable();

    /// <summary>A length that a tape could tell, or none where the field may be left empty.</summary>
    /// <param name="name">The field's name.</param>
    /// <param name="label">What stands before it.</param>
    /// <param name="usual">What is usual; null for none.</param>
    /// <param name="mayBeEmpty">Whether it may be left empty.</param>
    /// <returns>The length; null where it was left empty or none is usual.</returns>
    public Length? Length(string name, string label, Length? usual, bool mayBeEmpty)
    {
        var example = units == UnitSystem.Inch ? "such as 0.7 in" : "such as 18 mm";
        return Read<Length?>(name, label, usual is { } given ? Say(given) : "", mayBeEmpty ? $"{example}, or nothing" : example, text =>
            text.Length == 0 && mayBeEmpty ? (null, null)
            : WrittenLength.Read(text, units) is { } length ? (length, null)
            : (usual, $"This needs a length of at least {WrittenLength.Shortest}, {example}."));
    }

    /// <summary>The length that was written into a field, before the field is read.</summary>
    /// <param name="name">The field's name.</param>
    /// <returns>The length; null where the field has not been touched, was emptied, or holds no length.</returns>
    public Length? Written(string name) => answers.TryGetValue(name, out var answer) && answer.Length <= LongestAnswer ? WrittenLength.Read(answer, units) : null;

    /// <summary>An angle above zero.</summary>
    /// <param name="name">The field's name.</param>
    /// <param name="label">What stands before it.</param>
    /// <param name="usual">What is usual.</param>
    /// <param name="most">The largest that may be asked.</param>
    /// <returns>The angle.</returns>
    public Angle Angle(string name, string label, Angle usual, double most) =>
        Read<Angle>(name, label, $"{Number(usual.Degrees)} deg", "such as 10 deg", text => WrittenAngle.Read(text, most) is { } angle
            ? (angle, null)
            : (usual, $"This needs an angle above zero and up to {Number(most)} deg."));

    /// <summary>A whole number from 1, or a range of them.</summary>
    /// <param name="name">The field's name.</param>
    /// <param name="label">What stands before it.</param>
    /// <param name="usual">What is usual.</param>
    /// <param name="most">The largest that may be asked.</param>
    /// <returns>The least and the most.</returns>
    public (int Least, int Most) Range(string name, string label, int usual, int most) =>
        Read<(int, int)>(name, label, usual.ToString(CultureInfo.InvariantCulture), "such as 5, or 5-7", text => WrittenRange.Read(text, most) is { } range
            ? (range, null)
            : ((usual, usual), "This needs a number from 1 on, such as 5, or a range such as 5-7."));

    /// <summary>Names, parted by commas or blanks.</summary>
    /// <param name="name">The field's name.</param>
    /// <param name="label">What stands before it.</param>
    /// <returns>The names, each once.</returns>
    public ImmutableArray<string> Names(string name, string label) =>
        Read<ImmutableArray<string>>(name, label, "", "names, such as A, B", text => (NameList.Read(text), null));

    /// <summary>A name, or none.</summary>
    /// <param name="name">The field's name.</param>
    /// <param name="label">What stands before it.</param>
    /// <returns>The name; null where it was left empty.</returns>
    public string? Name(string name, string label) => Read<string?>(name, label, "", "a name, or nothing", text => (text.Length == 0 ? null : NameForm.Of(text), null));

    /// <summary>A day, or none.</summary>
    /// <param name="name">The field's name.</param>
    /// <param name="label">What stands before it.</param>
    /// <param name="usual">What is usual; null for none.</param>
    /// <returns>The day; null where there is none.</returns>
    public LocalDate? Day(string name, string label, LocalDate? usual) =>
        Read<LocalDate?>(name, label, usual is { } given ? LocalDatePattern.Iso.Format(given) : "", "such as 2027-03-14", text =>
            text.Length == 0 ? (null, null)
            : WrittenDay.Read(text) is { } day ? (day, null)
            : (null, "This needs a day of the calendar, such as 2027-03-14."));

    private T Read<T>(string name, string label, string usual, string hint, Func<string, (T Value, string? Trouble)> read)
    {
        var written = (answers.TryGetValue(name, out var answer) ? answer : usual).Trim();
        if (written.Length > LongestAnswer)
        {
            written = written[..LongestAnswer];
        }

        var (value, trouble) = read(written);
        fields.Add(new DecisionField(name, label, written, hint, trouble));
        return value;
    }

    private string Say(Length length) => units == UnitSystem.Inch ? $"{Number(Math.Round(length.Inches, 3))} in" : $"{Number(Math.Round(length.Millimetres, 1))} mm";

    private static string Number(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
