/** Opens a panel without an editor, for tests. */
import { vi } from "vitest";
import type * as vscode from "vscode";
import { DrawingPanel } from "../../src/drawingPanel";
import type { FromPage, ToPage } from "../../src/messages";
import type { Server } from "../../src/server";
import * as stand from "./vscode";

export const uri = new stand.Uri("file:///bank/salt-bank.grove");
export const range = (line: number, end: number) => ({ start: { line, character: 0 }, end: { line, character: end } });
export const picture = (version: number) => ({
  version,
  svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><!--${version}--></svg>`,
  title: "Salt Bank, from above",
  places: [
    { origin: "trunk:A", range: range(4, 60), selection: range(4, 7) },
    { origin: "trunk:B", range: range(5, 60), selection: range(5, 7) },
  ],
  trunks: [{ name: "A", origin: "trunk:A", isFixed: false, summary: "A, 33 mm thick.", x: 4, y: 5 }],
  tasks: [],
});

/** A panel, a page that hears it, and a server whose answers a test gives. */
export function open() {
  const heard: ToPage[] = [];
  const asked: { method: string; params: Record<string, unknown>; answer: (value: unknown) => void; refuse: (error: Error) => void }[] = [];
  const fromPage = new stand.EventEmitter<unknown>();
  const ready = new stand.EventEmitter<void>();
  const panel = {
    title: "",
    iconPath: undefined as unknown,
    reveal: vi.fn(),
    webview: {
      html: "",
      cspSource: "https://editor.test",
      asWebviewUri: (file: stand.Uri) => file,
      onDidReceiveMessage: fromPage.event,
      postMessage: (message: ToPage) => {
        heard.push(message);
        return Promise.resolve(true);
      },
    },
  };
  const server = {
    onReady: ready.event,
    isRunning: true,
    uriOf: (named: stand.Uri) => named.toString(),
    ask: (request: { method: string }, params: Record<string, unknown>) =>
      new Promise((answer, refuse) => asked.push({ method: request.method, params, answer, refuse })),
  };
  const drawing = new DrawingPanel(uri as unknown as vscode.Uri, "plan", "thin", panel as unknown as vscode.WebviewPanel, server as unknown as Server, new stand.Uri("file:///ext") as unknown as vscode.Uri);
  return {
    heard,
    asked,
    panel,
    drawing,
    ready,
    fromPage,
    say: (message: FromPage) => fromPage.fire(message),
    of: <Type extends ToPage["type"]>(type: Type) => heard.filter((message): message is Extract<ToPage, { type: Type }> => message.type === type),
  };
}

export const settle = () => new Promise((resolve) => setTimeout(resolve, 0));

export async function openDrawn(version = 7) {
  const opened = open();
  stand.workspace.textDocuments = [{ uri, version }];
  opened.say({ type: "ready" });
  await settle();
  opened.asked[0]!.answer(picture(version));
  await settle();
  return opened;
}
