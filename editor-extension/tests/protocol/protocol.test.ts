import { readFileSync } from "node:fs";
import { afterEach, beforeEach, expect, test } from "vitest";
import {
  CancellationTokenSource,
  CodeActionRequest,
  CodeLensRequest,
  CompletionRequest,
  DefinitionRequest,
  Diagnostic,
  DiagnosticSeverity,
  DidChangeTextDocumentNotification,
  DidCloseTextDocumentNotification,
  DocumentDiagnosticRequest,
  DocumentFormattingRequest,
  DocumentHighlightRequest,
  DocumentLinkRequest,
  DocumentSymbolRequest,
  FoldingRangeRequest,
  HoverRequest,
  InlayHintRequest,
  PrepareRenameRequest,
  ReferencesRequest,
  RenameRequest,
  SelectionRangeRequest,
  SemanticTokensDeltaRequest,
  SemanticTokensRangeRequest,
  SemanticTokensRequest,
  SignatureHelpRequest,
  WorkDoneProgress,
  WorkspaceDiagnosticRequest,
  WorkspaceSymbolRequest,
  type ClientCapabilities,
  type CodeAction,
  type DocumentSymbol,
  type Range,
  type SemanticTokens,
  type SemanticTokensDelta,
  type SemanticTokensLegend,
  type TextDocumentEdit,
} from "vscode-languageserver-protocol/node";
import { Client, edited } from "./client";

// A name outside the first plane takes two units of UTF-16: 🌲b stands at 6 and ends at 9.
const row = `# Row House 🌲
planting  "Row House"
habit     group
container oval 400 x 300 x 40 mm
viewed    from 180 deg, at 1100 mm, eye 160 mm, near
use       "roles.grove"

trunk A   at -60, 0 mm   diameter 20 mm   height 300 mm   role main
trunk 🌲b   at 0, 2 mm    girth 44 mm   height 220 mm   role side
trunk C   at 70, 0 mm    diameter 16 mm   height 180 mm   role side
`;
const roles = "role main { vigour push }\nrole side { vigour steady }\n";

// By hand: the line from A (radius 10 mm) to C (radius 8 mm) may be shifted at B's place by t (10 · 70 + 8 · 60) / 130 = 9.077 t, and B's own
// radius is 44 / 2π = 7.003 mm. B is 2 mm off it, so t = 2 / 16.08 = 12 %. A rod is reported up to t = 50 %, which is 8.04 mm off: at
// whole millimetres B is free from 9 mm on, 7 mm to the back.
const inLine = "A, 🌲b and C stand in line: 🌲b stands only 2 mm off the straight line from A to C, so that one rod would pass within 12 % of each trunk's radius of its centre. Move 🌲b by 7 mm or more square to the line, to the back, or let the line stand with a reason. Chance alone would give about 0.1 such lines with 3 trunks in this container.";
const wide = "C is wide but short: 16 mm thick, 2nd of 3, but 180 mm high, 3rd, while 🌲b is thinner and yet taller. Let it run up or hold 🌲b back; if it is meant so, give it a role with form stout.";

const abilities: ClientCapabilities = {
  textDocument: { documentSymbol: { hierarchicalDocumentSymbolSupport: true }, publishDiagnostics: { versionSupport: true, relatedInformation: true, codeDescriptionSupport: true }, codeAction: { codeActionLiteralSupport: { codeActionKind: { valueSet: ["quickfix"] } } } },
  workspace: { workspaceEdit: { documentChanges: true } },
  window: { workDoneProgress: true },
};

let client: Client;
let uri: string;
let rolesUri: string;
beforeEach(() => {
  client = new Client();
  rolesUri = client.store("roles.grove", roles);
  uri = client.store("row.grove", row);
});
afterEach(() => client.dispose());

const of = () => ({ textDocument: { uri } });
const range = (line: number, from: number, to: number): Range => ({ start: { line, character: from }, end: { line, character: to } });
/** A place in the text of {@link row}. */
const at = (piece: string, into = 0) => {
  const lines = row.split("\n");
  const line = lines.findIndex((one) => one.includes(piece));
  return { line, character: lines[line]!.indexOf(piece) + into };
};
const begun = async (): Promise<void> => {
  await client.begin(abilities);
  await client.open(uri, row);
};
const change = (version: number, where: Range, text: string) => client.connection.sendNotification(DidChangeTextDocumentNotification.type, { textDocument: { uri, version }, contentChanges: [{ range: where, text }] });

test("The server says who it is, and what it can do", async () => {
  const { capabilities, serverInfo } = await client.begin(abilities);
  expect(serverInfo).toEqual({ name: "GroveSpec", version: expect.stringMatching(/^\d+\.\d+\.\d+/) });
  expect(capabilities).toMatchObject({
    positionEncoding: "utf-16",
    textDocumentSync: { openClose: true, change: 2 },
    hoverProvider: true,
    renameProvider: { prepareProvider: true },
    documentFormattingProvider: true,
    semanticTokensProvider: { range: true, full: { delta: true } },
    diagnosticProvider: { interFileDependencies: true, workspaceDiagnostics: true },
  });
  expect(await client.leave()).toBe(0);
});

test("Findings are sent with their version, their place, the other trunks and the page of their check", async () => {
  await begun();
  const { diagnostics, version } = await client.findings(uri, 1);
  expect(version).toBe(1);
  expect(diagnostics.map(({ code, severity, message, range }) => ({ code, severity, message, range }))).toEqual([
    { code: "three-in-line", severity: DiagnosticSeverity.Warning, message: inLine, range: range(8, 12, 22) },
    { code: "wide-but-short", severity: DiagnosticSeverity.Warning, message: wide, range: range(9, 42, 55) },
  ]);
  expect(diagnostics[0]!.relatedInformation).toEqual([
    { location: { uri, range: range(7, 10, 22) }, message: "A" },
    { location: { uri, range: range(9, 10, 21) }, message: "C" },
  ]);
  expect(readFileSync(new URL(diagnostics[0]!.codeDescription!.href), "utf8")).toMatch(/^# /);
});

test("Findings that are asked for are those that were sent, and are said to be the same until something changes", async () => {
  await begun();
  const sent = await client.findings(uri, 1);
  const first = await client.connection.sendRequest(DocumentDiagnosticRequest.type, of());
  expect(first).toEqual({ kind: "full", resultId: expect.any(String), items: sent.diagnostics });
  const same = await client.connection.sendRequest(DocumentDiagnosticRequest.type, { ...of(), previousResultId: first.resultId! });
  expect(same).toEqual({ kind: "unchanged", resultId: first.resultId });
  await change(2, range(8, 15, 19), "0, 9");
  const next = await client.connection.sendRequest(DocumentDiagnosticRequest.type, { ...of(), previousResultId: first.resultId! });
  expect(next).toMatchObject({ kind: "full", items: [{ code: "wide-but-short" }] });
});

test("The move that is offered clears its finding once it is made, and brings no other", async () => {
  await begun();
  const { diagnostics } = await client.findings(uri, 1);
  const actions = (await client.connection.sendRequest(CodeActionRequest.type, { ...of(), range: diagnostics[0]!.range, context: { diagnostics: [diagnostics[0]!] } })) as CodeAction[];
  expect(actions.map(({ title, kind }) => ({ title, kind }))).toEqual([
    { title: "move 🌲b 7 mm toward 0 deg", kind: "quickfix" },
    { title: "let three-in-line of A, C and 🌲b stand, with a reason", kind: "quickfix" },
  ]);
  const [made] = actions[0]!.edit!.documentChanges as TextDocumentEdit[];
  expect(made).toEqual({ textDocument: { uri, version: 1 }, edits: [{ range: range(8, 12, 22), newText: "at 0, 9 mm" }] });
  await change(2, range(8, 12, 22), "at 0, 9 mm");
  expect((await client.findings(uri, 2)).diagnostics.map(({ code }) => code)).toEqual(["wide-but-short"]);

  // And what lets it stand is taken in as it is written.
  const [accepted] = actions[1]!.edit!.documentChanges as TextDocumentEdit[];
  await client.connection.sendNotification(DidChangeTextDocumentNotification.type, { textDocument: { uri, version: 3 }, contentChanges: [{ text: edited(row, accepted!.edits as never) }] });
  const left = (await client.findings(uri, 3)).diagnostics;
  expect(left.filter(({ severity }) => severity === DiagnosticSeverity.Warning).map(({ code }) => code)).toEqual(["wide-but-short"]);
});

test("Hover tells what follows from a line", async () => {
  await begun();
  expect(await client.connection.sendRequest(HoverRequest.type, { ...of(), position: at("🌲b   at", 1) })).toEqual({
    contents: {
      kind: "markdown",
      value: [
        "**Trunk 🌲b**",
        "Diameter 14 mm, from a girth of 44 mm, height 220 mm.",
        "Stands at 0, 2 mm.",
        "In the view: number 2 of 3 from the left, number 2 from the front.",
        "To its neighbours, centre to centre: A 60 mm, C 70 mm.",
        "By size: number 3 of 3 by diameter, number 2 of 3 by height.",
        "Role side.",
      ].join("\n\n"),
    },
    range: range(8, 6, 9),
  });
  expect(await client.connection.sendRequest(HoverRequest.type, { ...of(), position: { line: 6, character: 0 } })).toBeNull();
});

test("What may stand behind the word role are the roles of the file that is used", async () => {
  await begun();
  const list = await client.connection.sendRequest(CompletionRequest.type, { ...of(), position: at("role side", 9) });
  const items = Array.isArray(list) ? list : list!.items;
  expect(items.map(({ label, detail, textEdit }) => ({ label, detail, textEdit }))).toEqual(
    ["main", "side"].map((label) => ({ label, detail: "a role", textEdit: { range: range(8, 61, 65), newText: label } })),
  );
});

test("A role is renamed in the file that names it and in the one that plays it, and a bad name is refused with a sentence", async () => {
  await begun();
  const position = at("role main", 6);
  expect(await client.connection.sendRequest(PrepareRenameRequest.type, { ...of(), position })).toMatchObject({ range: range(7, 63, 67), placeholder: "main" });
  const edit = await client.connection.sendRequest(RenameRequest.type, { ...of(), position, newName: "elder" });
  const changes = edit!.documentChanges as TextDocumentEdit[];
  expect(Object.fromEntries(changes.map(({ textDocument, edits }) => [textDocument.uri, edits]))).toEqual({
    [uri]: [{ range: range(7, 63, 67), newText: "elder" }],
    [rolesUri]: [{ range: range(0, 5, 9), newText: "elder" }],
  });
  await expect(client.connection.sendRequest(RenameRequest.type, { ...of(), position, newName: "two words" })).rejects.toMatchObject({ code: -32803, message: expect.stringMatching(/^"two words" cannot be the name of a role.*\.$/) });
  await expect(client.connection.sendRequest(PrepareRenameRequest.type, { ...of(), position: at("trunk A") })).rejects.toMatchObject({ message: "There is no name here: put the caret on the name of a trunk, a role, a task or a species." });
  expect(await client.connection.sendRequest(DefinitionRequest.type, { ...of(), position })).toEqual([{ uri: rolesUri, range: range(0, 5, 9) }]);
  const references = (await client.connection.sendRequest(ReferencesRequest.type, { ...of(), position, context: { includeDeclaration: true } }))!;
  expect(references.sort((one, other) => one.uri.localeCompare(other.uri))).toEqual([{ uri: rolesUri, range: range(0, 5, 9) }, { uri, range: range(7, 63, 67) }]);
});

test("Formatting lines the columns up, and once lined up has nothing to do", async () => {
  await begun();
  const options = { tabSize: 2, insertSpaces: true };
  const edits = (await client.connection.sendRequest(DocumentFormattingRequest.type, { ...of(), options }))!;
  const tidy = edited(row, edits);
  expect(tidy).toBe(`# Row House 🌲
planting  "Row House"
habit     group
container oval 400 x 300 x 40 mm
viewed    from 180 deg, at 1100 mm, eye 160 mm, near
use       "roles.grove"

trunk A    at -60, 0 mm   diameter 20 mm   height 300 mm   role main
trunk 🌲b   at 0, 2 mm     girth 44 mm      height 220 mm   role side
trunk C    at 70, 0 mm    diameter 16 mm   height 180 mm   role side
`);
  await client.connection.sendNotification(DidChangeTextDocumentNotification.type, { textDocument: { uri, version: 2 }, contentChanges: [{ text: tidy }] });
  expect((await client.connection.sendRequest(DocumentFormattingRequest.type, { ...of(), options })) ?? []).toEqual([]);
});

const decoded = (data: readonly number[], legend: SemanticTokensLegend, text: string): string[] => {
  const lines = text.split("\n");
  let line = 0;
  let start = 0;
  const read: string[] = [];
  for (let index = 0; index < data.length; index += 5) {
    const [down, right, length, type, modifiers] = data.slice(index, index + 5) as [number, number, number, number, number];
    start = down > 0 ? right : start + right;
    line += down;
    read.push(`${line} ${lines[line]!.slice(start, start + length)} ${legend.tokenTypes[type]}${modifiers === 1 ? "!" : ""}`);
  }

  return read;
};

test("Words are told apart; after an edit the change alone gives what the whole would", async () => {
  const { capabilities } = await client.begin(abilities);
  const { legend } = capabilities.semanticTokensProvider!;
  await client.open(uri, row);
  const whole = (await client.connection.sendRequest(SemanticTokensRequest.type, of())) as SemanticTokens;
  expect(decoded(whole.data, legend, row).filter((token) => token.startsWith("8 "))).toEqual(
    ["trunk keyword", "🌲b variable!", "at keyword", "0 number", "2 number", "mm operator", "girth keyword", "44 number", "mm operator", "height keyword", "220 number", "mm operator", "role keyword", "side class"].map((token) => `8 ${token}`),
  );
  const part = (await client.connection.sendRequest(SemanticTokensRangeRequest.type, { ...of(), range: range(8, 0, 65) })) as SemanticTokens;
  expect(decoded(part.data, legend, row)).toEqual(decoded(whole.data, legend, row).filter((token) => token.startsWith("8 ")));

  await change(2, range(9, 6, 7), "Cc");
  const delta = (await client.connection.sendRequest(SemanticTokensDeltaRequest.type, { ...of(), previousResultId: whole.resultId! })) as SemanticTokensDelta;
  // One token has become longer, and the one behind it starts farther to the right: no more than that is sent.
  expect(delta.edits).toEqual([{ start: expect.any(Number), deleteCount: 5, data: [2, 1, 1, 0, 5] }]);
  const data = [...whole.data];
  delta.edits.toSorted((one, other) => other.start - one.start).forEach(({ start, deleteCount, data: fresh }) => data.splice(start, deleteCount, ...(fresh ?? [])));
  const anew = (await client.connection.sendRequest(SemanticTokensRequest.type, of())) as SemanticTokens;
  expect(data).toEqual(anew.data);
});

test("Symbols, highlights, folds, selections, notes and links are those of the text", async () => {
  await begun();
  const ask = client.connection;
  expect(((await ask.sendRequest(DocumentSymbolRequest.type, of())) as DocumentSymbol[]).map(({ name, detail, selectionRange }) => [name, detail, selectionRange])).toEqual([
    ["Row House", "planting", range(1, 10, 21)],
    ["roles.grove", "used file", range(5, 10, 23)],
    ["A", "diameter 20 mm, height 300 mm, main", range(7, 6, 7)],
    ["🌲b", "girth 44 mm, height 220 mm, side", range(8, 6, 9)],
    ["C", "diameter 16 mm, height 180 mm, side", range(9, 6, 7)],
  ]);
  expect(await ask.sendRequest(WorkspaceSymbolRequest.type, { query: "side" })).toMatchObject([{ name: "side", location: { uri: rolesUri, range: range(1, 5, 9) } }]);
  expect(await ask.sendRequest(DocumentHighlightRequest.type, { ...of(), position: at("🌲b   at", 1) })).toMatchObject([{ range: range(8, 6, 9) }]);
  expect(await ask.sendRequest(FoldingRangeRequest.type, of())).toMatchObject([{ startLine: 7, endLine: 9 }]);
  const [selection] = (await ask.sendRequest(SelectionRangeRequest.type, { ...of(), positions: [at("at 0, 2", 1)] }))!;
  expect([selection!.range, selection!.parent!.range, selection!.parent!.parent!.range]).toEqual([range(8, 12, 14), range(8, 12, 22), range(8, 0, 65)]);
  expect(((await ask.sendRequest(InlayHintRequest.type, { ...of(), range: range(8, 0, 65) })) ?? []).map(({ position, label }) => [position.character, label])).toEqual([
    [37, "⌀ 14 mm"],
    [65, "60 mm to A"],
  ]);
  expect(await ask.sendRequest(CodeLensRequest.type, of())).toMatchObject([{ range: range(1, 0, 21), command: { title: "3 trunks stand · 2 warnings", command: "" } }]);
  // A note about a name says where the name stands, and leaves it to the client what a click does.
  const named = client.store("named.grove", `${row}role main { vigour push }\n`);
  await client.open(named, `${row}role main { vigour push }\n`);
  expect(await ask.sendRequest(CodeLensRequest.type, { textDocument: { uri: named } })).toMatchObject([{}, { command: { title: "1 trunk: A", command: "" }, data: { line: 10, character: 5 } }]);
  expect(await ask.sendRequest(DocumentLinkRequest.type, of())).toMatchObject([{ range: range(5, 10, 23), target: rolesUri }]);
  const help = await ask.sendRequest(SignatureHelpRequest.type, { ...of(), position: at("at 0, 2", 1) });
  expect(help!.signatures[help!.activeSignature ?? 0]!.label).toMatch(/^trunk NAME at 0, 0 mm diameter/);
});

test("All plantings of a folder are looked at, with word of how far it is", async () => {
  client.store("other.grove", "nonsense here\n");
  await begun();
  const said: string[] = [];
  client.connection.onProgress(WorkDoneProgress.type, "look", (value) => void said.push(value.kind === "begin" ? `begin ${value.cancellable}` : `${value.kind} ${value.message ?? ""}`.trim()));
  const report = await client.connection.sendRequest(WorkspaceDiagnosticRequest.type, { previousResultIds: [], workDoneToken: "look" });
  const codes = Object.fromEntries(report.items.map((item) => [item.uri, [item.version, item.kind === "full" ? item.items.filter(Diagnostic.is).length : -1]]));
  expect(codes).toEqual({ [uri]: [1, 2], [rolesUri]: [null, 0], [client.uriOf("other.grove")]: [null, 1] });
  expect(said).toEqual(["begin true", "report row.grove", "report other.grove", "report roles.grove", "end"]);
});

test("A look at all plantings that is called off ends there, and the next question is answered", async () => {
  // Enough that the calling off comes long before the end, even where this process waits for seconds while the server goes on: it is sent with the first word of progress.
  const large = `${row}${Array.from({ length: 600 }, (_, index) => `trunk T${index} at ${(index % 30) * 12 - 180}, ${Math.floor(index / 30) * 13 - 130} mm diameter 5 mm height ${100 + index} mm\n`).join("")}`;
  for (let number = 0; number < 1000; number++) {
    client.store(`more-${number}.grove`, large);
  }

  await begun();
  const source = new CancellationTokenSource();
  let reports = 0;
  client.connection.onProgress(WorkDoneProgress.type, "look", (value) => {
    if (value.kind === "report" && ++reports === 1) {
      source.cancel();
    }
  });
  await expect(client.connection.sendRequest(WorkspaceDiagnosticRequest.type, { previousResultIds: [], workDoneToken: "look" }, source.token)).rejects.toMatchObject({ code: -32800 });
  expect(reports).toBeLessThan(1000);
  expect(await client.connection.sendRequest(DocumentHighlightRequest.type, { ...of(), position: at("🌲b   at", 1) })).toMatchObject([{ range: range(8, 6, 9) }]);
});

test("What comes too early, too late, misshapen or unknown is refused, each with its own number, and nothing ends but that", async () => {
  const hover = { ...of(), position: { line: 8, character: 7 } };
  await expect(client.connection.sendRequest(HoverRequest.type, hover)).rejects.toMatchObject({ code: -32002 });
  await begun();
  await expect(client.connection.sendRequest("textDocument/hover", { textDocument: 7 })).rejects.toMatchObject({ code: -32602 });
  await expect(client.connection.sendRequest("textDocument/unheard", {})).rejects.toMatchObject({ code: -32601 });
  expect(await client.connection.sendRequest(HoverRequest.type, { ...hover, position: { line: 4_000_000, character: 9 } })).toBeNull();
  expect(await client.connection.sendRequest(HoverRequest.type, hover)).toMatchObject({ range: range(8, 6, 9) });
  await client.connection.sendNotification(DidCloseTextDocumentNotification.type, of());
  await client.connection.sendRequest("shutdown");
  await expect(client.connection.sendRequest(HoverRequest.type, hover)).rejects.toMatchObject({ code: -32600 });
  await client.connection.sendNotification("exit");
  expect(await client.ended).toBe(0);
});

test("A client that leaves without a goodbye is told so by the program's end", async () => {
  await begun();
  await client.connection.sendNotification("exit");
  expect(await client.ended).toBe(1);
});
