using Xunit;

namespace GroveSpec.LanguageServer.Tests;

public sealed class AtOnceTests
{
    [Fact]
    public void Every_piece_is_done_once()
    {
        var done = new int[100];
        AtOnce.Do(done.Length, number => Interlocked.Increment(ref done[number]));
        Assert.All(done, times => Assert.Equal(1, times));
    }

    [Fact]
    public void Work_that_was_ended_says_so_as_it_would_one_after_another()
    {
        using var ended = new CancellationTokenSource();
        ended.Cancel();
        var told = Assert.Throws<OperationCanceledException>(() => AtOnce.Do(4, _ => ended.Token.ThrowIfCancellationRequested()));
        Assert.Equal(ended.Token, told.CancellationToken);
    }

    [Fact]
    public void Work_that_broke_tells_what_broke() =>
        Assert.Equal("broken", Assert.Throws<InvalidDataException>(() => AtOnce.Do(4, _ => throw new InvalidDataException("broken"))).Message);
}
