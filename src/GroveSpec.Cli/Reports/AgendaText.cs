using GroveSpec.Binding;
using GroveSpec.Cli.Terminals;
using GroveSpec.Craft.Calendar;
using GroveSpec.Craft.Care;
using GroveSpec.Drawing.Timeline;
using GroveSpec.Model.States;

namespace GroveSpec.Cli.Reports;

/// <summary>Tells for people what lies before them.</summary>
internal sealed class AgendaText
{
    private const int WidestName = 32;

    private readonly Assessment planting;
    private readonly Agenda agenda;
    private readonly TextWriter writer;
    private readonly int width;
    private readonly bool isColoured;

    private AgendaText(Assessment planting, TextWriter writer, int width, bool isColoured)
    {
        this.planting = planting;
        this.writer = writer;
        this.width = width;
        this.isColoured = isColoured;
        agenda = Agenda.Of(planting.Planting, planting.Date);
    }

    /// <summary>Writes the work of one planting.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="order">By what.</param>
    /// <param name="writer">Where to.</param>
    /// <param name="width">How many characters fit into a line.</param>
    /// <param name="isColoured">Whether headings may be bold.</param>
    public static void Write(Assessment planting, AgendaOrder order, TextWriter writer, int width, bool isColoured) =>
        new AgendaText(planting, writer, width, isColoured).Write(order);

    private void Write(AgendaOrder order)
    {
        writer.Write(Bold(HarmlessText.OneLine(planting.Planting.Name?.Value ?? planting.File)));
        writer.Write(agenda.Day is { } day ? $", the work seen from {DayWords.Day(day)}\n" : ", its work\n");
        if (agenda.Entries.IsEmpty)
        {
            Paragraph.Write(writer, "No work is written down. A task says what is done, on which trunks and when: task R1 repot on all in early spring 2028", "  ", width);
        }
        else if (agenda.Day is null)
        {
            Paragraph.Write(writer, "Nothing in the file says which day it is; --on DATE sorts the work by how near it is.", "  ", width);
        }

        switch (order)
        {
            case AgendaOrder.Trunk:
                WriteByTrunk();
                break;
            case AgendaOrder.Kind:
                foreach (var kind in agenda.Entries.GroupBy(entry => TaskWords.Kind(entry.Dated.Task)).OrderBy(kind => kind.Key, StringComparer.Ordinal))
                {
                    WriteGroup(kind.Key, [.. kind]);
                }

                break;
            default:
                foreach (var term in agenda.Entries.GroupBy(entry => entry.Term))
                {
                    WriteGroup(AgendaWords.Heading(agenda, term.Key), [.. term]);
                }

                break;
        }

        writer.Write('\n');
    }

    private void WriteByTrunk()
    {
        var trunksOf = WorkList.Of(planting.Planting, [.. agenda.Entries.Select(entry => entry.Dated)]).ToDictionary(work => work.Dated.Task.Name, work => work.Trunks, StringComparer.Ordinal);
        foreach (var trunk in planting.State.Trunks.Where(trunk => trunk.Presence != Presence.Removed).Select(trunk => trunk.Trunk.Name).Distinct(StringComparer.Ordinal))
        {
            WriteGroup(trunk, [.. agenda.Entries.Where(entry => trunksOf[entry.Dated.Task.Name].Contains(trunk))]);
        }

        WriteGroup("On no trunk by name", [.. agenda.Entries.Where(entry => trunksOf[entry.Dated.Task.Name].IsEmpty)]);
    }

    private void WriteGroup(string heading, IReadOnlyList<AgendaEntry> entries)
    {
        if (entries.Count == 0)
        {
            return;
        }

        writer.Write($"\n  {Bold(HarmlessText.Shorten(HarmlessText.OneLine(heading), 120))}\n");
        var longest = entries.Max(entry => Name(entry).Length);
        var column = Math.Min(longest, WidestName);
        foreach (var entry in entries)
        {
            var note = entry.Dated.Task.Note is { } said ? $"  “{HarmlessText.Shorten(said.Value, 400)}”" : "";
            Paragraph.Write(writer, HarmlessText.OneLine($"{TaskWords.Work(planting.Planting, entry.Dated.Task)}: {AgendaWords.When(entry)}{note}"), $"    {Name(entry).PadRight(column)}  ", width);
        }
    }

    private static string Name(AgendaEntry entry) => HarmlessText.Shorten(HarmlessText.OneLine(entry.Dated.Task.Name), WidestName);

    private string Bold(string text) => isColoured ? $"\u001b[1m{text}\u001b[0m" : text;
}
