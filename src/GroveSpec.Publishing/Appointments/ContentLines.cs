namespace GroveSpec.Publishing.Appointments;

/// <summary>
/// The content lines of iCalendar (RFC 5545, section 3.1): at most 75 octets each without the line end, longer ones going on in the next
/// line after a blank. The library folds by UTF-16 code units and cuts characters in two, which the standard forbids.
/// </summary>
internal static class ContentLines
{
    private const int MostOctets = 75;

    /// <summary>Folds anew.</summary>
    /// <param name="text">The file, folded in any way.</param>
    /// <returns>The same lines in UTF-8, folded between characters.</returns>
    public static byte[] Fold(string text)
    {
        using var folded = new MemoryStream(text.Length + (text.Length / 16));
        Span<byte> octets = stackalloc byte[4];
        foreach (var line in text.Replace("\r\n ", "", StringComparison.Ordinal).Split("\r\n", StringSplitOptions.RemoveEmptyEntries))
        {
            var taken = 0;
            foreach (var rune in line.EnumerateRunes())
            {
                var length = rune.EncodeToUtf8(octets);
                if (taken + length > MostOctets)
                {
                    folded.Write("\r\n "u8);
                    taken = 1;
                }

                folded.Write(octets[..length]);
                taken += length;
            }

            folded.Write("\r\n"u8);
        }

        return folded.ToArray();
    }
}
