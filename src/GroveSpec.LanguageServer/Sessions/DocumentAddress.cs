using System.Text;

namespace GroveSpec.LanguageServer.Sessions;

/// <summary>Turns the addresses by which an editor names documents into paths, and back.</summary>
internal static class DocumentAddress
{
    private const string Scheme = "file:";

    /// <summary>The path on this machine that an address names.</summary>
    /// <param name="uri">An address, with any of the ways to escape characters.</param>
    /// <returns>The path; null for a document that lies in no folder, such as an untitled one.</returns>
    public static string? PathOf(string uri)
    {
        if (!uri.StartsWith(Scheme, StringComparison.OrdinalIgnoreCase))
        {
            return null;
        }

        var rest = uri.AsSpan(Scheme.Length);
        if (rest.StartsWith("//"))
        {
            var root = rest[2..].IndexOf('/');
            rest = root < 0 ? "/" : rest[(2 + root)..];
        }

        if (rest.IndexOfAny('?', '#') is var end and >= 0)
        {
            rest = rest[..end];
        }

        var path = Unescape(rest);

        // The letter of a drive, as in /c:/plants.
        return path.Length > 2 && path[0] == '/' && char.IsAsciiLetter(path[1]) && path[2] == ':' && OperatingSystem.IsWindows()
            ? path[1..].Replace('/', Path.DirectorySeparatorChar)
            : path.Contains('\0', StringComparison.Ordinal) ? null : path;
    }

    /// <summary>The address of a path.</summary>
    /// <param name="path">A full path.</param>
    /// <returns>Its address, with all escaped but what every editor leaves as it is.</returns>
    public static string UriOf(string path)
    {
        var uri = new StringBuilder("file://", path.Length + 16);
        var plain = path.Replace(Path.DirectorySeparatorChar, '/');
        if (!plain.StartsWith('/'))
        {
            uri.Append('/');
        }

        foreach (var unit in Encoding.UTF8.GetBytes(plain))
        {
            if (char.IsAsciiLetterOrDigit((char)unit) || "/-._~".Contains((char)unit, StringComparison.Ordinal))
            {
                uri.Append((char)unit);
            }
            else
            {
                uri.Append('%').Append(unit.ToString("X2", System.Globalization.CultureInfo.InvariantCulture));
            }
        }

        return uri.ToString();
    }

    /// <summary>What two addresses of one document have in common.</summary>
    /// <param name="uri">An address.</param>
    /// <returns>Its full path, or the address itself for a document that lies in no folder.</returns>
    public static string KeyOf(string uri) => PathOf(uri) is { Length: > 0 } path ? Path.GetFullPath(path) : uri;

    private static string Unescape(ReadOnlySpan<char> text)
    {
        if (!text.Contains('%'))
        {
            return text.ToString();
        }

        var bytes = new List<byte>(text.Length);
        Span<byte> buffer = stackalloc byte[4];
        for (var index = 0; index < text.Length;)
        {
            if (text[index] == '%' && index + 2 < text.Length && char.IsAsciiHexDigit(text[index + 1]) && char.IsAsciiHexDigit(text[index + 2]))
            {
                bytes.Add(byte.Parse(text.Slice(index + 1, 2), System.Globalization.NumberStyles.HexNumber, System.Globalization.CultureInfo.InvariantCulture));
                index += 3;
                continue;
            }

            Rune.DecodeFromUtf16(text[index..], out var rune, out var consumed);
            bytes.AddRange(buffer[..rune.EncodeToUtf8(buffer)]);
            index += consumed;
        }

        return Encoding.UTF8.GetString([.. bytes]);
    }
}
