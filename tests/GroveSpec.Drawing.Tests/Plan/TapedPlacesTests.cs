using GroveSpec.Drawing.Tests.Front;
using Xunit;

namespace GroveSpec.Drawing.Tests.Plan;

public sealed class TapedPlacesTests
{
    [Fact]
    public void Trunks_that_stand_where_tape_readings_put_them_have_a_dot_and_the_small_print_says_so()
    {
        var reader = new PlateReader(Draw(Taped("C", "D")));
        Assert.Equal(["trunk:C", "trunk:D"], reader.Of("gs-taped").Select(dot => (string?)dot.Attribute("data-origin")));
        Assert.Contains("Trunks with a dot in the middle stand where tape readings put them.", SmallPrint(reader), StringComparison.Ordinal);
        Assert.Contains("C, 19 mm thick, 335 mm high, placed by tape readings", reader.Root.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_all_places_come_from_tape_readings_that_is_said_without_dots_and_where_none_do_nothing_is()
    {
        var all = new PlateReader(Draw(Taped("A", "B", "C", "D", "E", "F", "G")));
        Assert.Empty(all.Of("gs-taped"));
        Assert.Contains("All places come from tape readings.", SmallPrint(all), StringComparison.Ordinal);
        Assert.DoesNotContain("tape", Draw(Plantings.SaltBank()), StringComparison.Ordinal);
    }

    private static DrawingSubject Taped(params string[] names)
    {
        var subject = Plantings.SaltBank();
        return new(subject.State with { Trunks = [.. subject.State.Trunks.Select(trunk => names.Contains(trunk.Name) ? trunk with { Trunk = trunk.Trunk with { At = null } } : trunk)] }, []);
    }

    private static string Draw(DrawingSubject subject) => PlanPlate.Draw(subject, DrawingOptions.Default);

    private static string SmallPrint(PlateReader reader) => string.Join(' ', reader.Labels.Where(label => label.Class == "gs-remark").Select(label => label.Text));
}
