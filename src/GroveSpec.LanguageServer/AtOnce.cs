using System.Runtime.ExceptionServices;

namespace GroveSpec.LanguageServer;

/// <summary>How the server, and the program it is in, have the searches do pieces of work: as many at once as the machine can.</summary>
public static class AtOnce
{
    /// <summary>Does pieces of work, in any order.</summary>
    /// <param name="count">How many there are.</param>
    /// <param name="work">Does one, told its number from 0.</param>
    /// <exception cref="Exception">What a piece threw, as if they had been done one after another: so that a search which was ended is told from one that broke.</exception>
    public static void Do(int count, Action<int> work)
    {
        try
        {
            Parallel.For(0, count, work);
        }
        catch (AggregateException several)
        {
            ExceptionDispatchInfo.Throw(several.InnerExceptions.FirstOrDefault(one => one is not OperationCanceledException) ?? several.InnerExceptions[0]);
        }
    }
}
