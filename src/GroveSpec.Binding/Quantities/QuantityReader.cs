using GroveSpec.Binding.Names;
using GroveSpec.Checks;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Binding.Quantities;

/// <summary>Turns written numbers with their units into quantities, and tells what is wrong with them.</summary>
/// <param name="scope">The file they stand in.</param>
internal sealed class QuantityReader(BindingScope scope)
{
    /// <summary>A length.</summary>
    /// <param name="quantity">As written.</param>
    /// <param name="what">What it is, to begin a sentence, such as "The diameter".</param>
    /// <param name="least">The least that is taken; anything within a kilometre either way when left out.</param>
    /// <param name="shared">The unit written behind a list that it stands in; none when it has its own.</param>
    /// <returns>The length; null where it cannot be taken, which is told.</returns>
    public Length? Length(QuantitySyntax quantity, Subject what, Bound least = Bound.None, NameSyntax? shared = null)
    {
        if (!IsNumber(quantity) || UnitOf(quantity.Unit ?? shared, QuantityKind.Length, what) is not { } unit)
        {
            return null;
        }

        var nanometres = DecimalNumber.Scaled(quantity.Number, UnitTable.Nanometres(unit));
        if (nanometres is not { } whole || whole > Model.Quantities.Length.Largest.Nanometres || whole < -Model.Quantities.Length.Largest.Nanometres)
        {
            return OutOfRange<Length>(quantity.Span, $"{what} is {Written(quantity)}, which is beyond the 1 km that the language takes.");
        }

        if (least == Bound.AboveZero && whole <= 0)
        {
            return OutOfRange<Length>(quantity.Span, $"{what} is {Written(quantity)}, but it must be above zero.");
        }

        return least == Bound.Zero && whole < 0
            ? OutOfRange<Length>(quantity.Span, $"{what} is {Written(quantity)}, but it cannot be below zero.")
            : new Length(whole);
    }

    /// <summary>An angle within limits.</summary>
    /// <param name="quantity">As written.</param>
    /// <param name="what">What it is, to begin a sentence.</param>
    /// <param name="least">The least number of degrees, included.</param>
    /// <param name="most">The greatest.</param>
    /// <param name="isMostIncluded">Whether the greatest is still taken.</param>
    /// <returns>The angle; null where it cannot be taken, which is told.</returns>
    public Angle? Angle(QuantitySyntax quantity, Subject what, double least, double most, bool isMostIncluded)
    {
        if (!IsNumber(quantity) || UnitOf(quantity.Unit, QuantityKind.Angle, what) is null)
        {
            return null;
        }

        var degrees = DecimalNumber.AsDouble(quantity.Number);
        return degrees >= least && (degrees < most || (isMostIncluded && degrees == most))
            ? new Angle(degrees)
            : OutOfRange<Angle>(quantity.Span, $"{what} is {Written(quantity)}, but it lies from {least} up to {(isMostIncluded ? "" : "but not including ")}{most} deg.");
    }

    /// <summary>A bearing; full turns are taken off up to ten of them.</summary>
    /// <param name="quantity">As written.</param>
    /// <param name="what">What it is, to begin a sentence.</param>
    /// <returns>The bearing; null where it cannot be taken, which is told.</returns>
    public Bearing? Bearing(QuantitySyntax quantity, Subject what)
    {
        if (!IsNumber(quantity) || UnitOf(quantity.Unit, QuantityKind.Angle, what) is null)
        {
            return null;
        }

        var degrees = DecimalNumber.AsDouble(quantity.Number);
        return degrees is >= -360 and <= 360
            ? new Bearing(degrees)
            : OutOfRange<Bearing>(quantity.Span, $"{what} is {Written(quantity)}, but a bearing lies from 0 to 360 deg: 0 is the back, 90 the right, 180 the front, 270 the left.");
    }

    /// <summary>A temperature of the air.</summary>
    /// <param name="quantity">As written.</param>
    /// <param name="what">What it is, to begin a sentence.</param>
    /// <param name="shared">The unit written behind the list; degrees Celsius when there is none.</param>
    /// <returns>The temperature; null where it cannot be taken, which is told.</returns>
    public Temperature? Temperature(QuantitySyntax quantity, Subject what, NameSyntax? shared)
    {
        if (!IsNumber(quantity) || UnitOf(quantity.Unit ?? shared, QuantityKind.Temperature, what) is not { } unit)
        {
            return null;
        }

        var degrees = DecimalNumber.AsDouble(quantity.Number);
        var celsius = unit == UnitWord.Fahrenheit ? (degrees - 32) / 1.8 : degrees;
        return celsius is >= -80 and <= 60
            ? new Temperature(celsius)
            : OutOfRange<Temperature>(quantity.Span, $"{what} is {Written(quantity)}, but a month's mean lies from -80 to 60 C.");
    }

    /// <summary>A part of a whole in percent.</summary>
    /// <param name="quantity">As written; a bare number is percent.</param>
    /// <param name="what">What it is, to begin a sentence.</param>
    /// <returns>The part; null where it cannot be taken, which is told.</returns>
    public Proportion? Share(QuantitySyntax quantity, Subject what)
    {
        if (!IsNumber(quantity) || UnitOf(quantity.Unit, QuantityKind.Share, what) is null)
        {
            return null;
        }

        var percent = DecimalNumber.AsDouble(quantity.Number);
        return percent is >= 0 and <= 100
            ? Proportion.FromPercent(percent)
            : OutOfRange<Proportion>(quantity.Span, $"{what} is {Written(quantity)}, but it lies from 0 to 100 %.");
    }

    /// <summary>A whole number of units of time.</summary>
    /// <param name="quantity">As written.</param>
    /// <param name="what">What it is, to begin a sentence.</param>
    /// <param name="least">The least number taken.</param>
    /// <param name="shared">The unit written behind a pair; none when it has its own.</param>
    /// <returns>The number and the unit; null where it cannot be taken, which is told.</returns>
    public (int Count, TimeUnit Unit)? Time(QuantitySyntax quantity, Subject what, int least, NameSyntax? shared = null)
    {
        if (!IsNumber(quantity))
        {
            return null;
        }

        if ((quantity.Unit ?? shared) is null)
        {
            scope.Tell(FileDescriptions.OddUnit, quantity.Span, $"{what} is {quantity.Number} without a unit: say {quantity.Number} days, weeks, months or years.");
            return null;
        }

        if (UnitOf(quantity.Unit ?? shared, QuantityKind.Time, what) is not { } word)
        {
            return null;
        }

        var unit = word switch
        {
            UnitWord.Week => TimeUnit.Weeks,
            UnitWord.Month => TimeUnit.Months,
            UnitWord.Year => TimeUnit.Years,
            _ => TimeUnit.Days,
        };
        return Whole(quantity, what, least, 100_000) is { } count ? (count, unit) : null;
    }

    /// <summary>A whole number without a unit.</summary>
    /// <param name="quantity">As written.</param>
    /// <param name="what">What it is, to begin a sentence.</param>
    /// <param name="least">The least that is taken.</param>
    /// <param name="most">The greatest that is taken.</param>
    /// <returns>The number; null where it cannot be taken, which is told.</returns>
    public int? Count(QuantitySyntax quantity, Subject what, int least, int most)
    {
        if (!IsNumber(quantity))
        {
            return null;
        }

        if (quantity.Unit is { } unit)
        {
            TellUnit(unit, $"{what} is a bare number, without \"{Saying.Short(unit.Text)}\".", "");
        }

        return Whole(quantity, what, least, most);
    }

    /// <summary>Whether a number is written as the language takes it; if not, that is told.</summary>
    /// <param name="quantity">As written.</param>
    /// <returns>True when it is.</returns>
    public bool IsNumber(QuantitySyntax quantity)
    {
        if (quantity.Number.Length <= DecimalNumber.MostDigits && DecimalNumber.IsPlain(quantity.Number))
        {
            return true;
        }

        if (!scope.IsTold(quantity.Span))
        {
            scope.Tell(FileDescriptions.OddNumber, quantity.Span, $"\"{Saying.Short(quantity.Number)}\" is no number as the language writes them: use the digits 0 to 9 and one point, such as 12.5.");
        }

        return false;
    }

    /// <summary>The unit of a quantity.</summary>
    /// <param name="word">The unit as written; null for none, which is the usual unit of the kind.</param>
    /// <param name="kind">What is counted.</param>
    /// <param name="what">What it is, to begin a sentence.</param>
    /// <returns>The unit; null where it cannot be taken, which is told. A unit that can only mean one is told and taken.</returns>
    public UnitWord? UnitOf(NameSyntax? word, QuantityKind kind, Subject what)
    {
        if (word is null)
        {
            return UnitWord.None;
        }

        if (UnitTable.Exact(word.Text) is { } exact && UnitTable.KindOf(exact) == kind)
        {
            return exact;
        }

        var meant = UnitTable.Meant(word.Text, kind);
        if (meant is { } found)
        {
            TellUnit(word, $"{what}: \"{Saying.Short(word.Text)}\" is written {UnitTable.Spelling(found)} here.", UnitTable.Spelling(found));
        }
        else
        {
            TellUnit(word, $"{what}: \"{Saying.Short(word.Text)}\" is no unit that can stand here; {UnitTable.Choices(kind)}.", null);
        }

        return meant;
    }

    private void TellUnit(NameSyntax word, string message, string? replacement)
    {
        if (!scope.IsTold(word.Span))
        {
            scope.Tell(FileDescriptions.OddUnit, word.Span, message, replacement);
        }
    }

    private int? Whole(QuantitySyntax quantity, Subject what, int least, int most)
    {
        var value = DecimalNumber.AsDouble(quantity.Number);
        if (value != Math.Floor(value))
        {
            return OutOfRange<int>(quantity.Span, $"{what} is {Written(quantity)}, but it must be a whole number.");
        }

        return value >= least && value <= most
            ? (int)value
            : OutOfRange<int>(quantity.Span, $"{what} is {Written(quantity)}, but it lies from {least} to {most}.");
    }

    private T? OutOfRange<T>(TextSpan span, string message)
        where T : struct
    {
        scope.Tell(FileDescriptions.OutOfRange, span, message);
        return null;
    }

    private static string Written(QuantitySyntax quantity) =>
        quantity.Unit is { } unit ? $"{Saying.Short(quantity.Number)} {Saying.Short(unit.Text)}" : Saying.Short(quantity.Number);
}
