using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;

namespace GroveSpec.Benchmarks;

/// <summary>Runs a program as a whole process, without a shell, with its output thrown away, and measures it.</summary>
internal static partial class ProcessRun
{
    // The two types are opaque in glibc; both take less than this.
    private const int ActionsSize = 256;
    private const int WriteOnly = 1;

    /// <summary>The GNU program that tells how much memory another took at most; starting one from here would count this process's own.</summary>
    public const string MemoryMeter = "/usr/bin/time";

    /// <summary>Runs it once.</summary>
    /// <param name="program">Its path.</param>
    /// <param name="words">The words of its command line.</param>
    /// <returns>From before it is started to after it has ended, in milliseconds.</returns>
    /// <exception cref="InvalidOperationException">It cannot be started, or ends with something other than 0 or 1.</exception>
    public static double Milliseconds(string program, params string[] words)
    {
        Span<byte> actions = stackalloc byte[ActionsSize];
        _ = InitActions(actions);
        _ = OpenAction(actions, 1, "/dev/null", WriteOnly, 0);
        _ = OpenAction(actions, 2, "/dev/null", WriteOnly, 0);
        var arguments = new Words([program, .. words]);
        var surroundings = new Words([.. Environment.GetEnvironmentVariables().Cast<System.Collections.DictionaryEntry>().Select(one => $"{one.Key}={one.Value}")]);
        try
        {
            var start = Stopwatch.GetTimestamp();
            if (Spawn(out var process, program, actions, 0, arguments.Pointers, surroundings.Pointers) is not 0 and var error)
            {
                throw new InvalidOperationException($"{program} cannot be started: {Marshal.GetPInvokeErrorMessage(error)}");
            }

            if (WaitFor(process, out var status, 0) != process || (status & 0x7f) != 0 || (status >> 8) > 1)
            {
                throw new InvalidOperationException($"{program} {string.Join(' ', words)} ended with status {status}.");
            }

            return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        }
        finally
        {
            _ = DestroyActions(actions);
            arguments.Free();
            surroundings.Free();
        }
    }

    /// <summary>Runs it once and asks how much memory it took at most.</summary>
    /// <param name="program">Its path.</param>
    /// <param name="words">The words of its command line.</param>
    /// <returns>The largest resident set in megabytes of 1,024 times 1,024 bytes; null where <see cref="MemoryMeter"/> is missing.</returns>
    public static double? Megabytes(string program, params string[] words)
    {
        if (!File.Exists(MemoryMeter))
        {
            return null;
        }

        var report = Path.GetTempFileName();
        try
        {
            _ = Milliseconds(MemoryMeter, ["-o", report, "-f", "%M", program, .. words]);
            return double.Parse(File.ReadLines(report).Last(), CultureInfo.InvariantCulture) / 1024;
        }
        finally
        {
            File.Delete(report);
        }
    }

    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    [LibraryImport("libc", EntryPoint = "posix_spawn_file_actions_init")]
    private static partial int InitActions(Span<byte> actions);

    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    [LibraryImport("libc", EntryPoint = "posix_spawn_file_actions_addopen", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int OpenAction(Span<byte> actions, int descriptor, string path, int flags, uint mode);

    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    [LibraryImport("libc", EntryPoint = "posix_spawn_file_actions_destroy")]
    private static partial int DestroyActions(Span<byte> actions);

    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    [LibraryImport("libc", EntryPoint = "posix_spawn", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Spawn(out int process, string program, Span<byte> actions, nint attributes, nint[] words, nint[] surroundings);

    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    [LibraryImport("libc", EntryPoint = "waitpid")]
    private static partial int WaitFor(int process, out int status, int options);

    /// <summary>Words as C programs take them: pointers to their bytes, and a null behind the last.</summary>
    private readonly struct Words(string[] words)
    {
        public nint[] Pointers { get; } = [.. words.Select(Marshal.StringToCoTaskMemUTF8), 0];

        public void Free()
        {
            foreach (var pointer in Pointers)
            {
                Marshal.FreeCoTaskMem(pointer);
            }
        }
    }
}
