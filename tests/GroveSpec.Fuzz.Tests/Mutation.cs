namespace GroveSpec.Fuzz.Tests;

/// <summary>Damages a file: bytes, words and lines are deleted, doubled, swapped or put in.</summary>
internal static class Mutation
{
    private static readonly byte[][] Pieces =
    [
        "{"u8.ToArray(), "}"u8.ToArray(), "\""u8.ToArray(), "("u8.ToArray(), ")"u8.ToArray(), ","u8.ToArray(), "#"u8.ToArray(), "%"u8.ToArray(),
        "\n"u8.ToArray(), "\r"u8.ToArray(), "\r\n"u8.ToArray(), "\0"u8.ToArray(), "\t"u8.ToArray(), "\\"u8.ToArray(), [0xFF], [0xC0, 0x80], [0xED, 0xA0, 0x80],
        "\u202E"u8.ToArray(), "\u200D"u8.ToArray(), "\uFEFF"u8.ToArray(), "é"u8.ToArray(), "e\u0301"u8.ToArray(), "🌲"u8.ToArray(), "١٢"u8.ToArray(),
        "1e999"u8.ToArray(), "-0"u8.ToArray(), "0x10"u8.ToArray(), "1.5.2"u8.ToArray(), "1,5"u8.ToArray(), "NaN"u8.ToArray(), "999999999999999999999"u8.ToArray(),
        " trunk "u8.ToArray(), " role "u8.ToArray(), " at "u8.ToArray(), " to "u8.ToArray(), " 2027-02-30 "u8.ToArray(), "12mm"u8.ToArray(), "in"u8.ToArray(), "x"u8.ToArray(),
        "\u00A0"u8.ToArray(), "\u201Cx\u201D"u8.ToArray(), "\u2028"u8.ToArray(), "\u00D7"u8.ToArray(), "-"u8.ToArray(), "."u8.ToArray(), "/"u8.ToArray(), "+"u8.ToArray(),
    ];

    /// <summary>A part of a file, or all of it, with one to five faults.</summary>
    public static byte[] Of(byte[] original, Random random)
    {
        var bytes = new List<byte>(Window(original, random));
        for (var fault = random.Next(1, 6); fault > 0; fault--)
        {
            switch (random.Next(9))
            {
                case 0:
                    Delete(bytes, random.Next(bytes.Count + 1), random.Next(1, 4));
                    break;
                case 1 when bytes.Count > 0:
                    bytes[random.Next(bytes.Count)] = (byte)random.Next(256);
                    break;
                case 2:
                    bytes.InsertRange(random.Next(bytes.Count + 1), Pieces[random.Next(Pieces.Length)]);
                    break;
                default:
                    MutateParts(bytes, random);
                    break;
            }
        }

        return [.. bytes];
    }

    private static byte[] Window(byte[] original, Random random)
    {
        if (original.Length < 400 || random.Next(20) == 0)
        {
            return original;
        }

        // Most runs damage a few lines, which finds as much as damaging a whole file and takes a tenth of the time.
        var lineStarts = new List<int> { 0 };
        for (var index = 0; index < original.Length - 1; index++)
        {
            if (original[index] == '\n')
            {
                lineStarts.Add(index + 1);
            }
        }

        var first = random.Next(lineStarts.Count);
        var last = Math.Min(lineStarts.Count - 1, first + random.Next(1, 9));
        return original[lineStarts[first]..(last == lineStarts.Count - 1 ? original.Length : lineStarts[last])];
    }

    private static void MutateParts(List<byte> bytes, Random random)
    {
        var isLine = random.Next(2) == 0;
        var first = Part(bytes, random, isLine);
        switch (random.Next(3))
        {
            case 0:
                Delete(bytes, first.Start, first.Length);
                break;
            case 1:
                bytes.InsertRange(first.Start, bytes.GetRange(first.Start, first.Length));
                break;
            default:
                var second = Part(bytes, random, isLine);
                var (low, high) = first.Start <= second.Start ? (first, second) : (second, first);
                if (low.Start + low.Length <= high.Start)
                {
                    var lowBytes = bytes.GetRange(low.Start, low.Length);
                    var highBytes = bytes.GetRange(high.Start, high.Length);
                    bytes.RemoveRange(high.Start, high.Length);
                    bytes.InsertRange(high.Start, lowBytes);
                    bytes.RemoveRange(low.Start, low.Length);
                    bytes.InsertRange(low.Start, highBytes);
                }

                break;
        }
    }

    private static (int Start, int Length) Part(List<byte> bytes, Random random, bool isLine)
    {
        if (bytes.Count == 0)
        {
            return (0, 0);
        }

        var start = random.Next(bytes.Count);
        var end = start;
        while (start > 0 && !IsBorder(bytes[start - 1], isLine))
        {
            start--;
        }

        while (end < bytes.Count && !IsBorder(bytes[end], isLine))
        {
            end++;
        }

        return (start, Math.Min(end + 1, bytes.Count) - start);
    }

    private static bool IsBorder(byte value, bool isLine) => value == (byte)'\n' || (!isLine && value is (byte)' ' or (byte)',');

    private static void Delete(List<byte> bytes, int start, int count) => bytes.RemoveRange(start, Math.Min(count, bytes.Count - start));
}
