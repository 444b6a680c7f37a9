using System.Globalization;
using GroveSpec.Binding.Names;
using GroveSpec.Checks;
using GroveSpec.Model.Times;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;
using NodaTime;

namespace GroveSpec.Binding;

/// <summary>Turns written dates and moments into those of the calendar, and tells what is wrong with them.</summary>
/// <param name="scope">The file they stand in.</param>
internal sealed class DateReader(BindingScope scope)
{
    /// <summary>The first year that is taken.</summary>
    public const int FirstYear = 1;

    /// <summary>The last year that is taken: one less than the calendar holds, so that the day after any day exists.</summary>
    public const int LastYear = 9998;

    /// <summary>A year.</summary>
    /// <param name="word">Its digits as written.</param>
    /// <returns>The year; null where it cannot be taken, which is told.</returns>
    public int? Year(NameSyntax word) => Year(word.Text, word.Span);

    /// <summary>One day.</summary>
    /// <param name="date">As written.</param>
    /// <param name="what">What it is, such as "A reading".</param>
    /// <returns>The day; null where it cannot be taken, which is told.</returns>
    public LocalDate? Day(MomentSyntax.Date date, string what)
    {
        switch (Read(date))
        {
            case Moment.Day day:
                return day.Date;
            case null:
                return null;
            default:
                scope.Tell(FileDescriptions.NoSuchDate, date.Span, $"{what} needs a whole date, such as {LongerThan(date.Text)}.");
                return null;
        }
    }

    /// <summary>A year, month or day in digits.</summary>
    /// <param name="date">As written.</param>
    /// <returns>The moment; null where it cannot be taken, which is told.</returns>
    public Moment? Read(MomentSyntax.Date date)
    {
        var text = date.Text.AsSpan();
        var first = text.IndexOf('-');
        if (first < 0)
        {
            return Year(date.Text, date.Span) is { } only ? new Moment.Year(only) : null;
        }

        if (Year(text[..first], date.Span) is not { } year)
        {
            return null;
        }

        var rest = text[(first + 1)..];
        var second = rest.IndexOf('-');
        if (!TryDigits(second < 0 ? rest : rest[..second], out var month) || month is < 1 or > 12)
        {
            TellNoDate(date, "there are twelve months, 01 to 12", null);
            return null;
        }

        if (second < 0)
        {
            return new Moment.Month(new YearMonth(year, month));
        }

        var length = CalendarSystem.Iso.GetDaysInMonth(year, month);
        if (TryDigits(rest[(second + 1)..], out var day) && day >= 1 && day <= length)
        {
            return new Moment.Day(new LocalDate(year, month, day));
        }

        var last = string.Create(CultureInfo.InvariantCulture, $"{year:0000}-{month:00}-{(day < 1 ? 1 : length):00}");
        TellNoDate(date, day < 1 ? "days begin at 01" : $"{Words.Months[month - 1]} {year} ends on the {length}{Ordinal(length)}", last);
        return null;
    }

    /// <summary>A moment of any form.</summary>
    /// <param name="moment">As written.</param>
    /// <param name="yearIfLeftOut">The year of a stage that names none; null where none is known.</param>
    /// <param name="taskName">Finds the name of a task as its own statement spells it; null where a task cannot stand here.</param>
    /// <returns>The moment; null where it cannot be taken, which is told.</returns>
    public Moment? Moment(MomentSyntax moment, int? yearIfLeftOut = null, Func<NameSyntax, string>? taskName = null)
    {
        switch (moment)
        {
            case MomentSyntax.Date date:
                return Read(date);
            case MomentSyntax.Season season:
                return Season(season);
            case MomentSyntax.Stage stage:
                return StageOfYear(stage, yearIfLeftOut);
            case MomentSyntax.Task task when taskName is not null:
                return new Moment.OfTask(taskName(task.Name));
            default:
                if (!scope.IsTold(moment.Span))
                {
                    scope.Tell(FileDescriptions.NoSuchDate, moment.Span, "Here a date, a month, a year, a season or a stage with its year is needed, such as 2027-04-22 or spring 2028.");
                }

                return null;
        }
    }

    /// <summary>A stage of the tree's year.</summary>
    /// <param name="word">Its name.</param>
    /// <returns>The stage; null for another word, which is told.</returns>
    public Stage? Stage(NameSyntax word)
    {
        var index = Words.IndexOf(Words.Stages, word.Text);
        if (index >= 0)
        {
            return (Stage)index;
        }

        scope.TellWord(word, "a stage of the year", Words.Stages);
        return null;
    }

    /// <summary>A day of every year. 29 February is taken: in other years it means 28 February, as NodaTime's annual dates do.</summary>
    /// <param name="date">As written.</param>
    /// <param name="what">What it is, such as "The last frost".</param>
    /// <returns>The day; null where it cannot be taken, which is told.</returns>
    public AnnualDate? Annual(AnnualDateSyntax date, string what)
    {
        var month = MonthOf(date.Month.Text);
        if (month == 0)
        {
            scope.TellWord(date.Month, "a month", Words.Months);
            return null;
        }

        // 2000 was a leap year, so that February has 29 days here.
        var length = CalendarSystem.Iso.GetDaysInMonth(2000, month);
        if (TryDigits(date.Day, out var day) && day >= 1 && day <= length)
        {
            return new AnnualDate(month, day);
        }

        var nearest = day < 1 ? 1 : length;
        scope.Tell(
            FileDescriptions.NoSuchDate,
            date.Span,
            $"{what} is written as {Saying.Short(date.Day)} {Words.Months[month - 1]}, but {Words.Months[month - 1]} has {length} days.",
            string.Create(CultureInfo.InvariantCulture, $"{nearest} {date.Month.Text}"));
        return null;
    }

    private Moment.SeasonOfYear? Season(MomentSyntax.Season season)
    {
        var part = SeasonPart.Whole;
        if (season.Part is { } partWord)
        {
            var index = Words.IndexOf(Words.SeasonParts, partWord.Text);
            if (index < 0)
            {
                scope.TellWord(partWord, "a part of a season", Words.SeasonParts);
                return null;
            }

            part = (SeasonPart)(index + 1);
        }

        var name = Words.IndexOf(Words.Seasons, season.Name.Text);
        if (name < 0)
        {
            scope.TellWord(season.Name, "a season", Words.Seasons);
            return null;
        }

        return Year(season.Year) is { } year ? new Moment.SeasonOfYear(part, (Season)name, year) : null;
    }

    private Moment.StageOfYear? StageOfYear(MomentSyntax.Stage written, int? yearIfLeftOut)
    {
        if (Stage(written.Name) is not { } stage)
        {
            return null;
        }

        var year = written.Year is { } word ? Year(word) : yearIfLeftOut;
        if (year is null && written.Year is null && !scope.IsTold(written.Span))
        {
            scope.Tell(FileDescriptions.NoSuchDate, written.Span, $"{written.Name.Text} comes every year: say in which, such as {written.Name.Text} 2027.");
        }

        return year is { } known ? new Moment.StageOfYear(stage, known) : null;
    }

    private int? Year(ReadOnlySpan<char> text, TextSpan span)
    {
        if (TryDigits(text, out var year) && year is >= FirstYear and <= LastYear)
        {
            return year;
        }

        if (!scope.IsTold(span))
        {
            scope.Tell(FileDescriptions.OutOfRange, span, $"The year is {Saying.Short(text.ToString())}, but years run from {FirstYear} to {LastYear}.");
        }

        return null;
    }

    private void TellNoDate(MomentSyntax.Date date, string why, string? instead)
    {
        if (!scope.IsTold(date.Span))
        {
            scope.Tell(FileDescriptions.NoSuchDate, date.Span, $"{Saying.Short(date.Text)} is not in the calendar: {why}.", instead);
        }
    }

    private static bool TryDigits(ReadOnlySpan<char> text, out int value)
    {
        value = 0;
        return text.Length is > 0 and <= 9 && int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out value);
    }

    private static int MonthOf(string word)
    {
        for (var index = 0; index < Words.Months.Count; index++)
        {
            var month = Words.Months[index].AsSpan();
            if (month.Equals(word, StringComparison.OrdinalIgnoreCase) || month[..3].Equals(word, StringComparison.OrdinalIgnoreCase))
            {
                return index + 1;
            }
        }

        return 0;
    }

    private static string LongerThan(string text) => text.Length is 4 or 7 && text.AsSpan().IndexOf('-') is -1 or 4
        ? text.Length == 4 ? text + "-04-22" : text + "-15"
        : "2027-04-22";

    private static string Ordinal(int day) => day == 31 ? "st" : "th";
}
