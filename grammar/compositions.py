#!/usr/bin/env python3
"""Writes src/GroveSpec.Syntax/Text/Compositions.cs from Python's copy of the Unicode Character Database."""
import pathlib
import sys
import unicodedata

pairs = []
accents = set()
for code in list(range(0x00C0, 0x0530)) + list(range(0x1E00, 0x2000)):
    whole = chr(code)
    parts = unicodedata.decomposition(whole).split()
    # Only pairs that canonical composition puts together again.
    if len(parts) == 2 and not parts[0].startswith("<"):
        pair = "".join(chr(int(part, 16)) for part in parts)
        if unicodedata.normalize("NFC", pair) == whole:
            pairs.append((pair, whole))
for code in range(0x0300, 0x0370):
    if unicodedata.combining(chr(code)):
        accents.add(code)
pairs.sort()


def quoted(text):
    return "".join("\\u%04X" % ord(unit) for unit in text)


rows = [pair + whole for pair, whole in pairs]
lines = ["        \"" + quoted("".join(rows[at:at + 6])) + "\"" for at in range(0, len(rows), 6)]
classes = [unicodedata.combining(chr(code)) for code in range(0x0300, 0x0370)]
numbers = ["        " + ", ".join(str(value) for value in classes[at:at + 16]) + "," for at in range(0, len(classes), 16)]
target = pathlib.Path(sys.argv[1]) if len(sys.argv) > 1 else (
    pathlib.Path(__file__).resolve().parent.parent / "src/GroveSpec.Syntax/Text/Compositions.cs")
target.write_text(f"""namespace GroveSpec.Syntax.Text;

/// <summary>
/// Which letter and accent make one character, for the Latin, Greek and Cyrillic scripts: the canonical compositions of
/// Unicode {unicodedata.unidata_version}. Written by grammar/compositions.py; do not change it by hand.
/// </summary>
internal static class Compositions
{{
    private const int FirstAccent = 0x0300;

    // Triples of first, second and whole, sorted by the first two.
    private const string Pairs =
{(" +" + chr(10)).join(lines)};

    private static ReadOnlySpan<byte> Classes =>
    [
{chr(10).join(numbers)}
    ];

    /// <summary>The canonical combining class; 0 for a character that no accent is, or that is outside the table.</summary>
    public static int ClassOf(char unit) => unit is >= (char)FirstAccent and < (char)(FirstAccent + {len(classes)}) ? Classes[unit - FirstAccent] : 0;

    /// <summary>The letter and accent that a character is made of; null when it is none of the table's.</summary>
    public static (char First, char Second)? PartsOf(char whole)
    {{
        // Names with such letters are few and short; a second table sorted the other way would cost more than it saves.
        for (var at = whole < '\u00C0' ? Pairs.Length : 0; at < Pairs.Length; at += 3)
        {{
            if (Pairs[at + 2] == whole)
            {{
                return (Pairs[at], Pairs[at + 1]);
            }}
        }}

        return null;
    }}

    /// <summary>The one character for a letter and an accent; null when there is none.</summary>
    public static char? Of(char first, char second)
    {{
        var low = 0;
        var high = (Pairs.Length / 3) - 1;
        while (low <= high)
        {{
            var middle = (low + high) / 2;
            var order = Pairs[middle * 3] != first ? Pairs[middle * 3].CompareTo(first) : Pairs[(middle * 3) + 1].CompareTo(second);
            if (order == 0)
            {{
                return Pairs[(middle * 3) + 2];
            }}

            if (order < 0)
            {{
                low = middle + 1;
            }}
            else
            {{
                high = middle - 1;
            }}
        }}

        return null;
    }}
}}
""", encoding="utf-8")
