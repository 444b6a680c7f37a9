using System.Runtime.InteropServices;

namespace GroveSpec.Binding.Use;

/// <summary>
/// What the system knows of a path, links followed and nothing opened: opening a pipe would wait for its other end. The
/// base library cannot tell a pipe from a file, so on Linux the system is asked; elsewhere all that is no folder is a file.
/// </summary>
/// <param name="Kind">What stands there.</param>
/// <param name="Identity">The same for two paths exactly when they are the same file; the full path where the system has nothing better.</param>
public readonly partial record struct FileFacts(FileKind Kind, string Identity)
{
    // From linux/stat.h and linux/fcntl.h; the layout of struct statx is the same on every architecture.
    private const int CurrentFolder = -100;
    private const uint BasicStats = 0x7ff;
    private const int StatxSize = 256;
    private const int ModeAt = 28;
    private const int InodeAt = 32;
    private const int DeviceAt = 136;

    /// <summary>Asks about a path.</summary>
    /// <param name="path">A full path.</param>
    /// <returns>What is known; <see cref="FileKind.None"/> for a path that cannot be.</returns>
    public static FileFacts Of(string path)
    {
        if (path.Contains('\0', StringComparison.Ordinal))
        {
            return new(FileKind.None, path);
        }

        if (!OperatingSystem.IsLinux())
        {
            var kind = Directory.Exists(path) ? FileKind.Folder : File.Exists(path) ? FileKind.Regular : FileKind.None;
            return new(kind, Path.GetFullPath(path));
        }

        Span<byte> facts = stackalloc byte[StatxSize];
        if (Statx(CurrentFolder, path, 0, BasicStats, facts) != 0)
        {
            return new(FileKind.None, path);
        }

        var found = (MemoryMarshal.Read<ushort>(facts[ModeAt..]) & 0xF000) switch
        {
            0x8000 => FileKind.Regular,
            0x4000 => FileKind.Folder,
            0x1000 => FileKind.Pipe,
            0x2000 or 0x6000 => FileKind.Device,
            0xC000 => FileKind.Socket,
            _ => FileKind.Other,
        };
        return new(found, $"{MemoryMarshal.Read<ulong>(facts[DeviceAt..])}:{MemoryMarshal.Read<ulong>(facts[InodeAt..])}");
    }

    [LibraryImport("libc", EntryPoint = "statx", StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Statx(int folder, string path, int flags, uint mask, Span<byte> facts);
}
