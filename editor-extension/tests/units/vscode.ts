/** As much of the editor as the extension's units need. What they told the editor is kept for tests to look at. */

type Listener<T> = (value: T) => unknown;

export class EventEmitter<T> {
  private readonly listeners = new Set<Listener<T>>();
  readonly event = (listener: Listener<T>): { dispose(): void } => {
    this.listeners.add(listener);
    return { dispose: () => this.listeners.delete(listener) };
  };
  fire(value: T): void {
    this.listeners.forEach((listener) => listener(value));
  }
  dispose(): void {
    this.listeners.clear();
  }
  get count(): number {
    return this.listeners.size;
  }
}

export class Position {
  constructor(
    readonly line: number,
    readonly character: number,
  ) {}
}

export class Range {
  readonly start: Position;
  readonly end: Position;
  constructor(startLine: number, startCharacter: number, endLine: number, endCharacter: number) {
    this.start = new Position(startLine, startCharacter);
    this.end = new Position(endLine, endCharacter);
  }
  contains({ line, character }: Position): boolean {
    const after = line > this.start.line || (line === this.start.line && character >= this.start.character);
    const before = line < this.end.line || (line === this.end.line && character <= this.end.character);
    return after && before;
  }
}

export class TextEdit {
  constructor(
    readonly range: Range,
    readonly newText: string,
  ) {}
  static replace(range: Range, newText: string): TextEdit {
    return new TextEdit(range, newText);
  }
}

export class WorkspaceEdit {
  readonly changes: { uri: string; edits: TextEdit[] }[] = [];
  set(uri: Uri, edits: TextEdit[]): void {
    this.changes.push({ uri: uri.toString(), edits });
  }
}

export class Uri {
  constructor(readonly text: string) {}
  get path(): string {
    return this.text.replace(/^\w+:\/\//, "");
  }
  toString(): string {
    return this.text;
  }
  static joinPath(uri: Uri, ...parts: string[]): Uri {
    return new Uri([uri.text, ...parts].join("/"));
  }
}

export class TabInputText {
  constructor(readonly uri: Uri) {}
}

export const ViewColumn = { One: 1, Beside: -2, Active: -1 };

export const selectionChanges = new EventEmitter<{ textEditor: unknown }>();
export const editorChanges = new EventEmitter<unknown>();
export const applied: WorkspaceEdit[] = [];
export const shown: { uri: string; options: { preserveFocus?: boolean; selection?: Range } }[] = [];
export const executed: string[] = [];

export const workspace = {
  isTrusted: true,
  textDocuments: [] as { uri: Uri; version: number }[],
  openTextDocument: (uri: Uri) => Promise.resolve({ uri }),
  applyEdit: (edit: WorkspaceEdit) => {
    applied.push(edit);
    return Promise.resolve(true);
  },
};

export const window = {
  visibleTextEditors: [] as unknown[],
  tabGroups: { all: [] as { viewColumn: number; tabs: { input: unknown }[] }[] },
  onDidChangeTextEditorSelection: selectionChanges.event,
  onDidChangeActiveTextEditor: editorChanges.event,
  showTextDocument: (document: { uri: Uri }, options: { preserveFocus?: boolean; selection?: Range }) => {
    shown.push({ uri: document.uri.toString(), options });
    return Promise.resolve({ document });
  },
};

export const commands = {
  executeCommand: (name: string) => {
    executed.push(name);
    return Promise.resolve();
  },
};

/** Forgets what was told. */
export function reset(): void {
  applied.length = shown.length = executed.length = 0;
  workspace.isTrusted = true;
  workspace.textDocuments = [];
  window.visibleTextEditors = [];
  window.tabGroups.all = [];
}
