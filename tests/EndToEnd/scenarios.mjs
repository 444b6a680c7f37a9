// What a grower does in the editor, each in a fresh window. Names are sentences; each waits on what is to be seen and never sleeps.
import { deepEqual, equal, match, notEqual, ok } from "node:assert/strict";
import { basename, dirname, join } from "node:path";

const samples = join(import.meta.dirname, "../../samples");

// Three in line on purpose: A, B and C. Nothing else is wrong with it.
const lineOfThree = `# Three on one line, and one off it
planting  "Two Paths"
habit     group
species   acer-buergerianum
container oval 420 x 280 x 45 mm
site      latitude 51.2 N, zone 8b, last frost 3 May, first frost 1 November
viewed    from 180 deg, at 1100 mm, eye 160 mm, near

trunk A   at -62, -20 mm   diameter 36 mm   height 400 mm   role main
trunk B   at -9, 1 mm      diameter 21 mm   height 290 mm   role side
trunk C   at 94, 43 mm     diameter 13 mm   height 190 mm   role side
trunk D   at -112, 64 mm   diameter 9 mm    height 150 mm   role side
trunk E   at 112, -42 mm   diameter 16 mm   height 240 mm   role side

role main { vigour steady     rank 1   story "leads the eye" }
role side { vigour restrain   story "follows, and leaves the way free" }
`;

const light = { "workbench.colorTheme": "Default Light Modern" };
const dark = { "workbench.colorTheme": "Default Dark Modern" };

export const scenarios = [];
const scenario = (name, setting, run) => scenarios.push({ name, setting, run });

scenario("Three trunks in line are underlined where they stand, listed among the problems, and explained under the pointer", { files: { "two-paths.grove": lineOfThree } }, async (window, shot) => {
  await window.openFile("two-paths.grove");
  await window.page.locator(".monaco-editor .squiggly-warning").first().waitFor();
  await window.served();
  await window.page.locator("#status\\.editor\\.mode", { hasText: /^\s*GroveSpec\s*$/ }).waitFor();
  await window.until("the keyword has a colour of its own", async () => {
    const colour = await window.line("trunk A").locator("span span", { hasText: /^trunk$/ }).getAttribute("class");
    return /mtk(?!1\b)\d+/.test(colour) || colour;
  });

  await window.press("Control+Shift+M");
  const problem = window.page.locator(".markers-panel .monaco-list-row", { hasText: "stand in line" });
  await problem.filter({ hasText: "three-in-line" }).first().waitFor();

  // The mark lies under the place of the trunk in the middle, and nowhere else.
  const line = await window.placeOf(window.line("trunk B"), "the line of B");
  const marks = window.page.locator(".monaco-editor .squiggly-warning");
  await window.equals("one place is underlined", () => marks.count(), 1);
  const mark = await window.placeOf(marks, "the mark");
  ok(mark.y >= line.y - 2 && mark.y <= line.y + line.height, "the mark lies on the line of B");
  await window.page.mouse.move(mark.x + mark.width / 2, mark.y + mark.height / 2 - 3);
  await window.page.mouse.move(mark.x + mark.width / 2 + 1, mark.y + mark.height / 2 - 3);
  const hover = window.page.locator(".monaco-hover:visible");
  await hover.filter({ hasText: /stand in line/ }).first().waitFor();
  await shot("warning");
});

scenario("A click on a note above a line shows what it counts", { files: { "two-paths.grove": lineOfThree } }, async (window, shot) => {
  await window.openFile("two-paths.grove");
  await window.served();
  await window.editor().locator(".codelens-decoration a", { hasText: "5 trunks stand · 1 warning" }).click();
  await window.page.locator(".markers-panel .monaco-list-row", { hasText: "stand in line" }).first().waitFor();
  // The problems may have taken the room in which the note stood, and a note out of sight is not there at all.
  const note = window.editor().locator(".codelens-decoration a", { hasText: "4 trunks: B, C, D, E" });
  await window.until("the note above the role is clicked", async () => {
    await window.goTo(16);
    return await note.click({ timeout: 2000 }).then(() => true);
  });
  const places = window.page.locator(".reference-zone-widget .ref-tree .monaco-list-row", { hasText: "role" });
  await window.until("the four lines of trunks are shown", async () => (await places.count()) === 4 || (await places.allInnerTexts()));
  await shot("places");
});

scenario("The nearest move that clears a warning is offered, and the warning goes", { files: { "two-paths.grove": lineOfThree } }, async (window, shot) => {
  await window.openFile("two-paths.grove");
  await window.served();
  await window.press("Control+Shift+M");
  await window.page.locator(".markers-panel .monaco-list-row", { hasText: "stand in line" }).first().dblclick();
  await window.served();
  await window.goTo(10, 13);
  const move = window.page.locator(".action-widget .monaco-list-row", { hasText: /move [A-Z] \d+(\.\d+)? mm toward \d+ deg/i });
  await window.until("the move is offered", async () => {
    await window.press("Escape", "Control+.");
    return await move.first().waitFor({ timeout: 2000 }).then(() => true);
  });
  await shot("fix");
  // The move is the first that is offered, and the keys are in the list.
  await window.page.locator(".action-widget .monaco-list-row.focused", { hasText: /move/i }).waitFor();
  await window.press("Enter");
  await window.until("no trunks stand in line any more", async () => !(await window.problems()).some((text) => text.includes("stand in line")));
  notEqual(await window.shown(), lineOfThree.trimEnd());
  await shot("fixed");
});

scenario("The drawing beside the text leads to lines, lights up what the caret stands on, and follows what is typed", { files: { "two-paths.grove": lineOfThree }, settings: dark }, async (window, shot) => {
  await window.openFile("two-paths.grove");
  await window.served();
  await window.command("GroveSpec: Draw the Plan Beside the Text");
  await window.fact("trunk:A").first().waitFor();
  await window.equals("the page is dark", () => window.drawing().locator("body").evaluate((body) => getComputedStyle(body).backgroundColor), "rgb(25, 29, 26)");
  // What was found is told below the plate, and stays as large as text when the plate is small.
  const key = window.drawing().locator("#key");
  await key.locator("li").first().filter({ hasText: /^\s*1\s*A, B and C stand in line/ }).waitFor();
  const read = await key.evaluate((list) => ({ size: parseFloat(getComputedStyle(list).fontSize), scale: parseFloat(getComputedStyle(list).getPropertyValue("--scale")) }));
  ok(read.scale < 0.8 && read.size * read.scale > 13, `it is read at ${read.size * read.scale} px`);
  await shot("drawing");

  const middle = await window.middleOf("C");
  await window.page.mouse.click(middle.x, middle.y);
  await window.selectedLine(11);
  await window.until("the clicked trunk is lit", async () => (await window.fact("trunk:C").first().getAttribute("class")).includes("lit"));

  await window.line("trunk B").click();
  await window.until("the caret's trunk is lit and no other", async () =>
    (await window.fact("trunk:B").first().getAttribute("class")).includes("lit") && !(await window.fact("trunk:C").first().getAttribute("class")).includes("lit"));

  // A new line in the text is a new trunk in the drawing, and the zoom stays.
  const sheet = window.drawing().locator("#sheet");
  await window.drawing().locator("#nearer").click();
  const before = await sheet.evaluate(({ style }) => style.transform);
  const place = await window.middleOf("A");
  await window.line("trunk E").click();
  await window.press("End", "Enter");
  await window.type("trunk F   at 40, -92 mm   diameter 11 mm   height 170 mm   role side");
  await window.press("Escape");
  await window.fact("trunk:F").first().waitFor();
  await window.until("the drawing stands as it stood, with one trunk more", async () => {
    const now = await window.middleOf("A");
    return Math.hypot(now.x - place.x, now.y - place.y) < 3 || now;
  });
  await window.equals("the sheet is as near as it was", () => sheet.evaluate(({ style }) => style.transform), before);
  await shot("typed");

  await window.drawing().locator("#view-front").click();
  await window.drawing().locator("#sheet svg.gs-front").waitFor();
  await shot("front");
  await window.drawing().locator("#view-timeline").click();
  await window.drawing().locator("#sheet svg.gs-timeline").waitFor();
  await window.drawing().locator("#view-timeline[aria-selected=true]").waitFor();
  await window.drawing().locator("#view-wiring").click();
  await window.drawing().locator("#sheet svg.gs-wiring").waitFor();
  await shot("wire");
});

scenario("A trunk taken hold of in the plan changes the text and what is found, and one undo brings all back", { files: { "two-paths.grove": lineOfThree }, settings: dark }, async (window, shot) => {
  await window.openFile("two-paths.grove");
  await window.served();
  await window.press("Control+Shift+M");
  await window.page.locator(".markers-panel .monaco-list-row", { hasText: "stand in line" }).first().waitFor();
  await window.press("Control+Shift+M");
  await window.command("GroveSpec: Draw the Plan Beside the Text");
  await window.fact("trunk:B").first().waitFor();
  const text = await window.shown();

  const from = await window.middleOf("B");
  await window.page.mouse.move(from.x, from.y);
  await window.page.mouse.down();
  await window.page.mouse.move(from.x + 12, from.y + 22, { steps: 4 });
  await window.drawing().locator("#sheet .guides").first().waitFor();
  await window.drawing().locator("#sheet .ghost").waitFor();
  await window.page.mouse.move(from.x + 24, from.y + 44, { steps: 4 });
  await shot("held");
  await window.page.mouse.up();
  await window.until("the line of B has another place", async () => (await window.shown()).match(/^trunk B\s+at (.*? mm)/m)?.[1] !== "-9, 1 mm");
  await window.drawing().locator("#sheet .ghost").waitFor({ state: "detached" });
  await window.until("the drawing shows B where it was let go", async () => {
    const now = await window.middleOf("B");
    return Math.hypot(now.x - from.x - 24, now.y - from.y - 44) < 6 || now;
  });
  await window.press("Control+Shift+M");
  await window.until("the trunks are no longer in line", async () => !(await window.problems()).some((problem) => problem.includes("A, B and C stand in line")));
  await window.press("Control+Shift+M");
  await shot("dropped");

  await window.line("trunk E").click();
  await window.press("Control+Z");
  await window.until("one undo brings the text back", async () => (await window.shown()) === text);
  await window.press("Control+Shift+M");
  await window.page.locator(".markers-panel .monaco-list-row", { hasText: "stand in line" }).first().waitFor();

  // Escape in the middle of it changes nothing. A trunk taken before the picture of the old text is back would be let go by that picture.
  await window.press("Control+Shift+M");
  await window.until("the drawing shows B where it stood", async () => {
    const now = await window.middleOf("B");
    return Math.hypot(now.x - from.x, now.y - from.y) < 6 || now;
  });
  const again = await window.middleOf("B");
  await window.page.mouse.move(again.x, again.y);
  await window.page.mouse.down();
  await window.page.mouse.move(again.x - 30, again.y + 40, { steps: 4 });
  await window.drawing().locator("#sheet .ghost").waitFor();
  await window.drawing().locator("#stage").press("Escape");
  await window.drawing().locator("#sheet .ghost").waitFor({ state: "detached" });
  await window.page.mouse.up();
  equal(await window.shown(), text);
});

scenario("What there is to decide is shown as pictures to choose from, is written in one step, and one undo brings the text back", { files: { "two-paths.grove": lineOfThree } }, async (window, shot) => {
  await window.openFile("two-paths.grove");
  await window.served();
  await window.command("GroveSpec: Decide What to Move a Little");
  const page = window.drawing();
  const ways = page.locator("#ways article");
  await page.locator("#question-nudge[aria-selected=true]").waitFor();
  await ways.first().filter({ hasText: "the checks of composition then find nothing" }).waitFor();
  await page.locator("#sheet svg.gs").waitFor();
  await shot("decide-moves");
  const text = await window.shown();
  await ways.first().locator(".write").click();
  await window.until("a trunk is written where it was suggested", async () => (await window.shown()) !== text);
  await window.press("Control+Shift+M");
  await window.until("nothing is in line any more", async () => !(await window.problems()).some((problem) => problem.includes("stand in line")));
  await window.press("Control+Shift+M");
  await page.locator("#ways", { hasText: "find nothing" }).waitFor();
  await page.locator("#ways").press("Control+Z");
  await window.until("one undo brings the text back", async () => (await window.shown()) === text);

  // The other questions, each with its picture; a click on a choice shows its own.
  await page.locator("#question-fronts").click();
  await ways.nth(1).locator(".title", { hasText: /^From [\d.]+ deg$/ }).waitFor();
  await page.locator("#sheet svg.gs-fronts").waitFor();
  await shot("decide-fronts");
  await ways.nth(1).locator(".choose").click();
  await page.locator("#sheet svg.gs-front").waitFor();
  await shot("decide-one-front");
  await page.locator("#question-thin").click();
  const keep = page.locator("#ways input[name=keep]");
  await keep.waitFor();
  await keep.fill("4");
  await keep.press("Enter");
  await ways.first().locator(".title", { hasText: /^Take out [A-E]$/ }).waitFor();
  await shot("decide-thin");
  await keep.fill("none");
  await keep.press("Enter");
  await page.locator("#ways small", { hasText: "needs a number" }).waitFor();
  await page.locator("#question-ground").click();
  await page.locator("#ways input[name=diameter]").fill("12 mm");
  await page.locator("#ways input[name=diameter]").press("Tab");
  await page.locator("#ways .says", { hasText: "12 mm thick" }).first().waitFor();
  await window.until("the height follows the thickness", async () => (await page.locator("#ways input[name=height]").inputValue()) === "180 mm" || (await page.locator("#ways input[name=height]").inputValue()));
  await page.locator("#sheet svg.gs").waitFor();
  await shot("decide-ground");
  await ways.first().locator(".write").click();
  await window.line("trunk F").waitFor();
  await window.line("trunk E").click();
  await window.press("Control+Z");
  await window.until("one undo takes the new trunk out", async () => (await window.shown()) === text);
  await page.locator("#question-stand").click();
  await page.locator("#ways .says").first().waitFor();
  await shot("decide-stand");
});

scenario("In a low window the choices stand beside the picture, and it has all the height of the page", { files: { "two-paths.grove": lineOfThree } }, async (window, shot) => {
  await window.openFile("two-paths.grove");
  await window.served();
  await window.command("GroveSpec: Decide What to Move a Little");
  const page = window.drawing();
  await page.locator("#ways article").first().filter({ hasText: "the checks of composition then find nothing" }).waitFor();
  await page.locator("#sheet svg.gs").waitFor();
  await page.locator("#table:not(.beside)").waitFor();
  await window.page.setViewportSize({ width: 1400, height: 430 });
  await page.locator("#table.beside").waitFor();
  await window.until("the picture fills the stage one way", async () => {
    const [picture, place] = [await page.locator("#sheet svg.gs").boundingBox(), await page.locator("#stage").boundingBox()];
    return picture.height > 0.9 * place.height || picture.width > 0.9 * place.width || `${picture.width} x ${picture.height} in ${place.width} x ${place.height}`;
  });
  await shot("decide-low");
});

scenario("Pinched nearer, the drawing keeps what lies under the fingers, and a trunk is still let go where the pointer leaves it", { files: { "two-paths.grove": lineOfThree }, settings: { "workbench.colorTheme": "Default High Contrast" } }, async (window, shot) => {
  await window.openFile("two-paths.grove");
  await window.served();
  await window.command("GroveSpec: Draw the Plan Beside the Text");
  await window.fact("trunk:B").first().waitFor();
  const sheet = window.drawing().locator("#sheet");
  const scale = () => sheet.evaluate((element) => new DOMMatrix(getComputedStyle(element).transform).a);
  const [whole, before] = [await scale(), await window.middleOf("B")];

  // A touchpad's pinch comes as a wheel with Control held.
  const pinch = async (by) => {
    await window.page.keyboard.down("Control");
    await window.page.mouse.wheel(0, by);
    await window.page.keyboard.up("Control");
  };
  await window.page.mouse.move(before.x, before.y);
  await pinch(-90);
  await window.until("the sheet is nearer", async () => (await scale()) > 1.9 * whole || (await scale()));
  await pinch(30);
  await window.until("and a little farther again", async () => (await scale()) < 1.8 * whole || (await scale()));
  const near = await scale();
  ok(near > 1.5 * whole, `${near} of ${whole}`);
  const from = await window.middleOf("B");
  ok(Math.hypot(from.x - before.x, from.y - before.y) < 3, "what was under the pointer is there still");

  await window.page.mouse.down();
  await window.page.mouse.move(from.x + 15, from.y + 30, { steps: 4 });
  await window.drawing().locator("#sheet .guides").first().waitFor();
  await window.page.mouse.move(from.x + 30, from.y + 60, { steps: 4 });
  await shot("pinched-and-held");
  await window.page.mouse.up();
  await window.until("B stands where it was let go", async () => {
    const now = await window.middleOf("B");
    return (!/^trunk B\s+at -9, 1 mm/m.test(await window.shown()) && Math.hypot(now.x - from.x - 30, now.y - from.y - 60) < 5) || now;
  });
  await window.equals("the sheet is as near as it was", scale, near);

  // In high contrast all lines and letters take the editor's own colours.
  const body = window.drawing().locator("body");
  await window.equals("the page is black", () => body.evaluate((element) => getComputedStyle(element).backgroundColor), "rgb(0, 0, 0)");
  await window.equals("the rim is white", () => window.drawing().locator("#sheet .gs-rim").first().evaluate((rim) => getComputedStyle(rim).stroke), "rgb(255, 255, 255)");
  await window.equals("the remarks are white", () => window.drawing().locator("#sheet .gs-remark").first().evaluate((text) => getComputedStyle(text).fill), "rgb(255, 255, 255)");

  // The ground is drawn along at this size, and one key brings the whole plate back.
  const place = await window.middleOf("D");
  const { x, y } = await window.placeOf(window.drawing().locator("#stage"), "the stage").then((box) => ({ x: box.x + box.width / 2, y: box.y + box.height - 40 }));
  await window.page.mouse.move(x, y);
  await window.page.mouse.down();
  await window.page.mouse.move(x + 60, y - 20, { steps: 4 });
  await window.page.mouse.up();
  await window.until("the ground has come along", async () => {
    const now = await window.middleOf("D");
    return Math.hypot(now.x - place.x - 60, now.y - place.y + 20) < 2 || now;
  });
  await window.drawing().locator("#stage").press("0");
  await window.until("the whole plate is seen", async () => Math.abs((await scale()) - whole) < 1e-3 || (await scale()));
});

scenario("What the pointer does in the drawing the keyboard does too", { files: { "two-paths.grove": lineOfThree }, settings: light }, async (window, shot) => {
  await window.openFile("two-paths.grove");
  await window.served();
  await window.press("Control+Alt+D");
  await window.fact("trunk:A").first().waitFor();
  const stage = window.drawing().locator("#stage");
  await stage.focus();
  await stage.press("ArrowRight");
  await stage.press("ArrowRight");
  await window.equals("one trunk is chosen", () => window.drawing().locator("#trunks [aria-selected=true]").count(), 1);
  await stage.press("Alt+Shift+ArrowDown");
  await window.until("B stands 10 mm nearer to the front", async () => /^trunk B\s+at -9, -9 mm/m.test(await window.shown()) || (await window.shown()));
  await stage.press("Alt+ArrowRight");
  await window.until("and 1 mm to the right", async () => /^trunk B\s+at -8, -9 mm/m.test(await window.shown()) || (await window.shown()));
  await window.equals("the page is light", () => window.drawing().locator("body").evaluate((body) => getComputedStyle(body).backgroundColor), "rgb(252, 251, 247)");
  await shot("light");
  await stage.press("Enter");
  await window.page.locator("#status\\.editor\\.selection", { hasText: "Ln 10" }).waitFor();
  await window.page.locator(".monaco-editor.focused").first().waitFor();
});

scenario("A top taken hold of in the front changes lean and height", { files: { "two-paths.grove": lineOfThree }, settings: light }, async (window, shot) => {
  await window.openFile("two-paths.grove");
  await window.served();
  await window.command("GroveSpec: Draw the Front Beside the Text");
  await window.drawing().locator("#sheet svg.gs-front").waitFor();
  const stage = window.drawing().locator("#stage");
  await stage.focus();
  await stage.press("ArrowRight");
  const ring = await window.placeOf(window.drawing().locator("#sheet .ring-current"), "the ring");
  const top = { x: ring.x + ring.width / 2, y: ring.y + ring.height / 2 };
  await window.page.mouse.move(top.x, top.y);
  await window.page.mouse.down();
  await window.page.mouse.move(top.x + 20, top.y + 10, { steps: 4 });
  await window.page.mouse.move(top.x + 40, top.y + 20, { steps: 4 });
  await window.drawing().locator("#sheet .ghost").waitFor();
  await shot("top-held");
  await window.page.mouse.up();
  await window.until("A leans and has another height", async () => {
    const [line] = (await window.shown()).match(/^trunk A.*$/m);
    return (/lean \d+(\.\d+)? deg toward \d+ deg/.test(line) && !/height 400 mm/.test(line)) || line;
  });
  await shot("top-dropped");
});

scenario("Work taken hold of in the timeline is due on the days where it is let go, and the keys move it by days", { files: { "two-paths.grove": `${lineOfThree}\ntask cut   prune on D   on 2027-05-05\ntask late  measure on all   in late autumn 2027\n` }, settings: light }, async (window, shot) => {
  await window.openFile("two-paths.grove");
  await window.served();
  await window.command("GroveSpec: Draw the Timeline Beside the Text");
  await window.drawing().locator("#sheet svg.gs-timeline").waitFor();
  const line = (name) => window.shown().then((text) => text.match(new RegExp(`^task ${name}.*$`, "m"))?.[0]);

  // The mark in its row is taken, and what it says follows.
  const mark = await window.placeOf(window.fact("task:cut").first().locator("path").first(), "the leaf of the cut");
  const from = { x: mark.x + mark.width / 2, y: mark.y + mark.height / 2 };
  await window.page.mouse.move(from.x, from.y);
  await window.page.mouse.down();
  await window.page.mouse.move(from.x + 20, from.y, { steps: 4 });
  await window.page.mouse.move(from.x + 60, from.y + 9, { steps: 4 });
  await window.drawing().locator("#sheet .ghost").waitFor();
  await shot("task-held");
  await window.page.mouse.up();
  await window.until("the cut is later", async () => {
    const day = (await line("cut"))?.match(/on (2027-\d\d-\d\d)/)?.[1];
    return (day > "2027-05-05" && day < "2027-12-31") || day;
  });
  await shot("task-dropped");

  // The caret on a task lights it up.
  await window.line("task late").click();
  await window.until("the task under the caret is lit", async () => (await window.fact("task:late").first().getAttribute("class")).includes("lit"));
  const stage = window.drawing().locator("#stage");
  await stage.focus();
  await stage.press("End");
  await stage.press("Alt+Shift+ArrowRight");
  await window.equals("what was said by season is said by date", () => line("late").then((text) => text?.replace(/^.*all +/, "")), "from 2027-11-08 to 2027-12-07");
});

scenario("The server that runs is the one that came with the package", { files: { "two-paths.grove": lineOfThree } }, async (window) => {
  await window.openFile("two-paths.grove");
  await window.served();
  const servers = window.servers();
  ok(servers.length > 0, "a server runs");
  for (const [program, ...rest] of servers) {
    const own = rest[0] === "language-server" ? program : rest[0];
    match(own, /\/server\/grovespec(\.dll)?$/);
    ok(own.startsWith(window.extensions), `${own} lies in the extension's folder`);
    // The portable package has no program of its own: an installed .NET runs its server.
    equal(own === program || (basename(program) === "dotnet" && !program.startsWith(window.folder) && dirname(program) !== "."), true, program);
  }
});

// All that a folder could say to have another program started, and programs that would leave a trace.
const trace = "#!/bin/sh\ntouch \"$(dirname \"$0\")/was-started\"\n";
const strange = {
  files: { "two-paths.grove": lineOfThree },
  programs: { grovespec: trace, dotnet: trace, "grovespec.dll": trace },
  settings: { ...light, "grovespec.server": "./grovespec", "grovespec.serverPath": "./grovespec", "grovespec.server.path": "./grovespec", "grovespec.program": "./grovespec", "grovespec.trace.server": "verbose" },
  user: { "security.workspace.trust.enabled": true, "security.workspace.trust.startupPrompt": "never", "security.workspace.trust.banner": "never" },
};

scenario("In a folder that is not trusted plantings are checked and drawn, nothing is written, and no program of the folder is started", strange, async (window, shot) => {
  const before = window.stored();
  await window.page.locator("#status\\.workspaceTrust, [id='status.workspaceTrust']", { hasText: "Restricted Mode" }).waitFor();
  await window.openFile("two-paths.grove");
  await window.page.locator(".monaco-editor .squiggly-warning").first().waitFor();
  await window.served();
  await window.command("GroveSpec: Draw the Plan Beside the Text");
  await window.fact("trunk:B").first().waitFor();
  ok(window.servers().length > 0 && window.servers().every(({ 0: program, 1: first }) => [program, first].some((word) => word.startsWith(window.extensions))), "only the extension's own server runs");

  // The drawing is for looking at: a trunk that is drawn away stays.
  const text = await window.shown();
  const from = await window.middleOf("B");
  await window.page.mouse.move(from.x, from.y);
  await window.page.mouse.down();
  await window.page.mouse.move(from.x + 24, from.y + 44, { steps: 6 });
  await window.page.mouse.up();
  await window.drawing().locator("#note.refused", { hasText: "not trusted" }).waitFor();
  await window.drawing().locator("#sheet .ghost").waitFor({ state: "detached" });
  equal(await window.shown(), text);
  await shot("not-trusted");

  // A first planting becomes a text that is not stored.
  await window.command("GroveSpec: Begin a First Planting", { staysOpen: true });
  await window.page.locator(".quick-input-widget", { hasText: "What is it called?" }).waitFor();
  await window.page.locator(".quick-input-widget input").first().press("Enter");
  await window.page.locator(".quick-input-list .monaco-list-row", { hasText: "group" }).click();
  await window.page.locator(".tab.active", { hasText: "Untitled" }).waitFor();
  await window.line("planting").first().waitFor();
  equal(window.read("two-paths.grove"), lineOfThree);
  deepEqual(window.stored(), before);
});

scenario("A drawing comes back with its window, with its plate, its planting and as near as it was looked at", { files: { "two-paths.grove": lineOfThree }, settings: dark }, async (window, shot) => {
  await window.openFile("two-paths.grove");
  await window.served();
  await window.command("GroveSpec: Draw the Plan Beside the Text");
  await window.fact("trunk:A").first().waitFor();
  await window.drawing().locator("#view-front").click();
  await window.drawing().locator("#sheet svg.gs-front").waitFor();
  await window.drawing().locator("#nearer").click();
  const sheet = window.drawing().locator("#sheet");
  const before = await sheet.evaluate(({ style }) => style.transform);

  await window.reload();
  await window.drawing().locator("#sheet svg.gs-front").waitFor();
  await window.drawing().locator("#view-front[aria-selected=true]").waitFor();
  await window.equals("the sheet is as near as it was", () => sheet.evaluate(({ style }) => style.transform), before);
  await shot("restored");

  // It is alive: what is typed is drawn.
  await window.line("trunk E").click();
  await window.press("End", "Enter");
  await window.type("trunk F   at 40, -92 mm   diameter 11 mm   height 170 mm   role side");
  await window.press("Escape");
  await window.fact("trunk:F").first().waitFor();
});

scenario("A role is renamed in both files that name it", { copies: { "garden-club.grove": join(samples, "garden-club/garden-club.grove"), "roles.grove": join(samples, "garden-club/roles.grove") } }, async (window, shot) => {
  const [, role] = /^role\s+(\S+)/m.exec(window.read("roles.grove"));
  const uses = (text) => text.match(new RegExp(`role\\s+${role}(?![\\w'-])`, "g"))?.length ?? 0;
  ok(uses(window.read("garden-club.grove")) > 0, "the sample plays the role");
  // From the planting that plays it: the file that describes it has nothing to show by which the server's answer could be waited for.
  await window.openFile("garden-club.grove");
  await window.served();
  const lines = window.read("garden-club.grove").split("\n");
  const name = new RegExp(`(?<=\\srole\\s+)${role}(?![\\w'-])`);
  const at = lines.findIndex((line) => name.test(line));
  await window.goTo(at + 1, lines[at].search(name) + 2);
  await window.press("F2");
  const input = window.page.locator(".rename-box input");
  await input.waitFor();
  await input.fill("gatekeeper");
  await window.press("Enter");
  await window.until("both files have the new name", async () => {
    await window.press("Control+K");
    await window.press("s");
    return window.read("roles.grove").includes("role gatekeeper") && uses(window.read("garden-club.grove")) === 0 && /role\s+gatekeeper/.test(window.read("garden-club.grove"));
  });
  await shot("renamed");
});

scenario("A file is lined up, and a whole new trunk is written with the keyboard alone", { files: { "two-paths.grove": lineOfThree.replace("at -9, 1 mm      diameter", "at -9,1 diameter") }, settings: { "grovespec.hints": false } }, async (window, shot) => {
  await window.openFile("two-paths.grove");
  await window.served();
  // The editor has a formatter only once the server has said what it can do, which may be after its first notes: a key that came too early does nothing.
  const straight = /^trunk B {3}at -9, 1 mm {6}diameter 21 mm {3}height 290 mm/m;
  await window.until("the columns stand", async () => {
    if (!straight.test(await window.shown())) {
      await window.press("Control+Shift+I");
      await window.page.waitForFunction((wanted) => [...document.querySelectorAll(".view-line")].some((line) => new RegExp(wanted, "m").test(line.textContent.replaceAll("\u00a0", " "))), straight.source, { timeout: 4000 });
    }
    return straight.test(await window.shown()) || (await window.shown());
  });

  await window.goTo(13, 1);
  await window.press("End", "Enter");
  await window.type("tru");
  await window.press("Control+Space");
  const offer = window.page.locator(".suggest-widget .monaco-list-row", { hasText: /trunk/ });
  await offer.first().waitFor();
  await shot("offer");
  await window.press("Enter");
  // The next free name is filled in; Tab walks through what is to be filled in beside it.
  await window.until("a whole trunk stands there under the next free name", async () => /^trunk F\s+at .*diameter.*height/m.test(await window.shown()) || (await window.shown()));
  for (const value of ["40", "-92", "11 mm", "170 mm"]) {
    await window.nextPlace();
    await window.type(value);
  }
  await window.press("Escape");
  await window.until("what was typed stands in its places", async () => /^trunk F\s+at 40, -92 mm\s+diameter 11 mm\s+height 170 mm/m.test(await window.shown()) || (await window.shown()));
  await window.until("it is a trunk like the others", async () => (await window.editor().locator(".codelens-decoration").first().innerText()).includes("6 trunks"));
  await shot("completed");
});

scenario("From the walkthrough alone to a first planting of one's own: five trunks with an elder, drawn, and one of them moved", { files: { "notes.txt": "a folder\n" }, settings: { ...light, "grovespec.hints": false } }, async (window, shot) => {
  const { page } = window;
  const step = (title) => page.locator(".getting-started-step", { hasText: title });
  const walkthrough = page.locator(".tab", { hasText: /Walkthrough|Welcome/ });
  // Newer editors show their start page when one comes back to the tab; the walkthrough is chosen there again.
  const backTo = async (title) => {
    await walkthrough.click();
    const card = page.locator("button.getting-started-category", { hasText: "A First Planting of Your Own" });
    await window.until(`the step "${title}" is open`, async () => {
      if (await step(title).isEnabled()) {
        return await step(title).click({ timeout: 2000 }).then(() => true);
      }
      await card.click({ timeout: 2000 });
      return "the start page is shown";
    });
  };
  await window.command("Welcome: Open Walkthrough...", { staysOpen: true });
  await page.locator(".quick-input-list .monaco-list-row", { hasText: "A First Planting of Your Own" }).click();
  await step("Write your planting down").waitFor();
  await shot("walkthrough");

  // Both questions are answered by keyboard, whatever the page below does meanwhile.
  await page.locator("a.monaco-button, .monaco-button", { hasText: "Begin a first planting" }).first().click();
  await page.locator(".quick-input-widget", { hasText: "What is it called?" }).waitFor();
  await window.type("Salt Bank");
  await window.press("Enter");
  await page.locator(".quick-input-list .monaco-list-row.focused", { hasText: "group" }).waitFor();
  await window.press("ArrowDown");
  await page.locator(".quick-input-list .monaco-list-row.focused", { hasText: "clump" }).waitFor();
  await window.press("ArrowUp", "Enter");
  await page.locator(".tab.active", { hasText: "salt-bank.grove" }).waitFor();
  match(window.read("salt-bank.grove"), /^planting {2}"Salt Bank"\nhabit {5}group$/m);
  await window.served();

  // The second step shows the one fault that it speaks of.
  await backTo("Read what is said about it");
  await page.locator(".monaco-button", { hasText: "Show what was found" }).first().click();
  await page.locator(".markers-panel .monaco-list-row", { hasText: "A, B and C stand in line" }).first().waitFor();

  // The third tells how a trunk is added and a role of one's own is given.
  await backTo("Add your trunks and their roles");
  await window.until("the page of the step is shown", async () => {
    const texts = await Promise.all(page.frames().map((frame) => frame.locator("body").innerText({ timeout: 1000 }).catch(() => "")));
    return texts.some((text) => text.includes("As many trunks as you have"));
  });
  await shot("trunks-and-roles");
  await page.locator(".tab", { hasText: "salt-bank.grove" }).click();
  await window.press("Control+J");
  await window.goTo(11, 1);
  await window.press("End", "Enter");
  for (const [name, values] of [["D", ["-112", "64", "9 mm", "140 mm"]], ["E", ["104", "-46", "25 mm", "310 mm"]]]) {
    await window.type("trunk");
    const offered = page.locator(".suggest-widget.visible .monaco-list-row.focused", { hasText: "trunk" });
    await window.until("a whole trunk is offered", async () => {
      await window.press("Escape", "Control+Space");
      return await offered.waitFor({ timeout: 2000 }).then(() => true);
    });
    await window.press("Enter");
    await window.until(`a whole trunk stands there, named ${name}`, async () => new RegExp(`^trunk ${name}\\s+at .*height`, "m").test(await window.shown()) || (await window.shown()));
    for (const value of values) {
      await window.nextPlace();
      await window.type(value);
    }
    await window.press("Escape", "End");
    await window.type(name === "E" ? "   role elder" : "   role side");
    await window.press("Escape", "Enter");
  }
  await window.until("the note above the planting counts five", async () => (await window.editor().locator(".codelens-decoration").first().innerText()).includes("5 trunks"));
  const [line] = Object.entries((await window.shown()).split("\n")).find(([, text]) => text.startsWith("trunk E"));
  await window.goTo(Number(line) + 1, (await window.shown()).split("\n")[line].indexOf("elder") + 2);
  const write = page.locator(".action-widget .monaco-list-row", { hasText: /role elder/i });
  await window.until("the role's line is offered", async () => {
    await window.press("Escape", "Control+.");
    return await write.first().waitFor({ timeout: 2000 }).then(() => true);
  });
  await page.locator(".action-widget .monaco-list-row.focused", { hasText: /role elder/i }).waitFor();
  await window.press("Enter");
  await window.until("the role is described", async () => /^role elder\b/m.test(await window.shown()) || (await window.shown()));
  await window.until("nothing is wrong any more", async () => !/error/.test(await window.editor().locator(".codelens-decoration").first().innerText()) || (await window.shown()));

  // The fourth draws it; the fifth has a trunk moved out of the line.
  await backTo("Draw it beside the text");
  await page.locator(".monaco-button", { hasText: "Draw the plan" }).first().click();
  await window.fact("trunk:E").first().waitFor();
  const from = await window.middleOf("B");
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x + 10, from.y + 20, { steps: 4 });
  await window.drawing().locator("#sheet .guides").first().waitFor();
  await page.mouse.move(from.x + 20, from.y + 40, { steps: 4 });
  await page.mouse.up();
  await window.until("B has another place, and the three are no longer in line", async () => {
    const key = await window.drawing().locator("#key").allInnerTexts();
    return (!/^trunk B\s+at 10, 12 mm/m.test(await window.shown()) && !key.join().includes("A, B and C stand in line")) || key;
  });
  await shot("first-planting");
});
