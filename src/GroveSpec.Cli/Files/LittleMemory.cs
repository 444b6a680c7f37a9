using System.Runtime.InteropServices;
using System.Text;

namespace GroveSpec.Cli.Files;

/// <summary>
/// A process that may have only little memory. The program lets its newest objects take 16 MB before they are collected, which serves
/// an editor; a collector whose limit is hardly more than that was seen to end the process. There the program begins once more, in
/// the same process, with the collector's own measure.
/// </summary>
internal static partial class LittleMemory
{
    private const string Setting = "DOTNET_GCGen0MaxBudget";

    // Several times what the newest objects may take.
    private const long Enough = 192 * 1024 * 1024;

    /// <summary>Begins once more where memory is little and nobody has set the measure; otherwise, and where the system does not let it, does nothing.</summary>
    public static void BeginAgain()
    {
        if (!OperatingSystem.IsLinux() || GC.GetGCMemoryInfo().TotalAvailableMemoryBytes >= Enough || Environment.GetEnvironmentVariable(Setting) is not null)
        {
            return;
        }

        try
        {
            var words = Encoding.UTF8.GetString(File.ReadAllBytes("/proc/self/cmdline")).Split('\0');

            // The last one is empty and stands for the end of the list.
            if (words.Length > 1 && SetVariable(Setting, "0", overwrite: 1) == 0)
            {
                string?[] list = [.. words[..^1], null];
                _ = Execute("/proc/self/exe", list);
            }
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException or DllNotFoundException or EntryPointNotFoundException)
        {
            // It goes on as it is.
        }
    }

    [LibraryImport("libc", EntryPoint = "setenv", StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int SetVariable(string name, string value, int overwrite);

    [LibraryImport("libc", EntryPoint = "execv", StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Execute(string path, string?[] words);
}
