/** The page of a drawing: shows what it is sent, and tells what was done to it. It reads no planting and computes nothing about one. */
import type { Answers, FromPage, PictureMessage, Question, SheetMessage, ToPage, View } from "../src/messages";
import { questions, views } from "../src/messages";
import { Choices } from "./choices";
import { isFixed, listHeld, nearestTo, originAt, stays, type Held } from "./choosing";
import { Glass } from "./glass";
import { Holding } from "./holding";
import { keyAction } from "./keys";
import { layPicture } from "./laying";
import { mark } from "./marks";
import { Table } from "./sharing";
import { Tabs } from "./tabs";

interface Kept {
  uri?: string;
  view?: View;
  question?: Question;
  cameras?: Record<string, unknown>;
}

declare function acquireVsCodeApi(): { postMessage(message: FromPage): void; getState(): Kept | undefined; setState(state: Kept): void };

const editor = acquireVsCodeApi();
const element = (id: string): HTMLElement => document.getElementById(id)!;
const stage = element("stage");
const sheet = element("sheet");
const list = element("trunks");
const note = element("note");
const kept: Kept = editor.getState() ?? {};
const lookingIn = "Looking into it …";
const styles = new CSSStyleSheet();
document.adoptedStyleSheets = [styles];

let picture: PictureMessage | undefined;
let root: SVGSVGElement | undefined;
let lit: readonly string[] = [];
let current: string | undefined;
let held: Holding | undefined;
let leads: readonly string[] = [];

const keep = (): void => {
  kept.cameras = glass.keep();
  editor.setState(kept);
};
const table = new Table(element("table"), element("ways"));
const glass = new Glass(stage, sheet, kept.cameras ?? {}, keep);

window.addEventListener("message", ({ data }: MessageEvent<ToPage>) => {
  switch (data.type) {
    case "begin":
      kept.uri = data.uri;
      choose(data.view, data.question);
      break;
    case "picture":
      take(data);
      break;
    case "sheet":
      takeSheet(data);
      break;
    case "lit":
      lit = data.origins;
      light();
      break;
    case "guides":
      held?.guide(data);
      break;
    case "settled":
      say(data.says, !data.isMade);
      if (!data.isMade) {
        letGo();
      }

      break;
    case "note":
      say(data.says, true);
      document.body.classList.toggle("stale", data.isStale);
      letGo();
      break;
  }
});

function take(next: PictureMessage): void {
  const isSame = picture !== undefined && picture.view === next.view && picture.svg === next.svg;
  if (held && !held.isDropped && held.version !== next.version) {
    say(`The text has changed; take ${held.choice.name} again.`, true);
  } else if (document.body.classList.contains("stale")) {
    say("", false);
  }

  document.body.classList.remove("stale");
  if (!isSame && !lay(next.svg, next.view, next.origins)) {
    return;
  }

  picture = next;
  // What was let go stays where the hand left it until the picture of the new text is here.
  if (!isSame || held?.version !== next.version) {
    letGo();
  }

  choose(next.view, kept.question ?? questions[0]);
  const what = next.view === "timeline" ? "tasks" : "trunks";
  stage.setAttribute("aria-label", next.title === "" ? what : `${next.title}, ${what}`);
  tellHeld();
  light();
}

/** Lays a picture on the sheet, under the camera of a name; whether it could be read. */
function lay(svg: string, name: string, origins: readonly string[]): boolean {
  const laid = layPicture(svg, origins, sheet, styles);
  if (!laid) {
    say("The picture could not be read.", true);
    return false;
  }

  root = laid.root;
  if (kept.view === "decide") {
    table.show(kept.question ?? questions[0], laid);
  }

  glass.show(name, laid, kept.view === "decide");
  return true;
}

function takeSheet(next: SheetMessage): void {
  if (document.body.classList.contains("stale")) {
    say("", false);
  }

  document.body.classList.remove("stale");
  letGo();
  picture = undefined;
  leads = next.origins;
  choose("decide", next.question);
  stage.setAttribute("aria-label", next.title === "" ? "what is to be decided" : `${next.title}, what is to be decided`);
  current = undefined;
  tellHeld();
  choices.take(next);
  if (note.textContent === lookingIn) {
    say(next.ways.length === 0 ? "There is nothing to choose." : next.ways.length === 1 ? "There is one choice." : `There are ${next.ways.length} choices.`, false);
  }
}

/** What the keys walk to and the pointer takes hold of: the trunks, in the timeline the tasks. */
const holds = (): readonly Held[] => (picture?.view === "timeline" ? picture.tasks : picture?.trunks) ?? [];

function tellHeld(): void {
  if (!holds().some(({ origin }) => origin === current)) {
    current = undefined;
  }

  listHeld(holds(), current, list, stage);
}

function light(): void {
  if (root) {
    mark(root, kept.view ?? "plan", holds(), lit, current);
  }
}

function choose(view: View, question: Question): void {
  [kept.view, kept.question] = [view, question];
  editor.setState(kept);
  document.body.classList.toggle("deciding", view === "decide");
  viewTabs.choose(view);
  questionTabs.choose(question);
}

function say(says: string, isRefused: boolean): void {
  note.textContent = says;
  note.classList.toggle("refused", isRefused);
}

// The toolbar.

const viewTabs: Tabs<View> = new Tabs(
  views,
  (view) => element(`view-${view}`),
  (view) => {
    choose(view, kept.question ?? questions[0]);
    if (view === "decide") {
      choices.wait(kept.question ?? questions[0]);
    }

    editor.postMessage({ type: "view", view });
  },
);
const ask = (question: Question, answers?: Answers): void => {
  say(lookingIn, false);
  choose("decide", question);
  choices.wait(question);
  editor.postMessage({ type: "ask", question, ...(answers ? { answers } : {}) });
};
const questionTabs: Tabs<Question> = new Tabs(questions, (question) => element(`question-${question}`), ask);
const choices = new Choices(element("ways"), {
  ask,
  write: (question, version, way) => editor.postMessage({ type: "write", question, version, way }),
  show: (svg, name) => {
    if (svg === undefined) {
      sheet.replaceChildren();
      root = undefined;
    } else if (lay(svg, name, leads)) {
      light();
    }
  },
});

element("nearer").addEventListener("click", () => glass.zoom(1.25));
element("farther").addEventListener("click", () => glass.zoom(0.8));
element("whole").addEventListener("click", () => glass.whole());

// The pointer.

function choiceUnder(event: PointerEvent): Held | undefined {
  const all = holds();
  if (picture?.view === "front") {
    return nearestTo(glass.onSheet(event), all, 14 / glass.scale);
  }

  const origin = originAt(event.target);
  return all.find((choice) => choice.origin === origin && choice.x !== undefined);
}

stage.addEventListener("pointerdown", (event) => {
  if (event.button !== 0 || !event.isPrimary || held) {
    return;
  }

  const choice = choiceUnder(event);
  if (choice && picture && root) {
    held = new Holding(root, picture, choice, event.pointerId, glass.onSheet(event));
  } else {
    glass.beginPan(event);
  }

  stage.setPointerCapture(event.pointerId);
});

stage.addEventListener("pointermove", (event) => {
  if (held?.pointer !== event.pointerId || held.isDropped) {
    glass.pan(event);
    return;
  }

  const at = glass.onSheet(event);
  if (!held.isMoved) {
    if (held.distance(at) * glass.scale < 4) {
      return;
    }

    if (isFixed(held.choice) && held.view === "plan") {
      say(stays(held.choice), true);
      letGo();
      return;
    }

    stage.classList.add("holding");
    if (held.view !== "timeline") {
      editor.postMessage({ type: "hold", trunk: held.choice.name, view: held.view, version: held.version });
    }
  }

  held.follow(at);
});

stage.addEventListener("pointerup", (event) => {
  if (held?.pointer === event.pointerId && held.isMoved) {
    const { choice, view, version, at } = held;
    held.isDropped = true;
    stage.classList.remove("holding");
    pick(choice.origin);
    editor.postMessage(view === "timeline" ? { type: "dropTask", task: choice.name, version, x: at.x } : { type: "drop", trunk: choice.name, view, version, x: at.x, y: at.y });
    return;
  }

  const wasPanned = glass.endPan(event);
  const taken = held?.pointer === event.pointerId ? held.choice.origin : undefined;
  letGo();
  // While the pointer is captured events name the stage, so what lies under it is asked for.
  const origin = taken ?? originAt(document.elementFromPoint(event.clientX, event.clientY));
  if (!wasPanned && (origin !== undefined || document.body.classList.contains("stale"))) {
    pick(origin);
    editor.postMessage({ type: "reveal", origin: origin ?? "", isEntered: false });
  }
});

stage.addEventListener("pointercancel", (event) => {
  glass.endPan(event);
  if (held?.pointer === event.pointerId) {
    letGo();
  }
});

stage.addEventListener("dragstart", (event) => event.preventDefault());

function letGo(): void {
  held?.end();
  held = undefined;
  stage.classList.remove("holding");
}

function pick(origin: string | undefined): void {
  current = holds().find((choice) => choice.origin === origin)?.origin;
  tellHeld();
  light();
}

stage.addEventListener("wheel", (event) => glass.turn(event), { passive: false });

// The keys.

stage.addEventListener("keydown", (event) => {
  const action = keyAction(event, kept.view ?? "plan");
  if (!action) {
    return;
  }

  event.preventDefault();
  event.stopPropagation();
  const all = holds();
  const index = all.findIndex(({ origin }) => origin === current);
  switch (action.type) {
    case "walk": {
      const next = action.by === "first" ? 0 : action.by === "last" ? all.length - 1 : index < 0 ? (action.by > 0 ? 0 : all.length - 1) : (index + action.by + all.length) % all.length;
      pick(all[next]?.origin);
      const choice = all[next];
      if (choice?.x !== undefined && choice.y !== undefined) {
        glass.bringIntoSight({ x: choice.x, y: choice.y });
      }

      break;
    }
    case "enter":
      if (current !== undefined) {
        editor.postMessage({ type: "reveal", origin: current, isEntered: true });
      }

      break;
    case "step": {
      const choice = all[index];
      if (!choice) {
        say("Walk to a trunk with the arrow keys first.", true);
      } else if (isFixed(choice) && picture?.view === "plan") {
        say(stays(choice), true);
      } else if (picture) {
        editor.postMessage({ type: "step", trunk: choice.name, view: picture.view, right: action.right, back: action.back });
      }

      break;
    }
    case "days": {
      const choice = all[index];
      if (choice) {
        editor.postMessage({ type: "stepTask", task: choice.name, days: action.days });
      } else {
        say("Walk to a task with the arrow keys first.", true);
      }

      break;
    }
    case "zoom":
      glass.zoom(action.factor);
      break;
    case "whole":
      glass.whole();
      break;
    case "pan":
      glass.move(action.right, action.down);
      break;
    case "escape":
      if (held) {
        letGo();
        say("Nothing was moved.", false);
      } else {
        pick(undefined);
        say("", false);
      }

      break;
    case "undo":
    case "redo":
      editor.postMessage({ type: action.type });
      break;
  }
});

// What was just written from the list of choices is taken back there too; in a field the keys are the field's.
element("ways").addEventListener("keydown", (event) => {
  const action = event.target instanceof HTMLInputElement ? undefined : keyAction(event, "decide");
  if (action?.type === "undo" || action?.type === "redo") {
    event.preventDefault();
    event.stopPropagation();
    editor.postMessage({ type: action.type });
  }
});

editor.postMessage({ type: "ready" });
