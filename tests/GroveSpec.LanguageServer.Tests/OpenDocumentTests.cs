using System.Runtime.CompilerServices;
using GroveSpec.Binding.Use;
using GroveSpec.Checks;
using GroveSpec.LanguageServer.Sessions;
using GroveSpec.Syntax.Text;
using Xunit;

namespace GroveSpec.LanguageServer.Tests;

public sealed class OpenDocumentTests
{
    [Fact]
    public void A_text_that_was_read_holds_on_to_none_before_it()
    {
        var (newest, earlier) = Edited(isEachRead: true);
        _ = newest.Assessment;

        GC.Collect();

        Assert.All(earlier, text => Assert.False(text.TryGetTarget(out _)));
        GC.KeepAlive(newest);
    }

    [Fact]
    public void A_text_that_was_not_read_yet_holds_on_to_the_last_that_was_and_to_none_between()
    {
        var (newest, earlier) = Edited(isEachRead: false);

        GC.Collect();

        Assert.Equal([true, false, false, false], earlier.Select(text => text.TryGetTarget(out _)));
        Assert.Equal("trunk A at 4, 0 mm\n", newest.Tree.Text.Content);
        GC.Collect();
        Assert.All(earlier, text => Assert.False(text.TryGetTarget(out _)));
        GC.KeepAlive(newest);
    }

    [Fact]
    public void How_readings_agree_is_worked_out_once_while_they_and_the_places_stay()
    {
        const string Read = "trunk A at 0, 0 mm\ntrunk B at 90, 0 mm\ntrunk C at 0, 80 mm\ntrunk D\ntape A to D 50 mm\ntape B to D 70 mm\ntape C to D 55 mm\ntape A to B 96 mm\n";
        var first = Document(Read, null);
        Assert.NotNull(first.Assessment.Tapes);
        var height = Document(Read.Replace("trunk D", "trunk D height 90 mm", StringComparison.Ordinal), first);
        Assert.Same(first.Assessment.Tapes, height.Assessment.Tapes);

        // One that nobody looked at lies between.
        var below = Document("# a note\n" + Read, Document("# a\n" + Read, height));
        Assert.Same(first.Assessment.Tapes, below.Assessment.Tapes);
        Assert.Equal(2, below.Assessment.Findings.Count(finding => finding.Check.Name == "misfit"));
        var longer = Document(Read.Replace("70 mm", "75 mm", StringComparison.Ordinal), below);
        Assert.NotSame(first.Assessment.Tapes, longer.Assessment.Tapes);
        Assert.Null(Document("trunk A at 0, 0 mm\n", longer).Assessment.Tapes);

        static OpenDocument Document(string text, OpenDocument? before) => new("untitled:a", 1, SourceText.FromText(text), new NoFiles(), new ServerSettings(), isUtf8: false, before);
    }

    [Fact]
    public void An_edit_among_tasks_of_many_years_makes_little_more_than_half_of_what_the_whole_text_does()
    {
        const string Edited = "unwire of W1001 ";
        var text = Tasks(2_000, 30);
        var document = Read(text, null).Document;

        var whole = Read(text, null).Bytes;
        var edit = Read(text.Replace(Edited, Edited + " ", StringComparison.Ordinal), document).Bytes;

        // Measured: 0.504. It is 1 where all is read and dated anew. Bytes and not time, since the collector may fall on every edit and on none of the others.
        Assert.InRange((double)edit / whole, 0.1, 0.6);

        static (OpenDocument Document, long Bytes) Read(string text, OpenDocument? before)
        {
            var source = SourceText.FromText(text);
            var start = GC.GetAllocatedBytesForCurrentThread();
            var document = new OpenDocument("untitled:a", 1, source, new NoFiles(), new ServerSettings(), isUtf8: false, before);
            Assert.DoesNotContain(document.Assessment.Findings, finding => finding.Severity == Severity.Error);
            return (document, GC.GetAllocatedBytesForCurrentThread() - start);
        }
    }

    private static string Tasks(int tasks, int years)
    {
        var lines = Enumerable.Range(0, tasks).Select(task =>
        {
            var (trunk, year, wire) = ($"T{task / 7 % 7}", 2026 + (task * years / tasks), task - (task % 7));
            return $"task W{task} " + (task % 7) switch
            {
                0 => $"wire on {trunk} in late autumn {year} with aluminium 3 mm, coil 50 deg\n",
                1 => $"look-over of W{wire} every 2 weeks until W{task + 1}\n",
                2 => $"unwire of W{wire} 42 to 56 days after W{wire}\n",
                3 => $"pinch on {trunk} every 3 weeks, from leaf-out {year} to midsummer {year}\n",
                4 => $"prune on {trunk} in late winter {year}\n",
                5 => $"feed on all from leaf-out {year} to leaf-colour {year}, after W{task - 1}\n",
                _ => $"measure on all in late winter {year + 1}\n",
            };
        });
        var trunks = Enumerable.Range(0, 7).Select(trunk => $"trunk T{trunk} at {trunk * 61}, {trunk * trunk * 17} mm diameter {9 + (trunk * 3)} mm height {90 + (trunk * 40)} mm\n");
        return "planting \"Work\"\nhabit group\nspecies larix-kaempferi\nsite latitude 51 N, zone 8b, last frost 3 May, first frost 1 November\n" + string.Concat(trunks.Concat(lines));
    }

    /// <summary>A document after four edits, and the texts before each.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static (OpenDocument Newest, WeakReference<SourceText>[] Earlier) Edited(bool isEachRead)
    {
        var texts = Enumerable.Range(0, 5).Select(number => SourceText.FromText($"trunk A at {number}, 0 mm\n")).ToArray();
        OpenDocument? newest = null;
        foreach (var text in texts)
        {
            var before = newest;
            newest = new OpenDocument("untitled:a", 1, text, new NoFiles(), new ServerSettings(), isUtf8: false, before);
            if (before is null || isEachRead)
            {
                _ = newest.Assessment;
            }

            before?.Overtake();
        }

        return (newest!, [.. texts[..^1].Select(text => new WeakReference<SourceText>(text))]);
    }
}
