/** What there is to choose from, beside its picture. Every text in it is put in as text; it decides nothing itself. */
import type { Answers, Field, Question, SheetMessage, Way } from "../src/messages";
import { written } from "./fields";
import { readPicture } from "./picture";

/** What a choice does outside this list. */
export interface ChoiceActions {
  ask(question: Question, answers: Answers): void;
  write(question: Question, version: number, way: number): void;
  /** Shows a picture on the stage; undefined for none. Pictures of one name are looked at from the same place. */
  show(picture: string | undefined, name: string): void;
}

/** The picture of all choices together. */
const together = -1;

/** The list of choices, with what can be asked otherwise above it. */
export class Choices {
  private sheet: SheetMessage | undefined;
  private chosen = together;
  private readonly small = new CSSStyleSheet();
  private readonly rules = new Set<string>();

  constructor(
    private readonly place: HTMLElement,
    private readonly actions: ChoiceActions,
  ) {
    document.adoptedStyleSheets.push(this.small);
  }

  /** Shows that an answer is under way; the last one of the same question stays until then. */
  wait(question: Question): void {
    this.place.ariaBusy = "true";
    if (this.sheet?.question !== question) {
      this.sheet = undefined;
      this.place.replaceChildren();
    }
  }

  /** Shows what came of a question. What was chosen stays chosen where it is there again, and who is writing into a field goes on writing. */
  take(next: SheetMessage): void {
    const before = this.sheet;
    const title = before?.question === next.question ? before.ways[this.chosen]?.title : undefined;
    const again = title === undefined ? -1 : next.ways.findIndex((way) => way.title === title);
    this.sheet = next;
    this.chosen = again >= 0 ? again : next.picture === undefined && next.ways.length > 0 ? 0 : together;
    const writing = this.writing();
    const scroll = this.place.scrollTop;
    this.place.ariaBusy = "false";
    this.rules.clear();
    this.place.replaceChildren(...this.parts(next));
    this.small.replaceSync([...this.rules].join("\n"));
    this.place.scrollTop = before?.question === next.question ? scroll : 0;
    this.goOn(writing);
    this.show();
  }

  private parts(sheet: SheetMessage): Node[] {
    const fields = document.createElement("div");
    fields.className = "fields";
    fields.append(...sheet.fields.map((field) => this.field(field)));
    const ways = sheet.ways.map((way, index) => this.way(way, index));
    const all = sheet.picture !== undefined && sheet.ways.some(({ picture }) => picture !== undefined) ? [this.all()] : [];
    return [
      ...(sheet.fields.length > 0 ? [fields] : []),
      ...sheet.says.map((says) => textOf("p", says, "says")),
      ...all,
      ...ways,
      ...sheet.notes.map((note) => textOf("p", note, "remark")),
    ];
  }

  private field({ name, label, value, hint, trouble }: Field): HTMLElement {
    const row = document.createElement("label");
    row.append(textOf("span", label));
    const input = document.createElement("input");
    input.name = name;
    input.value = value;
    input.dataset["sent"] = value;
    input.spellcheck = false;
    input.autocomplete = "off";
    input.ariaInvalid = String(trouble !== undefined);
    input.addEventListener("change", () => this.ask());
    // The page may hold no form, so the key is heard here.
    input.addEventListener("keydown", (event) => {
      if (event.key === "Enter") {
        event.preventDefault();
        this.ask();
      }
    });
    input.placeholder = hint;
    input.title = hint;
    row.append(input);
    if (trouble !== undefined) {
      const told = textOf("small", trouble);
      told.id = `field-${name}`;
      input.setAttribute("aria-describedby", told.id);
      row.append(told);
    }

    return row;
  }

  private all(): HTMLElement {
    const card = document.createElement("article");
    const choose = textOf("button", "all beside one another", "choose");
    choose.type = "button";
    card.append(choose);
    card.addEventListener("click", () => this.choose(together));
    return card;
  }

  private way({ title, says, picture, canBeWritten, deed }: Way, index: number): HTMLElement {
    const card = document.createElement("article");
    const choose = document.createElement("button");
    choose.type = "button";
    choose.className = "choose";
    choose.append(textOf("span", String(index + 1), "number"), textOf("span", title, "title"));
    card.append(choose);
    const read = picture === undefined ? undefined : readPicture(picture);
    if (read) {
      this.rules.add(read.styles);
      const frame = document.createElement("div");
      frame.className = "small";
      read.root.setAttribute("aria-hidden", "true");
      read.root.removeAttribute("role");
      frame.append(read.root);
      card.append(frame);
    }

    card.append(...says.map((line) => textOf("p", line)));
    if (canBeWritten) {
      const write = textOf("button", deed, "write");
      write.type = "button";
      write.addEventListener("click", (event) => {
        event.stopPropagation();
        this.choose(index);
        if (this.sheet) {
          this.actions.write(this.sheet.question, this.sheet.version, index);
        }
      });
      card.append(write);
    } else if (deed !== "") {
      card.append(textOf("p", deed, "cannot"));
    }

    card.addEventListener("click", () => this.choose(index));
    return card;
  }

  private choose(index: number): void {
    this.chosen = index;
    this.show();
  }

  private show(): void {
    const sheet = this.sheet;
    if (!sheet) {
      return;
    }

    const cards = [...this.place.querySelectorAll<HTMLElement>("article")];
    const shift = cards.length - sheet.ways.length;
    for (const [at, card] of cards.entries()) {
      const isChosen = at - shift === this.chosen;
      card.classList.toggle("chosen", isChosen);
      card.querySelector(".choose")!.setAttribute("aria-pressed", String(isChosen));
    }

    const own = sheet.ways[this.chosen]?.picture;
    this.actions.show(own ?? sheet.picture, `${sheet.question}${own === undefined ? "-together" : ""}`);
  }

  private ask(): void {
    const inputs = this.inputs();
    const answers = written(inputs.map(({ name, value, dataset }) => ({ name, value, sent: dataset["sent"] ?? "" })));
    if (this.sheet && answers) {
      inputs.forEach((input) => (input.dataset["sent"] = input.value));
      this.actions.ask(this.sheet.question, answers);
    }
  }

  private inputs(): HTMLInputElement[] {
    return [...this.place.querySelectorAll("input")];
  }

  private writing(): { name: string; value: string; sent: string; from: number | null; to: number | null } | undefined {
    const input = this.inputs().find((one) => one === document.activeElement);
    return input && { name: input.name, value: input.value, sent: input.dataset["sent"] ?? "", from: input.selectionStart, to: input.selectionEnd };
  }

  private goOn(writing: ReturnType<Choices["writing"]>): void {
    const input = writing && this.inputs().find(({ name }) => name === writing.name);
    if (writing && input) {
      if (writing.value !== writing.sent) {
        input.value = writing.value;
      }

      input.focus();
      input.setSelectionRange(writing.from, writing.to);
    }
  }
}

function textOf<Tag extends keyof HTMLElementTagNameMap>(tag: Tag, text: string, name?: string): HTMLElementTagNameMap[Tag] {
  const made = document.createElement(tag);
  made.textContent = text;
  if (name !== undefined) {
    made.className = name;
  }

  return made;
}
