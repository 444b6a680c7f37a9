using System.Buffers.Binary;
using System.Runtime.InteropServices;

namespace GroveSpec.Binding.Use;

/// <summary>
/// Tells plain files from devices and pipes without opening them. The base library has no such question, so on Linux
/// the system is asked; its answer has the same layout on every machine (statx, include/uapi/linux/stat.h).
/// </summary>
internal static partial class FileKind
{
    private const int CurrentFolder = -100;
    private const uint TypeWanted = 1;
    private const int AnswerSize = 256;
    private const int ModeAt = 28;

    /// <summary>What stands at a path, if not a plain file.</summary>
    /// <param name="path">A full path without links.</param>
    /// <returns>Such as "a pipe"; null for a plain file, and where the system cannot tell.</returns>
    public static string? OtherThanFile(string path)
    {
        if (!OperatingSystem.IsLinux())
        {
            return null;
        }

        Span<byte> answer = stackalloc byte[AnswerSize];
        if (StatX(CurrentFolder, path, 0, TypeWanted, answer) != 0)
        {
            return null;
        }

        return (BinaryPrimitives.ReadUInt16LittleEndian(answer[ModeAt..]) & 0xF000) switch
        {
            0x8000 => null,
            0x4000 => "a folder",
            0x1000 => "a pipe",
            0x2000 or 0x6000 => "a device",
            0xC000 => "a socket",
            _ => "no plain file",
        };
    }

    [LibraryImport("libc", EntryPoint = "statx", StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    private static partial int StatX(int folder, string path, int flags, uint mask, Span<byte> answer);
}
