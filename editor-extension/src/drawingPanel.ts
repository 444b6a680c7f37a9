/** One planting's drawing beside its text. */
import * as vscode from "vscode";
import type { TextEdit } from "vscode-languageclient/node";
import { columnOf } from "./columns";
import { readFromPage, type Answers, type FromPage, type Plate, type Question, type ToPage, type View } from "./messages";
import { Newest } from "./newest";
import { newNonce, pageText } from "./page";
import { decideRequest, dragRequest, dragTaskRequest, drawRequest, guidesRequest, stepRequest, stepTaskRequest, type FactPlace, type Move, type Picture, type Sheet } from "./requests";
import type { Server } from "./server";

/** What the editor calls a drawing's panel. */
export const drawingPanelType = "grovespec.drawing";

/** How a drawing's panel may behave. */
export const drawingPanelOptions = (extension: vscode.Uri): vscode.WebviewOptions => ({
  enableScripts: true,
  enableForms: false,
  enableCommandUris: false,
  localResourceRoots: [vscode.Uri.joinPath(extension, "dist")],
});

const overtaken = "The text has changed meanwhile; nothing was moved.";

/**
 * Holds a panel and what was last drawn in it. The drawing belongs to one document and stays with it whichever is looked at; when the
 * document is closed the last picture stays, is called old, and leads back to the text.
 */
export class DrawingPanel implements vscode.Disposable {
  private readonly pictures: Newest<() => void>;
  private readonly subscriptions: vscode.Disposable[] = [];
  private places = new Map<string, FactPlace>();
  private isPageReady = false;
  private work: Promise<void> = Promise.resolve();
  private steps: { trunk: string; view: Plate; right: number; back: number } | undefined;
  private days: { task: string; days: number } | undefined;
  private sheet: { question: Question; sheet: Sheet } | undefined;
  private readonly answers = new Map<Question, Answers>();

  constructor(
    readonly uri: vscode.Uri,
    private view: View,
    private question: Question,
    readonly panel: vscode.WebviewPanel,
    private readonly server: Server,
    extension: vscode.Uri,
  ) {
    this.pictures = new Newest(
      () => this.ask(),
      (show) => show(),
      () => this.say({ type: "note", says: this.server.isRunning ? "This text could not be drawn." : "The checker does not run.", isStale: true }),
    );
    const at = (file: string): string => panel.webview.asWebviewUri(vscode.Uri.joinPath(extension, "dist", file)).toString();
    panel.iconPath = { light: vscode.Uri.joinPath(extension, "icons", "draw-light.svg"), dark: vscode.Uri.joinPath(extension, "icons", "draw-dark.svg") };
    panel.title = this.name;
    this.subscriptions.push(
      panel.webview.onDidReceiveMessage((message: unknown) => this.hear(readFromPage(message))),
      vscode.window.onDidChangeTextEditorSelection(({ textEditor }) => this.follow(textEditor)),
      vscode.window.onDidChangeActiveTextEditor((editor) => this.follow(editor)),
      server.onReady(() => this.redraw()),
    );
    panel.webview.html = pageText({ source: panel.webview.cspSource, script: at("drawing.js"), style: at("drawing.css"), faces: at("faces.css"), nonce: newNonce() });
  }

  /** Brings the panel to the front with a view; with a question, where that is what it shows. */
  showView(view: View, question = this.question): void {
    this.panel.reveal(undefined, true);
    this.question = question;
    this.turnTo(view);
  }

  /** Draws anew, as soon as what is being drawn is there. */
  redraw(): void {
    if (this.isPageReady) {
      this.pictures.want();
    }
  }

  dispose(): void {
    this.pictures.dispose();
    this.subscriptions.forEach((subscription) => subscription.dispose());
    this.places.clear();
  }

  private get name(): string {
    return this.uri.path.split("/").pop() || "Drawing";
  }

  private get document(): vscode.TextDocument | undefined {
    return vscode.workspace.textDocuments.find((document) => document.uri.toString() === this.uri.toString());
  }

  private say(message: ToPage): void {
    void this.panel.webview.postMessage(message);
  }

  private turnTo(view: View): void {
    this.view = view;
    this.redraw();
  }

  // Asks for what the panel shows; what comes back shows it.
  private async ask(): Promise<() => void> {
    const { view, question } = this;
    const textDocument = { uri: this.server.uriOf(this.uri) };
    if (view === "decide") {
      const sheet = await this.server.ask(decideRequest, { textDocument, question, answers: this.answers.get(question) ?? {} });
      return () => this.show(sheet, (shown) => this.showSheet(question, shown));
    }

    const picture = await this.server.ask(drawRequest, { textDocument, view });
    return () => this.show(picture, (shown) => this.showPicture(view, shown));
  }

  private show<Shown extends Picture | Sheet>(shown: Shown | null, tell: (shown: Shown) => void): void {
    const document = this.document;
    if (!document || shown === null) {
      this.say({ type: "note", says: `The text of ${this.name} is closed. A click on the drawing opens it again.`, isStale: true });
      return;
    }

    if (shown.version !== document.version) {
      // The change that made the newer version is on its way to the server, or a newer picture is.
      setTimeout(() => this.redraw(), 10);
      return;
    }

    this.places = new Map(shown.places.map((place) => [place.origin, place]));
    this.panel.title = shown.title || this.name;
    tell(shown);
    this.follow(vscode.window.visibleTextEditors.find((editor) => editor.document === document));
  }

  private showPicture(view: Plate, { version, svg, title, trunks, tasks }: Picture): void {
    this.say({ type: "picture", view, version, svg, title, trunks, tasks, origins: [...this.places.keys()] });
  }

  private showSheet(question: Question, sheet: Sheet): void {
    this.sheet = { question, sheet };
    const { version, title, says, picture, notes, fields } = sheet;
    const ways = sheet.ways.map(({ edits, ...way }) => ({ ...way, canBeWritten: edits.length > 0 }));
    this.say({ type: "sheet", question, version, title, says, ways, notes, fields, origins: [...this.places.keys()], ...(picture === undefined ? {} : { picture }) });
  }

  // Only ever lights up what the caret stands on. It moves nothing, so that a click in the drawing that moves the caret ends here.
  private follow(editor: vscode.TextEditor | undefined): void {
    if (editor?.document.uri.toString() !== this.uri.toString()) {
      return;
    }

    const caret = editor.selection.active;
    const lit = [...this.places.values()].filter(({ range }) => rangeOf(range).contains(caret));
    this.say({ type: "lit", origins: lit.map(({ origin }) => origin) });
  }

  private hear(message: FromPage | undefined): void {
    switch (message?.type) {
      case "ready":
        this.isPageReady = true;
        this.say({ type: "begin", uri: this.uri.toString(), view: this.view, question: this.question });
        this.redraw();
        break;
      case "view":
        this.turnTo(message.view);
        break;
      case "ask":
        this.question = message.question;
        if (message.answers) {
          this.answers.set(message.question, { ...this.answers.get(message.question), ...message.answers });
        }

        this.turnTo("decide");
        break;
      case "write":
        this.inOrder(() => this.write(message));
        break;
      case "reveal":
        this.inOrder(() => this.reveal(message.origin, message.isEntered));
        break;
      case "hold":
        void this.guide(message);
        break;
      case "drop": {
        const { trunk, view, x, y } = message;
        this.inOrder(() => this.drop(message.version, (from) => this.server.ask(dragRequest, { ...from, view, trunk, x, y })));
        break;
      }
      case "step":
        this.step(message);
        break;
      case "dropTask": {
        const { task, x } = message;
        this.inOrder(() => this.drop(message.version, (from) => this.server.ask(dragTaskRequest, { ...from, task, x })));
        break;
      }
      case "stepTask":
        this.stepTask(message);
        break;
      case "undo":
      case "redo":
        this.inOrder(() => this.back(message.type));
        break;
    }
  }

  // One after the other, so that each works on the text that the one before has left.
  private inOrder(job: () => Promise<void>): void {
    this.work = this.work.then(job).catch(() => this.settle(false, "That could not be done."));
  }

  private settle(isMade: boolean, says: string): void {
    this.say({ type: "settled", isMade, says });
  }

  private async editor(keepsFocus: boolean, selection?: vscode.Range): Promise<vscode.TextEditor> {
    const viewColumn =
      vscode.window.visibleTextEditors.find((editor) => editor.document.uri.toString() === this.uri.toString())?.viewColumn ??
      columnOf(this.uri) ??
      vscode.ViewColumn.One;
    const document = await vscode.workspace.openTextDocument(this.uri);
    return await vscode.window.showTextDocument(document, { viewColumn, preserveFocus: keepsFocus, preview: false, ...(selection ? { selection } : {}) });
  }

  private async reveal(origin: string, isEntered: boolean): Promise<void> {
    const place = this.document ? this.places.get(origin) : undefined;
    await this.editor(!isEntered, place ? rangeOf(place.range) : undefined);
  }

  private async guide({ trunk, view, version }: Extract<FromPage, { type: "hold" }>): Promise<void> {
    if (view !== "plan" || this.document?.version !== version) {
      return;
    }

    try {
      const guides = await this.server.ask(guidesRequest, { textDocument: { uri: this.server.uriOf(this.uri) }, version, view, trunk });
      if (guides && guides.version === this.document?.version) {
        this.say({ type: "guides", trunk, version: guides.version, svg: guides.svg });
      }
    } catch {
      // A trunk can be moved without them.
    }
  }

  // Changes the text of a version as the server says, for what was let go or stepped in its picture.
  private async drop(version: number | undefined, ask: (from: { textDocument: { uri: string }; version: number }) => Promise<Move | null>): Promise<void> {
    if (version === undefined || this.document?.version !== version) {
      this.settle(false, overtaken);
    } else if (this.mayWrite()) {
      await this.apply(await ask({ textDocument: { uri: this.server.uriOf(this.uri) }, version }));
    }
  }

  // What was chosen goes into the text whole, as one step back.
  private async write({ question, version, way }: Extract<FromPage, { type: "write" }>): Promise<void> {
    const chosen = this.sheet?.question === question && this.sheet.sheet.version === version ? this.sheet.sheet.ways[way] : undefined;
    if (!chosen) {
      this.settle(false, overtaken);
    } else if (this.mayWrite()) {
      await this.apply({ version, edits: chosen.edits, says: `Written: ${chosen.title}` });
    }
  }

  // Keys repeat faster than a text changes: what comes meanwhile is added up and done in one step.
  private step({ trunk, view, right, back }: Extract<FromPage, { type: "step" }>): void {
    if (this.steps?.trunk === trunk && this.steps.view === view) {
      this.steps.right += right;
      this.steps.back += back;
      return;
    }

    const steps = { trunk, view, right, back };
    this.steps = steps;
    this.inOrder(() => {
      if (this.steps === steps) {
        this.steps = undefined;
      }

      return this.drop(this.document?.version, (from) => this.server.ask(stepRequest, { ...from, ...steps }));
    });
  }

  private stepTask({ task, days }: Extract<FromPage, { type: "stepTask" }>): void {
    if (this.days?.task === task) {
      this.days.days += days;
      return;
    }

    const waiting = { task, days };
    this.days = waiting;
    this.inOrder(() => {
      if (this.days === waiting) {
        this.days = undefined;
      }

      return this.drop(this.document?.version, (from) => this.server.ask(stepTaskRequest, { ...from, ...waiting }));
    });
  }

  private mayWrite(): boolean {
    if (!vscode.workspace.isTrusted) {
      this.settle(false, "This folder is not trusted, so its drawing is only for looking at.");
      return false;
    }

    return true;
  }

  private async apply(move: Move | null): Promise<void> {
    if (!move || move.edits.length === 0) {
      this.settle(false, move?.refusal ?? move?.says ?? "Nothing was moved.");
    } else if (this.document?.version !== move.version) {
      this.settle(false, overtaken);
    } else {
      const edit = new vscode.WorkspaceEdit();
      edit.set(this.uri, move.edits.map(editOf));
      const isMade = await vscode.workspace.applyEdit(edit);
      this.settle(isMade, isMade ? (move.says ?? "") : overtaken);
    }
  }

  private async back(command: "undo" | "redo"): Promise<void> {
    await this.editor(false);
    await vscode.commands.executeCommand(command);
    this.panel.reveal(undefined, false);
  }
}

const rangeOf = ({ start, end }: FactPlace["range"]): vscode.Range => new vscode.Range(start.line, start.character, end.line, end.character);
const editOf = ({ range, newText }: TextEdit): vscode.TextEdit => vscode.TextEdit.replace(rangeOf(range), newText);
