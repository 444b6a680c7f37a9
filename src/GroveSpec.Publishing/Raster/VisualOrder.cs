using System.Globalization;
using System.Text;

namespace GroveSpec.Publishing.Raster;

/// <summary>
/// Puts a line in the order in which it is seen from left to right, for a renderer that cannot: the rules of the Unicode Bidirectional
/// Algorithm (Unicode Standard Annex 9) for a line that runs from left to right and holds isolates, but neither embeddings nor overrides.
/// </summary>
internal static class VisualOrder
{
    private enum Kind
    {
        Left,
        Right,
        Arabic,
        Number,
        ArabicNumber,
        Sign,
        Separator,
        Neutral,
    }

    /// <summary>The pieces of a line from left to right as they are seen.</summary>
    /// <param name="line">The line as it is read, with its isolates.</param>
    /// <returns>
    /// Pieces that each run one way, their own letters in the order in which they are read. A piece that runs leftward is a single word or
    /// what stands between two; isolates are taken out.
    /// </returns>
    public static List<(string Text, bool IsLeftward)> Of(string line)
    {
        var units = new List<string>();
        var levels = new List<int>();
        var all = Units(line);
        Resolve(all, 0, all.Count, 0, units, levels);

        // L1: blanks at the end stay at the end.
        for (var last = units.Count - 1; last >= 0 && string.IsNullOrWhiteSpace(units[last]); last--)
        {
            levels[last] = 0;
        }

        var order = Reordered(levels);
        var pieces = new List<(string Text, bool IsLeftward)>();
        for (var from = 0; from < order.Length;)
        {
            var isLeftward = levels[order[from]] % 2 == 1;
            var isBlank = units[order[from]] == " ";
            var to = from + 1;
            while (to < order.Length && (levels[order[to]] % 2 == 1) == isLeftward && (!isLeftward || (!isBlank && units[order[to]] != " ")))
            {
                to++;
            }

            pieces.Add(Piece(Array.ConvertAll(order[from..to], unit => units[unit]), isLeftward));
            from = to;
        }

        return pieces;
    }

    /// <summary>A renderer takes the way a piece runs from its letters; signs alone it draws as they come, so they come as they are seen.</summary>
    private static (string Text, bool IsLeftward) Piece(string[] seen, bool isLeftward)
    {
        var text = string.Concat(seen);
        return !isLeftward ? (text, false)
            : Drawing.LeftwardWriting.Holds(text) ? (string.Concat(seen.Reverse()), true)
            : (string.Concat(seen.Select(Mirrored)), false);
    }

    private static string Mirrored(string sign)
    {
        const string Pairs = "()[]{}<>«»‹›";
        var place = Pairs.IndexOf(sign, StringComparison.Ordinal);
        return place < 0 ? sign : Pairs[place ^ 1].ToString();
    }

    /// <summary>A letter with its marks each, and each isolate's beginning and end.</summary>
    private static List<string> Units(string line)
    {
        var units = new List<string>();
        for (var letters = StringInfo.GetTextElementEnumerator(line); letters.MoveNext();)
        {
            units.Add(letters.GetTextElement());
        }

        return units;
    }

    private static bool IsBegin(string unit) => unit[0] is >= '\u2066' and <= '\u2068';

    private static bool IsEnd(string unit) => unit[0] == '\u2069';

    /// <summary>Gives each unit of a stretch its level; what stands in an isolate counts outside of it as one neutral sign.</summary>
    private static void Resolve(List<string> all, int from, int to, int level, List<string> units, List<int> levels)
    {
        var parts = new List<(int From, int To, Kind Kind)>();
        for (var place = from; place < to; place++)
        {
            if (IsEnd(all[place]))
            {
                continue;
            }

            var end = IsBegin(all[place]) ? EndOfIsolate(all, place, to) : place;
            parts.Add((place, end, IsBegin(all[place]) ? Kind.Neutral : KindOf(all[place])));
            place = end;
        }

        var kinds = parts.ConvertAll(part => part.Kind);
        ResolveNumbers(kinds, level);
        ResolveNeutrals(kinds, level);
        for (var index = 0; index < parts.Count; index++)
        {
            var (first, last, _) = parts[index];
            if (IsBegin(all[first]))
            {
                var isLeftward = all[first][0] switch { '\u2066' => false, '\u2067' => true, _ => BeginsLeftward(all, first + 1, last) };
                Resolve(all, first + 1, last, (level % 2 == 1) == isLeftward ? level + 2 : level + 1, units, levels);
                continue;
            }

            // I1 and I2.
            units.Add(all[first]);
            levels.Add(level + (kinds[index] switch
            {
                Kind.Left => level % 2,
                Kind.Right or Kind.Arabic => 1 - (level % 2),
                _ => level % 2 == 0 ? 2 : 1,
            }));
        }
    }

    private static int EndOfIsolate(List<string> all, int begin, int to)
    {
        var open = 0;
        for (var place = begin; place < to; place++)
        {
            open += IsBegin(all[place]) ? 1 : IsEnd(all[place]) ? -1 : 0;
            if (open == 0)
            {
                return place;
            }
        }

        return to;
    }

    // P2: the first strong letter, what stands in inner isolates left out.
    private static bool BeginsLeftward(List<string> all, int from, int to)
    {
        for (var place = from; place < to; place++)
        {
            if (IsBegin(all[place]))
            {
                place = EndOfIsolate(all, place, to);
            }
            else if (KindOf(all[place]) is (Kind.Left or Kind.Right or Kind.Arabic) and var kind)
            {
                return kind != Kind.Left;
            }
        }

        return false;
    }

    private static Kind KindOf(string unit)
    {
        var rune = Rune.GetRuneAt(unit, 0);
        return rune.Value switch
        {
            >= '0' and <= '9' => Kind.Number,
            (>= 0x0660 and <= 0x0669) or 0x066B or 0x066C => Kind.ArabicNumber,
            >= 0x06F0 and <= 0x06F9 => Kind.Number,
            '+' or '-' or '\u2212' or '.' or ',' or ':' or '/' or '\u00A0' => Kind.Separator,
            '%' or '#' or '$' or '\u00B0' or '\u2030' or 0x066A or '\u20AC' => Kind.Sign,
            _ when Drawing.LeftwardWriting.IsArabicLetter(rune) => Kind.Arabic,
            _ when Drawing.LeftwardWriting.IsLetter(rune) => Kind.Right,
            _ when Rune.IsLetter(rune) => Kind.Left,
            _ => Kind.Neutral,
        };
    }

    // W2 to W7.
    private static void ResolveNumbers(List<Kind> kinds, int level)
    {
        var strong = level % 2 == 0 ? Kind.Left : Kind.Right;
        for (var index = 0; index < kinds.Count; index++)
        {
            if (kinds[index] is Kind.Left or Kind.Right or Kind.Arabic)
            {
                strong = kinds[index];
            }
            else if (kinds[index] == Kind.Number && strong == Kind.Arabic)
            {
                kinds[index] = Kind.ArabicNumber;
            }
        }

        for (var index = 1; index + 1 < kinds.Count; index++)
        {
            if (kinds[index] == Kind.Separator && kinds[index - 1] is Kind.Number or Kind.ArabicNumber && kinds[index + 1] == kinds[index - 1])
            {
                kinds[index] = kinds[index - 1];
            }
        }

        for (var index = 0; index < kinds.Count; index++)
        {
            if (kinds[index] == Kind.Sign)
            {
                var end = kinds.FindIndex(index, kind => kind != Kind.Sign);
                var isOfNumber = (index > 0 && kinds[index - 1] == Kind.Number) || (end >= 0 && kinds[end] == Kind.Number);
                for (; index < kinds.Count && kinds[index] == Kind.Sign; index++)
                {
                    kinds[index] = isOfNumber ? Kind.Number : Kind.Neutral;
                }
            }

            if (index < kinds.Count && kinds[index] == Kind.Separator)
            {
                kinds[index] = Kind.Neutral;
            }
        }

        strong = level % 2 == 0 ? Kind.Left : Kind.Right;
        for (var index = 0; index < kinds.Count; index++)
        {
            strong = kinds[index] is Kind.Left or Kind.Right or Kind.Arabic ? kinds[index] : strong;
            if (kinds[index] == Kind.Number && strong == Kind.Left)
            {
                kinds[index] = Kind.Left;
            }
        }
    }

    // N1 and N2: between two that run one way a neutral sign runs with them, otherwise with the line; numbers count as running leftward.
    private static void ResolveNeutrals(List<Kind> kinds, int level)
    {
        var own = level % 2 == 0 ? Kind.Left : Kind.Right;
        var before = own;
        for (var index = 0; index < kinds.Count; index++)
        {
            if (kinds[index] != Kind.Neutral)
            {
                before = kinds[index] == Kind.Left ? Kind.Left : Kind.Right;
                continue;
            }

            var end = kinds.FindIndex(index, kind => kind != Kind.Neutral);
            var after = end < 0 ? own : kinds[end] == Kind.Left ? Kind.Left : Kind.Right;
            for (end = end < 0 ? kinds.Count : end; index < end; index++)
            {
                kinds[index] = before == after ? before : own;
            }

            index--;
        }
    }

    // L2.
    private static int[] Reordered(List<int> levels)
    {
        int[] order = [.. Enumerable.Range(0, levels.Count)];
        for (var level = levels.DefaultIfEmpty(0).Max(); level >= 1; level--)
        {
            for (var from = 0; from < order.Length; from++)
            {
                var to = from;
                while (to < order.Length && levels[order[to]] >= level)
                {
                    to++;
                }

                if (to > from)
                {
                    Array.Reverse(order, from, to - from);
                    from = to;
                }
            }
        }

        return order;
    }
}
