using CsCheck;
using Xunit;

namespace GroveSpec.Checks.Tests;

/// <summary>Names as a grower counts them.</summary>
public sealed class NaturalOrderTests
{
    [Theory]
    [InlineData("T1 T2 T10 T11", "T11 T10 T2 T1")]
    [InlineData("A B C", "C A B")]
    [InlineData("A1-2 A1-10 A2-1", "A2-1 A1-10 A1-2")]
    [InlineData("T T1 T1a T1b U", "U T1b T1a T1 T")]
    [InlineData("T02 T2 T003", "T003 T2 T02")]
    [InlineData("T99999999999999999999998 T99999999999999999999999", "T99999999999999999999999 T99999999999999999999998")]
    public void Numbers_in_names_count_by_their_value(string expected, string names) =>
        Assert.Equal(expected, string.Join(' ', Wording.Sorted(names.Split(' '))));

    [Fact]
    public void It_is_an_order_of_all_names()
    {
        var name = Gen.OneOf(Gen.Const("a"), Gen.Const("b"), Gen.Const("0"), Gen.Const("1"), Gen.Const("2"), Gen.Const("10"), Gen.Const("-")).Array[0, 5].Select(parts => string.Concat(parts));
        Gen.Select(name, name, name).Sample((one, two, three) =>
        {
            var order = NaturalOrder.Instance;
            Assert.Equal(Math.Sign(order.Compare(one, two)), -Math.Sign(order.Compare(two, one)));
            Assert.Equal(one == two, order.Compare(one, two) == 0);
            Assert.False(order.Compare(one, two) < 0 && order.Compare(two, three) < 0 && order.Compare(one, three) >= 0);
        });
    }
}
