// A real VS Code workbench in a browser, with the packaged extension installed: started once, a fresh copy of the folder for each scenario.
import { execFileSync, spawn } from "node:child_process";
import { chmodSync, closeSync, cpSync, mkdirSync, mkdtempSync, openSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { get } from "node:http";
import { createRequire } from "node:module";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";

const here = import.meta.dirname;
const require = createRequire(join(here, "../../editor-extension/package.json"));
const { chromium } = require("playwright-core");

/** Milliseconds that anything may take before it counts as not coming. */
export const patience = 30_000;

const freePort = () =>
  new Promise((resolve) => {
    const server = createServer().listen(0, "127.0.0.1", () => {
      const { port } = server.address();
      server.close(() => resolve(port));
    });
  });

const status = (url) => new Promise((resolve) => get(url, (answer) => resolve(answer.resume().statusCode)).on("error", () => resolve(0)));

/** Starts the host with the extension in it, and a browser. */
export async function startWorkbench({ host, node, vsix, browser: executablePath, results }) {
  const scratch = mkdtempSync(join(tmpdir(), "grovespec-workbench-"));
  const entry = join(host, "node_modules/code-server/out/node/entry.js");
  const userData = join(scratch, "user");
  const extensions = join(scratch, "extensions");
  const port = await freePort();
  mkdirSync(join(userData, "User"), { recursive: true });
  const usual = JSON.parse(readFileSync(join(here, "settings.json"), "utf8"));
  const choose = (settings) => writeFileSync(join(userData, "User/settings.json"), JSON.stringify({ ...usual, ...settings }));
  choose({});
  const shared = ["--config", join(scratch, "config.yaml"), "--user-data-dir", userData, "--extensions-dir", extensions];
  const env = { ...process.env, EXTENSIONS_GALLERY: "{}" };
  execFileSync(node, [entry, ...shared, "--install-extension", vsix], { env, stdio: ["ignore", "ignore", "inherit"] });

  const log = openSync(join(results, "host.log"), "w");
  const flags = ["--auth", "none", "--bind-addr", `127.0.0.1:${port}`, "--disable-telemetry", "--disable-update-check", "--disable-getting-started-override"];
  const server = spawn(node, [entry, ...shared, ...flags], { env, stdio: ["ignore", log, log], detached: true });
  closeSync(log);
  let browser;
  const stop = async () => {
    await browser?.close();
    try {
      process.kill(-server.pid, "SIGTERM");
    } catch {
      // It ended by itself.
    }
    rmSync(scratch, { recursive: true, force: true, maxRetries: 20, retryDelay: 100 });
  };

  try {
    for (const end = Date.now() + patience; (await status(`http://127.0.0.1:${port}/healthz`)) !== 200; ) {
      if (Date.now() > end) {
        throw new Error("The editor's host does not answer; see host.log.");
      }
      await new Promise((resolve) => setTimeout(resolve, 100));
    }

    const flagsOfBrowser = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];
    browser = await chromium.launch({ executablePath, args: flagsOfBrowser });
  } catch (error) {
    await stop();
    throw error;
  }

  // One context for all windows, so that the workbench's own scripts are fetched and compiled once.
  const context = await browser.newContext({ viewport: { width: 1400, height: 860 } });
  let opened = 0;
  return {
    stop,
    /** Opens a fresh window on a folder with these files and programs; the folder has settings, and so has the grower. */
    async open({ files, programs = {}, copies = {}, settings = {}, user = {} }) {
      choose(user);
      const folder = join(scratch, `folder-${++opened}`);
      mkdirSync(join(folder, ".vscode"), { recursive: true });
      writeFileSync(join(folder, ".vscode/settings.json"), JSON.stringify(settings));
      for (const [name, text] of Object.entries(files ?? {})) {
        writeFileSync(join(folder, name), text);
      }
      for (const [name, text] of Object.entries(programs)) {
        writeFileSync(join(folder, name), text);
        chmodSync(join(folder, name), 0o755);
      }
      for (const [name, source] of Object.entries(copies)) {
        cpSync(source, join(folder, name));
      }

      const page = await context.newPage();
      page.setDefaultTimeout(patience);
      const outside = new Set();
      page.on("request", (request) => {
        const { protocol, hostname } = new URL(request.url());
        if (/^(https?|wss?):$/.test(protocol) && hostname !== "127.0.0.1" && hostname !== "localhost") {
          // The workbench names a host for its frames that its own service worker answers for.
          if (!hostname.endsWith(".vscode-resource.vscode-cdn.net") && !hostname.endsWith(".vscode-cdn.net")) {
            outside.add(request.url());
          }
        }
      });
      const errors = [];
      page.on("console", (message) => message.type() === "error" && errors.push(message.text()));
      await page.goto(`http://127.0.0.1:${port}/?folder=${encodeURIComponent(folder)}`);
      await page.locator(".monaco-workbench .explorer-folders-view .monaco-list-row").first().waitFor();
      return new Window({ page, folder, outside, errors, extensions, host: server.pid });
    },
  };
}

/** One window of the workbench. */
export class Window {
  constructor({ page, folder, outside, errors, extensions, host }) {
    Object.assign(this, { page, folder, outside, errors, extensions, host });
  }

  close = () => this.page.close();
  read = (name) => readFileSync(join(this.folder, name), "utf8");
  /** The names of all that is in the folder, however deep. */
  stored = () => readdirSync(this.folder, { recursive: true }).sort();
  press = (...keys) => keys.reduce((before, key) => before.then(() => this.page.keyboard.press(key)), Promise.resolve());
  type = (text) => this.page.keyboard.type(text, { delay: 12 });

  /** Opens a file by the list of files. */
  async openFile(name) {
    await this.page.locator(".explorer-folders-view .monaco-list-row", { hasText: name }).dblclick();
    await this.page.locator(".tab.active", { hasText: name }).waitFor();
    await this.editor().locator(".view-line").first().waitFor();
  }

  /** The editor in front of the group that shows a file. */
  editor() {
    return this.page.locator(".editor-instance .monaco-editor[data-uri]").first();
  }

  /** A line of the text that holds a piece. */
  line(piece) {
    return this.editor().locator(".view-line", { hasText: pattern(piece) });
  }

  /** The file's text as the editor shows it, blanks told apart from nothing. */
  async shown() {
    const lines = await this.editor().locator(".view-line").evaluateAll((found) => found.map((line) => ({ top: parseFloat(line.style.top), text: line.textContent })).sort((one, other) => one.top - other.top));
    return lines.map(({ text }) => text.replaceAll("\u00a0", " ").replaceAll(/[\u200b\u200c]/g, "").trimEnd()).join("\n");
  }

  /** Runs a command by its title; one that asks something leaves the box open. */
  async command(title, { staysOpen = false } = {}) {
    await this.press("F1");
    const input = this.page.locator(".quick-input-widget input").first();
    await input.waitFor();
    await input.fill(`>${title}`);
    // The list is still narrowed down while the title stands there: Enter takes the row that is marked.
    await this.page.locator(".quick-input-list .monaco-list-row.focused", { hasText: title }).first().waitFor();
    await this.press("Enter");
    if (!staysOpen) {
      await this.page.locator(".quick-input-widget").waitFor({ state: "hidden" });
    }
  }

  /** Opens the window anew, as the editor does by itself: it first puts away what it shows. */
  async reload() {
    const loaded = this.page.waitForEvent("load");
    await this.press("F1");
    await this.page.locator(".quick-input-widget input").first().fill(">Developer: Reload Window");
    await this.page.locator(".quick-input-list .monaco-list-row.focused", { hasText: "Reload Window" }).first().waitFor();
    await this.press("Enter");
    await loaded;
    await this.page.locator(".monaco-workbench .explorer-folders-view .monaco-list-row").first().waitFor();
  }

  /** Goes to a line and column, counted from 1. */
  async goTo(line, column = 1) {
    await this.press("Control+G");
    const input = this.page.locator(".quick-input-widget input").first();
    await input.waitFor();
    await input.fill(`:${line}:${column}`);
    await this.press("Enter");
    await this.page.locator("#status\\.editor\\.selection", { hasText: `Ln ${line}, Col ${column}` }).waitFor();
  }

  /** The drawing's own page. */
  drawing() {
    return this.page.frameLocator("iframe.webview.ready").frameLocator("iframe#active-frame");
  }

  /** Every part of the drawing that stands for a fact. */
  fact(origin) {
    return this.drawing().locator(`#sheet [data-origin="${origin}"]`);
  }

  /** Where a part is on the screen, once it no longer moves there: a panel that opens or closes moves all beside it, and its lines are drawn anew. */
  async placeOf(part, says) {
    let place = null;
    await this.until(`${says} stands still`, async () => {
      const before = place;
      place = await part.boundingBox();
      await this.page.waitForTimeout(150);
      return before !== null && place !== null && Math.hypot(place.x - before.x, place.y - before.y) < 0.5;
    });
    return place;
  }

  /** The middle of a trunk in the plan, on the screen. */
  async middleOf(name) {
    const { x, y, width, height } = await this.placeOf(this.drawing().locator(`#sheet g[data-origin="trunk:${name}"]`).first(), name);
    return { x: x + width / 2, y: y + height / 2 };
  }

  /** What the list of problems says. */
  async problems() {
    return await this.page.locator(".markers-panel .monaco-list-row").allInnerTexts();
  }

  /** The command lines of all language servers that the editor's host has started and that run. */
  servers() {
    const processes = readdirSync("/proc").filter((name) => /^\d+$/.test(name)).flatMap((id) => {
      try {
        const [, parent] = /\) \S (\d+) /.exec(readFileSync(`/proc/${id}/stat`, "utf8"));
        return [{ id: Number(id), parent: Number(parent), words: readFileSync(`/proc/${id}/cmdline`, "utf8").split("\0").slice(0, -1) }];
      } catch {
        return []; // It ended meanwhile.
      }
    });
    const below = new Set([this.host]);
    for (let size = 0; size !== below.size; ) {
      size = below.size;
      processes.filter(({ parent }) => below.has(parent)).forEach(({ id }) => below.add(id));
    }
    return processes.filter(({ id, words }) => below.has(id) && words.includes("language-server")).map(({ words }) => words);
  }

  /** Waits until the server has answered for the file in front: before that the editor knows of no fix, name or form. */
  async served() {
    await this.editor().locator(".codelens-decoration").first().waitFor();
    await this.page.locator(".monaco-editor.focused").first().waitFor();
  }

  /** Waits until a line, counted from 1, is selected. The status bar tells nothing while the drawing has the keys. */
  async selectedLine(number) {
    await this.editor().locator(".line-numbers.active-line-number", { hasText: new RegExp(`^${number}$`) }).waitFor();
    await this.editor().locator(".selected-text").first().waitFor();
  }

  /** Goes on to the next place of a form that is filled in. An offer that opens in that moment takes the key, and then it is pressed again, as a hand would. */
  async nextPlace() {
    await this.until("the next place of the form is chosen", async () => {
      await this.press("Tab");
      return await this.editor().locator(".selected-text").first().waitFor({ timeout: 2000 }).then(() => true);
    });
  }

  /** Waits until something that is asked again and again is a value: what is drawn anew is not there for a moment. */
  equals(says, ask, wanted) {
    return this.until(says, async () => {
      const found = await ask();
      return found === wanted || found;
    });
  }

  /** Waits until something that is asked again and again holds. */
  async until(says, ask) {
    const end = Date.now() + patience;
    let last;
    for (;;) {
      last = await ask().catch((error) => error);
      if (last === true) {
        return;
      }
      if (Date.now() > end) {
        throw new Error(`It did not come to pass that ${says}: ${String(last?.message ?? JSON.stringify(last)).slice(0, 600)}`);
      }
      await this.page.waitForTimeout(50);
    }
  }
}

const pattern = (piece) => new RegExp(piece.trim().split(/\s+/).map((word) => word.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")).join("[\\s\\u00a0]+"));
