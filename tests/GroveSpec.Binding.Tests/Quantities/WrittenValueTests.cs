using GroveSpec.Binding.Quantities;
using NodaTime;
using Xunit;

namespace GroveSpec.Binding.Tests.Quantities;

public sealed class WrittenValueTests
{
    [Theory]
    [InlineData("5", 5, 5)]
    [InlineData(" 5 - 7 ", 5, 7)]
    [InlineData("5–7", 5, 7)]
    [InlineData("5-5", 5, 5)]
    [InlineData("1-1000", 1, 1000)]
    public void A_range_is_a_number_from_1_on_or_two_of_them(string written, int least, int most) => Assert.Equal((least, most), WrittenRange.Read(written, 1000));

    [Theory]
    [InlineData("")]
    [InlineData("0")]
    [InlineData("-5")]
    [InlineData("7-5")]
    [InlineData("5-6-7")]
    [InlineData("5-")]
    [InlineData("1001")]
    [InlineData("00005")]
    [InlineData("five")]
    [InlineData("٥")]
    public void What_is_no_range_is_none(string written) => Assert.Null(WrittenRange.Read(written, 1000));

    [Theory]
    [InlineData("10", 10)]
    [InlineData("10deg", 10)]
    [InlineData(" 7.5 deg ", 7.5)]
    [InlineData("45", 45)]
    public void An_angle_may_carry_its_unit(string written, double degrees) => Assert.Equal(degrees, WrittenAngle.Read(written, 45)!.Value.Degrees);

    [Theory]
    [InlineData("")]
    [InlineData("deg")]
    [InlineData("0")]
    [InlineData("-3")]
    [InlineData("45.01")]
    [InlineData("1.2.3")]
    [InlineData("NaN")]
    [InlineData("1e1")]
    public void What_is_no_angle_up_to_the_largest_is_none(string written) => Assert.Null(WrittenAngle.Read(written, 45));

    [Theory]
    [InlineData("0.01 mm", 10_000)]
    [InlineData("0.0004in", 10_160)]
    [InlineData("18mm", 18_000_000)]
    public void A_length_is_one_that_a_tape_could_tell(string written, long nanometres) => Assert.Equal(nanometres, WrittenLength.Read(written, Model.Quantities.UnitSystem.Metric)!.Value.Nanometres);

    [Theory]
    [InlineData("0")]
    [InlineData("0.0099 mm")]
    [InlineData("0.0000001mm")]
    [InlineData("0.00039 in")]
    [InlineData("-3 mm")]
    public void What_is_shorter_is_none(string written) => Assert.Null(WrittenLength.Read(written, Model.Quantities.UnitSystem.Metric));

    [Fact]
    public void A_day_is_one_of_the_calendar()
    {
        Assert.Equal(new LocalDate(2028, 2, 29), WrittenDay.Read("2028-02-29"));
        Assert.All(["2027-02-29", "2027-13-01", "2027-00-10", "2027-01-32", "0000-01-01", "2027-1-01", "2027-01-01 ", "27-01-01", "-027-01-01", "٢٠٢٧-01-01", ""], written => Assert.Null(WrittenDay.Read(written)));
    }
}
