using CsCheck;
using GroveSpec.Craft.Composition;
using Xunit;

namespace GroveSpec.Craft.Tests.Composition;

public sealed class SelectionTests
{
    [Fact]
    public void What_stands_at_a_rank_is_what_sorting_puts_there() =>
        Gen.Select(Gen.OneOf(Gen.Double[0, 1000], Gen.Int[0, 5].Select(value => (double)value)).Array[1, 60], Gen.Int[0, 59]).Sample((keys, wanted) =>
        {
            var rank = wanted % keys.Length;
            var order = Enumerable.Range(0, keys.Length).ToArray();
            Selection.Place(order, keys, 0, keys.Length, rank);
            return keys[order[rank]] == keys.Order().ElementAt(rank)
                && order.Order().SequenceEqual(Enumerable.Range(0, keys.Length))
                && order[..rank].All(place => keys[place] <= keys[order[rank]])
                && order[rank..].All(place => keys[place] >= keys[order[rank]]);
        });
}
