using GroveSpec.Cli.Files;
using GroveSpec.Cli.Terminals;

namespace GroveSpec.Cli.Judging;

/// <summary>Keeps a fault with one file from ending the work on the others.</summary>
internal static class Guard
{
    /// <summary>Does something with a file.</summary>
    /// <typeparam name="T">What comes of it.</typeparam>
    /// <param name="file">The file as the person named it.</param>
    /// <param name="doing">What is done, such as "drawing its plan".</param>
    /// <param name="work">The work.</param>
    /// <returns>What came of it.</returns>
    /// <exception cref="FileTroubleException">Something went wrong inside the program.</exception>
    public static T Run<T>(string file, string doing, Func<T> work)
    {
        if (Environment.GetEnvironmentVariable(GroveProgram.FaultVariable) == "1")
        {
            return work();
        }

        try
        {
            return work();
        }
#pragma warning disable CA1031 // One fault is one message about one file.
        catch (Exception fault) when (fault is not (UsageException or FileTroubleException))
#pragma warning restore CA1031
        {
            throw new FileTroubleException(
                file,
                $"something went wrong inside grovespec while {doing}, and it is not the file's fault: {HarmlessText.Shorten(HarmlessText.OneLine(fault.Message), 400)} Please report it together with the file; with {GroveProgram.FaultVariable}=1 set, more is told.");
        }
    }
}
