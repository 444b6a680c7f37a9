/** Where the editor begins: the server, the drawings, the commands. */
import * as vscode from "vscode";
import { columnOf } from "./columns";
import { DrawingPanel, drawingPanelOptions, drawingPanelType } from "./drawingPanel";
import { fileStem, firstPlanting } from "./firstPlanting";
import { askForFirst } from "./firstQuestions";
import { lensCommands } from "./lenses";
import { isQuestion, isView, type Question, type View } from "./messages";
import { Server, isPlanting, language } from "./server";

const questionCommands: Readonly<Record<string, Question>> = {
  "grovespec.showKeeping": "thin",
  "grovespec.showFronts": "fronts",
  "grovespec.showMoves": "nudge",
  "grovespec.showGround": "ground",
  "grovespec.showTape": "survey",
  "grovespec.showStand": "stand",
};

let server: Server | undefined;

/** Called by the editor when a planting is opened or one of the commands is used. */
export async function activate(context: vscode.ExtensionContext): Promise<void> {
  const started = new Server(context.extensionPath);
  server = started;
  const drawings = new Map<string, DrawingPanel>();

  const hold = (uri: vscode.Uri, view: View, question: Question, panel: vscode.WebviewPanel): void => {
    const key = uri.toString();
    const drawing = new DrawingPanel(uri, view, question, panel, started, context.extensionUri);
    drawings.set(key, drawing);
    panel.onDidDispose(() => {
      drawing.dispose();
      drawings.delete(key);
    });
  };
  const show = async (view: View, given: unknown, question?: Question): Promise<void> => {
    const document = await plantingToShow(given);
    if (!document) {
      return;
    }

    const drawing = drawings.get(document.uri.toString());
    if (drawing) {
      drawing.showView(view, question);
    } else {
      const options = { ...drawingPanelOptions(context.extensionUri), retainContextWhenHidden: false, enableFindWidget: false };
      hold(document.uri, view, question ?? "thin", vscode.window.createWebviewPanel(drawingPanelType, "Drawing", { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true }, options));
    }
  };
  const redraw = (): void => drawings.forEach((drawing) => drawing.redraw());

  context.subscriptions.push(
    started,
    ...lensCommands(),
    vscode.commands.registerCommand("grovespec.showPlan", (uri: unknown) => show("plan", uri)),
    vscode.commands.registerCommand("grovespec.showFront", (uri: unknown) => show("front", uri)),
    vscode.commands.registerCommand("grovespec.showTimeline", (uri: unknown) => show("timeline", uri)),
    vscode.commands.registerCommand("grovespec.showWiring", (uri: unknown) => show("wiring", uri)),
    vscode.commands.registerCommand("grovespec.showChoices", (uri: unknown) => show("decide", uri)),
    ...Object.entries(questionCommands).map(([command, question]) => vscode.commands.registerCommand(command, (uri: unknown) => show("decide", uri, question))),
    vscode.commands.registerCommand("grovespec.firstPlanting", beginFirstPlanting),
    vscode.commands.registerCommand("grovespec.restartServer", () => started.restart()),
    // A file that another takes in may change how that one is drawn, so each change draws all that are open.
    vscode.workspace.onDidChangeTextDocument(({ document, contentChanges }) => {
      if (isPlanting(document) && contentChanges.length > 0) {
        redraw();
      }
    }),
    vscode.workspace.onDidOpenTextDocument((document) => drawings.get(document.uri.toString())?.redraw()),
    vscode.workspace.onDidCloseTextDocument((document) => drawings.get(document.uri.toString())?.redraw()),
    vscode.workspace.onDidChangeConfiguration((change) => {
      if (change.affectsConfiguration(language)) {
        redraw();
      }
    }),
    vscode.window.registerWebviewPanelSerializer(drawingPanelType, {
      async deserializeWebviewPanel(panel: vscode.WebviewPanel, state: unknown): Promise<void> {
        const { uri, view, question } = (state ?? {}) as Record<string, unknown>;
        if (typeof uri !== "string" || drawings.has(uri)) {
          panel.dispose();
          return;
        }

        panel.webview.options = drawingPanelOptions(context.extensionUri);
        hold(vscode.Uri.parse(uri, true), isView(view) ? view : "plan", isQuestion(question) ? question : "thin", panel);
      },
    }),
  );
  await started.start();
}

/** Called by the editor at its end. */
export function deactivate(): void {
  server?.dispose();
  server = undefined;
}

// The planting that was named, or the one in front, or one that can be seen; its text is brought up, so that the drawing stands beside it.
async function plantingToShow(given: unknown): Promise<vscode.TextDocument | undefined> {
  const active = vscode.window.activeTextEditor;
  if (active && isPlanting(active.document) && (!(given instanceof vscode.Uri) || given.toString() === active.document.uri.toString())) {
    return active.document;
  }

  const document =
    given instanceof vscode.Uri
      ? await vscode.workspace.openTextDocument(given)
      : (vscode.window.visibleTextEditors.find((editor) => isPlanting(editor.document))?.document ?? vscode.workspace.textDocuments.find(isPlanting));
  if (!document || !isPlanting(document)) {
    const begin = "Begin a first planting";
    if ((await vscode.window.showInformationMessage("Open a planting first: a file that ends in .grove.", begin)) === begin) {
      await beginFirstPlanting();
    }

    return undefined;
  }

  await vscode.window.showTextDocument(document, { viewColumn: columnOf(document.uri) ?? vscode.ViewColumn.Active, preview: false });
  return document;
}

// Into the folder that is open when there is one and it is trusted; else into a text that is not stored yet. No file is written over.
async function beginFirstPlanting(): Promise<void> {
  const answers = await askForFirst();
  if (!answers) {
    return;
  }

  const text = firstPlanting(answers.name, answers.habit);
  const folder = vscode.workspace.workspaceFolders?.[0]?.uri;
  const document =
    folder && vscode.workspace.isTrusted
      ? await vscode.workspace.openTextDocument(await writeNew(folder, fileStem(answers.name), text))
      : await vscode.workspace.openTextDocument({ language, content: text });
  await vscode.window.showTextDocument(document, { viewColumn: vscode.ViewColumn.Active, preview: false });
  // Now the walkthrough may tick off its step. Ticking it off brings the step before the eyes, so not while questions are open.
  await vscode.commands.executeCommand("setContext", "grovespec.hasBegun", true);
}

async function writeNew(folder: vscode.Uri, stem: string, text: string): Promise<vscode.Uri> {
  for (let number = 1; ; number++) {
    const uri = vscode.Uri.joinPath(folder, `${stem}${number === 1 ? "" : `-${number}`}.grove`);
    const edit = new vscode.WorkspaceEdit();
    edit.createFile(uri, { overwrite: false, ignoreIfExists: false, contents: new TextEncoder().encode(text) });
    try {
      await vscode.workspace.fs.stat(uri);
    } catch {
      await vscode.workspace.applyEdit(edit);
      return uri;
    }
  }
}
