import { beforeEach, describe, expect, test, vi } from "vitest";
import * as vscode from "vscode";
import { drawingPanelOptions } from "../../src/drawingPanel";
import type { FromPage } from "../../src/messages";
import { open, openDrawn, picture, range, settle, uri } from "./openPanel";
import * as stand from "./vscode";

beforeEach(() => stand.reset());

describe("a picture", () => {
  test("is asked for when the page is there, not before", async () => {
    const { drawing, asked, say, of } = open();
    drawing.redraw();
    expect(asked).toHaveLength(0);
    say({ type: "ready" });
    expect(of("begin")[0]).toEqual({ type: "begin", uri: uri.toString(), view: "plan", question: "thin" });
    expect(asked[0]).toMatchObject({ method: "grovespec/draw", params: { textDocument: { uri: uri.toString() }, view: "plan" } });
  });

  test("is sent with its version, its trunks and the ids that lead to lines", async () => {
    const { of } = await openDrawn();
    expect(of("picture")[0]).toMatchObject({ version: 7, view: "plan", title: "Salt Bank, from above", origins: ["trunk:A", "trunk:B"] });
  });

  test("that was overtaken by a change is dropped, and the newest is asked for once", async () => {
    const { drawing, asked, of } = await openDrawn();
    drawing.redraw();
    drawing.redraw();
    drawing.redraw();
    expect(asked).toHaveLength(2);
    asked[1]!.answer(picture(7));
    await settle();
    expect(of("picture")).toHaveLength(1);
    expect(asked).toHaveLength(3);
    stand.workspace.textDocuments = [{ uri, version: 8 }];
    asked[2]!.answer(picture(8));
    await settle();
    expect(of("picture").map(({ version }) => version)).toEqual([7, 8]);
    expect(asked).toHaveLength(3);
  });

  test("of an older text than the editor's is not shown but asked for again", async () => {
    const { drawing, asked, of } = await openDrawn();
    stand.workspace.textDocuments = [{ uri, version: 9 }];
    drawing.redraw();
    asked[1]!.answer(picture(8));
    await vi.waitFor(() => expect(asked).toHaveLength(3));
    expect(of("picture")).toHaveLength(1);
  });

  test("of a closed text is called old", async () => {
    const { drawing, asked, of } = await openDrawn();
    stand.workspace.textDocuments = [];
    drawing.redraw();
    asked[1]!.answer(null);
    await settle();
    expect(of("note")[0]).toMatchObject({ isStale: true });
  });

  test("that fails is one message, and the next one comes", async () => {
    const { drawing, asked, of } = await openDrawn();
    drawing.redraw();
    asked[1]!.refuse(new Error("no"));
    await settle();
    expect(of("note")).toHaveLength(1);
    drawing.redraw();
    asked[2]!.answer(picture(7));
    await settle();
    expect(of("picture")).toHaveLength(2);
  });

  test("is drawn anew when the server starts again and when another plate is chosen", async () => {
    const { asked, ready, say } = await openDrawn();
    ready.fire();
    asked[1]!.answer(picture(7));
    await settle();
    say({ type: "view", view: "front" });
    expect(asked[2]).toMatchObject({ params: { view: "front" } });
  });
});

describe("the caret", () => {
  const editorAt = (line: number) => ({ document: stand.workspace.textDocuments[0], selection: { active: new stand.Position(line, 3) } });

  test("lights up what stands on its line and moves nothing", async () => {
    const { of } = await openDrawn();
    stand.selectionChanges.fire({ textEditor: editorAt(5) });
    expect(of("lit").at(-1)).toEqual({ type: "lit", origins: ["trunk:B"] });
    expect(stand.shown).toHaveLength(0);
  });

  test("in another text lights nothing", async () => {
    const { of } = await openDrawn();
    stand.selectionChanges.fire({ textEditor: { document: { uri: new stand.Uri("file:///other.grove") }, selection: { active: new stand.Position(5, 3) } } });
    expect(of("lit")).toHaveLength(0);
  });

  test("that moved because of a click in the drawing brings no second reveal", async () => {
    const { say, of } = await openDrawn();
    say({ type: "reveal", origin: "trunk:B", isEntered: false });
    await settle();
    stand.selectionChanges.fire({ textEditor: editorAt(5) });
    await settle();
    expect(stand.shown).toHaveLength(1);
    expect(of("lit")).toHaveLength(1);
  });
});

describe("a click", () => {
  test("selects the line and leaves the keys with the drawing; Enter takes them to the text", async () => {
    const { say } = await openDrawn();
    say({ type: "reveal", origin: "trunk:B", isEntered: false });
    await settle();
    say({ type: "reveal", origin: "trunk:A", isEntered: true });
    await settle();
    expect(stand.shown[0]!.options).toMatchObject({ preserveFocus: true, selection: { start: { line: 5, character: 0 }, end: { line: 5, character: 60 } } });
    expect(stand.shown[1]!.options).toMatchObject({ preserveFocus: false, selection: { start: { line: 4 } } });
  });

  test("goes to the column in which the text is open behind another", async () => {
    const { say } = await openDrawn();
    stand.window.tabGroups.all = [{ viewColumn: 3, tabs: [{ input: new stand.TabInputText(uri) }] }];
    say({ type: "reveal", origin: "trunk:A", isEntered: false });
    await settle();
    expect(stand.shown[0]!.options).toMatchObject({ viewColumn: 3 });
  });
});

describe("a trunk let go", () => {
  const drop: FromPage = { type: "drop", trunk: "A", view: "plan", version: 7, x: 12.5, y: 40 };
  const edits = [{ range: range(4, 10), newText: "at 4, 5 mm" }];

  test("changes the text in one step", async () => {
    const { say, asked, of } = await openDrawn();
    say(drop);
    await settle();
    expect(asked[1]).toMatchObject({ method: "grovespec/drag", params: { version: 7, trunk: "A", view: "plan", x: 12.5, y: 40 } });
    asked[1]!.answer({ version: 7, edits, says: "A stands 4 mm to the right." });
    await settle();
    expect(stand.applied).toHaveLength(1);
    expect(stand.applied[0]!.changes[0]).toMatchObject({ uri: uri.toString(), edits: [{ newText: "at 4, 5 mm" }] });
    expect(of("settled")).toEqual([{ type: "settled", isMade: true, says: "A stands 4 mm to the right." }]);
  });

  test("on a picture of an older text changes nothing", async () => {
    const { say, asked, of } = await openDrawn();
    stand.workspace.textDocuments = [{ uri, version: 8 }];
    say(drop);
    await settle();
    expect(asked).toHaveLength(1);
    expect(of("settled")[0]).toMatchObject({ isMade: false });
  });

  test("while the text changes changes nothing", async () => {
    const { say, asked, of } = await openDrawn();
    say(drop);
    await settle();
    stand.workspace.textDocuments = [{ uri, version: 8 }];
    asked[1]!.answer({ version: 7, edits });
    await settle();
    expect(stand.applied).toHaveLength(0);
    expect(of("settled")[0]).toMatchObject({ isMade: false });
  });

  test("where it may not stand is told why", async () => {
    const { say, asked, of } = await openDrawn();
    say(drop);
    await settle();
    asked[1]!.answer({ version: 7, edits: [], refusal: "A is placed by tape readings." });
    await settle();
    expect(of("settled")).toEqual([{ type: "settled", isMade: false, says: "A is placed by tape readings." }]);
  });

  test("in a folder that is not trusted changes nothing and asks for nothing", async () => {
    const { say, asked, of } = await openDrawn();
    stand.workspace.isTrusted = false;
    say(drop);
    say({ type: "step", trunk: "A", view: "plan", right: 1, back: 0 });
    await settle();
    expect(asked).toHaveLength(1);
    expect(stand.applied).toHaveLength(0);
    expect(of("settled").map(({ isMade }) => isMade)).toEqual([false, false]);
  });
});

describe("steps by key", () => {
  test("that come while one is under way are added up, and each works on the newest text", async () => {
    const { say, asked } = await openDrawn();
    const step: FromPage = { type: "step", trunk: "A", view: "plan", right: 1, back: 0 };
    say(step);
    await settle();
    say(step);
    say(step);
    say(step);
    await settle();
    expect(asked).toHaveLength(2);
    asked[1]!.answer({ version: 7, edits: [{ range: range(4, 10), newText: "x" }] });
    await settle();
    expect(stand.applied).toHaveLength(1);
    expect(asked[2]).toMatchObject({ method: "grovespec/step", params: { right: 3, back: 0 } });
  });
});

describe("a task of the timeline", () => {
  test("let go elsewhere changes the text in one step", async () => {
    const { say, asked, of } = await openDrawn();
    say({ type: "dropTask", task: "W1", version: 7, x: 120 });
    await settle();
    expect(asked[1]).toMatchObject({ method: "grovespec/dragTask", params: { version: 7, task: "W1", x: 120 } });
    asked[1]!.answer({ version: 7, edits: [{ range: range(9, 10), newText: "on 2027-05-12" }], says: "W1 on 2027-05-12" });
    await settle();
    expect(stand.applied).toHaveLength(1);
    expect(of("settled")).toEqual([{ type: "settled", isMade: true, says: "W1 on 2027-05-12" }]);
  });

  test("on a picture of an older text, or in a folder that is not trusted, changes nothing", async () => {
    const { say, asked, of } = await openDrawn();
    say({ type: "dropTask", task: "W1", version: 6, x: 120 });
    stand.workspace.isTrusted = false;
    say({ type: "dropTask", task: "W1", version: 7, x: 120 });
    say({ type: "stepTask", task: "W1", days: 1 });
    await settle();
    expect(asked).toHaveLength(1);
    expect(of("settled").map(({ isMade }) => isMade)).toEqual([false, false, false]);
  });

  test("moved by keys is moved by as many days as were pressed", async () => {
    const { say, asked } = await openDrawn();
    say({ type: "stepTask", task: "W1", days: 1 });
    await settle();
    say({ type: "stepTask", task: "W1", days: 7 });
    say({ type: "stepTask", task: "W1", days: -1 });
    await settle();
    expect(asked).toHaveLength(2);
    asked[1]!.answer({ version: 7, edits: [{ range: range(9, 10), newText: "x" }] });
    await settle();
    expect(asked[2]).toMatchObject({ method: "grovespec/stepTask", params: { task: "W1", days: 6 } });
  });
});

describe("guides", () => {
  test("come only for the text they were asked for", async () => {
    const { say, asked, of } = await openDrawn();
    say({ type: "hold", trunk: "A", view: "plan", version: 7 });
    asked[1]!.answer({ version: 7, svg: "<g/>" });
    await settle();
    expect(of("guides")).toEqual([{ type: "guides", trunk: "A", version: 7, svg: "<g/>" }]);
    say({ type: "hold", trunk: "A", view: "plan", version: 7 });
    stand.workspace.textDocuments = [{ uri, version: 8 }];
    asked[2]!.answer({ version: 7, svg: "<g/>" });
    await settle();
    expect(of("guides")).toHaveLength(1);
  });

  test("are not asked for in the front view", async () => {
    const { say, asked } = await openDrawn();
    say({ type: "hold", trunk: "A", view: "front", version: 7 });
    expect(asked).toHaveLength(1);
  });
});

describe("the panel", () => {
  test("hears nothing but its own messages", async () => {
    const { asked, fromPage } = await openDrawn();
    for (const message of [null, 5, "drop", { type: "drop", trunk: "A" }, { type: "view", view: "roots" }, { type: "step", trunk: "A", view: "plan", right: Number.NaN, back: 0 }, { type: "stepTask", task: "W1", days: 0.5 }, { type: "dropTask", task: 5, version: 7, x: 1 }, { type: "run", command: "ls" }]) {
      fromPage.fire(message);
    }

    await settle();
    expect(asked).toHaveLength(1);
    expect(stand.shown).toHaveLength(0);
    expect(stand.executed).toHaveLength(0);
  });

  test("undoes in the text, and the keys come back", async () => {
    const { say, panel } = await openDrawn();
    say({ type: "undo" });
    await settle();
    expect(stand.executed).toEqual(["undo"]);
    expect(panel.reveal).toHaveBeenCalledWith(undefined, false);
  });

  test("lets go of all when it is closed", async () => {
    const { drawing, asked, of } = await openDrawn();
    const before = stand.selectionChanges.count;
    drawing.redraw();
    drawing.dispose();
    asked[1]!.answer(picture(7));
    await settle();
    expect(of("picture")).toHaveLength(1);
    expect(stand.selectionChanges.count).toBe(before - 1);
  });

  test("may load only what the extension brought", () => {
    const { localResourceRoots, enableCommandUris } = drawingPanelOptions(new stand.Uri("file:///ext") as unknown as vscode.Uri);
    expect(localResourceRoots?.map(String)).toEqual(["file:///ext/dist"]);
    expect(enableCommandUris).toBe(false);
  });
});
