import { beforeEach, describe, expect, test } from "vitest";
import { openDrawn, range, settle, uri } from "./openPanel";
import * as stand from "./vscode";

beforeEach(() => stand.reset());

const sheet = (version: number) => ({
  version,
  title: "Salt Bank",
  says: ["Two fronts are as good."],
  ways: [
    { title: "From 201 deg", says: ["Nothing is lost."], picture: "<svg/>", edits: [{ range: range(3, 30), newText: "viewed from 201 deg" }], deed: "Write this front" },
    { title: "From 180 deg", says: [], edits: [], deed: "This is the front it has." },
  ],
  notes: [],
  fields: [],
  places: [{ origin: "trunk:B", range: range(5, 60), selection: range(5, 7) }],
});

describe("what is to be decided", () => {
  async function openSheet() {
    const opened = await openDrawn();
    opened.say({ type: "ask", question: "fronts" });
    await settle();
    opened.asked[1]!.answer(sheet(7));
    await settle();
    return opened;
  }

  test("is asked with what was written into its fields, and is asked the same way again when the text has changed", async () => {
    const { say, asked, drawing } = await openDrawn();
    say({ type: "ask", question: "thin", answers: { keep: "3-5" } });
    expect(asked[1]).toMatchObject({ method: "grovespec/decide", params: { question: "thin", answers: { keep: "3-5" } } });
    asked[1]!.answer(sheet(7));
    await settle();
    drawing.redraw();
    expect(asked[2]).toMatchObject({ method: "grovespec/decide", params: { question: "thin", answers: { keep: "3-5" } } });
  });

  test("is asked with every field that was written into, though a page tells only those that are new", async () => {
    const { say, asked } = await openDrawn();
    say({ type: "ask", question: "ground", answers: { diameter: "40 mm" } });
    asked[1]!.answer(sheet(7));
    await settle();
    say({ type: "ask", question: "ground", answers: { height: "310 mm" } });
    expect(asked[2]).toMatchObject({ params: { question: "ground", answers: { diameter: "40 mm", height: "310 mm" } } });
    asked[2]!.answer(sheet(7));
    await settle();
    say({ type: "ask", question: "thin" });
    expect(asked[3]!.params).toMatchObject({ question: "thin", answers: {} });
  });

  test("is sent without the edits, which stay with the editor", async () => {
    const { of } = await openSheet();
    expect(of("sheet")).toHaveLength(1);
    expect(of("sheet")[0]).toMatchObject({ question: "fronts", version: 7, says: ["Two fronts are as good."], origins: ["trunk:B"] });
    expect(of("sheet")[0]!.ways.map(({ canBeWritten }) => canBeWritten)).toEqual([true, false]);
    expect(JSON.stringify(of("sheet"))).not.toContain("viewed from 201 deg");
  });

  test("goes into the text whole, in one step", async () => {
    const { say, of } = await openSheet();
    say({ type: "write", question: "fronts", version: 7, way: 0 });
    await settle();
    expect(stand.applied).toHaveLength(1);
    expect(stand.applied[0]!.changes).toMatchObject([{ uri: uri.toString(), edits: [{ newText: "viewed from 201 deg" }] }]);
    expect(of("settled")).toEqual([{ type: "settled", isMade: true, says: "Written: From 201 deg" }]);
  });

  test("of an older text, of another question or beyond the last is not written", async () => {
    const { say, of } = await openSheet();
    say({ type: "write", question: "nudge", version: 7, way: 0 });
    say({ type: "write", question: "fronts", version: 6, way: 0 });
    say({ type: "write", question: "fronts", version: 7, way: 2 });
    say({ type: "write", question: "fronts", version: 7, way: -1 });
    await settle();
    stand.workspace.textDocuments = [{ uri, version: 8 }];
    say({ type: "write", question: "fronts", version: 7, way: 0 });
    await settle();
    expect(stand.applied).toHaveLength(0);
    expect(of("settled").map(({ isMade }) => isMade)).toEqual([false, false, false, false, false]);
  });

  test("is only looked at in a folder that is not trusted", async () => {
    const { say, of } = await openSheet();
    stand.workspace.isTrusted = false;
    say({ type: "write", question: "fronts", version: 7, way: 0 });
    await settle();
    expect(stand.applied).toHaveLength(0);
    expect(of("settled")[0]).toMatchObject({ isMade: false });
  });

  test("of a question that was overtaken by another is not shown", async () => {
    const { say, asked, of } = await openDrawn();
    say({ type: "ask", question: "thin" });
    say({ type: "ask", question: "nudge" });
    asked[1]!.answer(sheet(7));
    await settle();
    expect(of("sheet")).toHaveLength(0);
    expect(asked[2]).toMatchObject({ params: { question: "nudge" } });
    asked[2]!.answer(sheet(7));
    await settle();
    expect(of("sheet").map(({ question }) => question)).toEqual(["nudge"]);
  });
});
