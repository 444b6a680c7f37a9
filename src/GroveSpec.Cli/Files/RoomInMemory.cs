using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace GroveSpec.Cli.Files;

/// <summary>
/// Takes the memory for the work on a large file in one piece, before the file is read. What a drawing of thousands of trunks
/// costs is to a large part the system's giving out memory, page by page of 4 KB, at the first touch of each. Memory that is
/// there at once, and of which the system is told that much will be used, comes in pages of 2 MB: a few dozen instead of
/// thousands. As nothing is collected meanwhile, nothing is moved and cleared again either.
/// </summary>
internal static partial class RoomInMemory
{
    // A smaller file needs less memory than taking it at once costs.
    private const int SmallFile = 16 * 1024;

    // What the drawing of a plan was seen to take, and some more; when it is used up, the collector goes on as ever.
    private const long Least = 8 * 1024 * 1024;
    private const long ForEachByte = 96;
    private const long Most = 256 * 1024 * 1024;

    // A process that may have little takes its memory as it comes: the room may be this part of what it may have. A collector whose
    // limit is hardly larger than the room was seen to end the process when the room was used up.
    private const int PartOfAvailable = 8;

    // How far behind a new object the collector's memory lies: the areas of its youngest and of its large objects, each reserved whole.
    private const nint Spread = 128 * 1024 * 1024;
    private const nint LargePage = 2 * 1024 * 1024;
    private const int LargePagesAreGood = 14; // MADV_HUGEPAGE of Linux

    private static bool isTaken;

    /// <summary>Takes it, once in the life of the program; does nothing for a small file, and where the process may not have several times as much.</summary>
    /// <param name="bytes">The length of the file that is to be read.</param>
    public static void Take(long bytes)
    {
        if (bytes < SmallFile || isTaken)
        {
            return;
        }

        isTaken = true;
        var room = Math.Min(Least + (Math.Min(bytes, Most) * ForEachByte), Most);
        if (room > GC.GetGCMemoryInfo().TotalAvailableMemoryBytes / PartOfAvailable)
        {
            return;
        }

        if (OperatingSystem.IsLinux())
        {
            AdviseLargePages((nint)room + Spread);
        }

        try
        {
            _ = GC.TryStartNoGCRegion(room);
        }
        catch (Exception refused) when (refused is ArgumentOutOfRangeException or InvalidOperationException)
        {
            // More than this process may have, or taken by another: the work takes its memory as it comes.
        }
    }

    /// <summary>Advice only: the system may take it or leave it, and no content changes, whatever lies there.</summary>
    private static void AdviseLargePages(nint length)
    {
        var newest = new object();
        var start = Unsafe.As<object, nint>(ref newest) & ~(LargePage - 1);
        try
        {
            _ = Advise(start, length, LargePagesAreGood);
        }
        catch (Exception missing) when (missing is DllNotFoundException or EntryPointNotFoundException)
        {
            // A system whose C library goes by another name: pages stay small.
        }
    }

    [LibraryImport("libc", EntryPoint = "madvise")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Advise(nint start, nint length, int advice);
}
