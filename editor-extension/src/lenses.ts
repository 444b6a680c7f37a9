/** What a click on a note above a line does. The server says what the note is about; which command that becomes is the editor's. */
import * as vscode from "vscode";

/** Opens the list of what was found. */
export const showFindings = "grovespec.showFindings";

/** Shows where the name that a note counts stands. */
export const showPlaces = "grovespec.showPlaces";

/** Gives each note its command. */
export function withCommands(document: vscode.TextDocument, lenses: readonly vscode.CodeLens[]): vscode.CodeLens[] {
  return lenses.map((lens) => {
    const place = placeOf((lens as { data?: unknown }).data);
    const title = lens.command?.title ?? "";
    lens.command = place
      ? { title, command: showPlaces, tooltip: "Show the lines that name it", arguments: [document.uri, place] }
      : { title, command: showFindings, tooltip: "Show what was found" };
    return lens;
  });
}

/** The commands themselves; no palette lists them. */
export const lensCommands = (): vscode.Disposable[] => [
  vscode.commands.registerCommand(showFindings, () => vscode.commands.executeCommand("workbench.panel.markers.view.focus")),
  vscode.commands.registerCommand(showPlaces, async (uri: unknown, place: unknown) => {
    if (uri instanceof vscode.Uri && place instanceof vscode.Position) {
      const all = (await vscode.commands.executeCommand<vscode.Location[] | undefined>("vscode.executeReferenceProvider", uri, place)) ?? [];
      // The line under the note needs no showing.
      const others = all.filter((location) => location.uri.toString() !== uri.toString() || !location.range.contains(place));
      await vscode.commands.executeCommand("editor.action.showReferences", uri, place, others);
    }
  }),
];

function placeOf(data: unknown): vscode.Position | undefined {
  const { line, character } = (data ?? {}) as Record<string, unknown>;
  return typeof line === "number" && typeof character === "number" ? new vscode.Position(line, character) : undefined;
}
