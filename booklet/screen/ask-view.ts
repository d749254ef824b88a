import { type Answer, exactSettings, indexAngle, indexDivisions, type Target, type Way } from "../../src/index.ts";
import { targetWords, wayShort } from "../../src/words/index.ts";
import { answerPanel, leading, notPossibleLine } from "./answer-panel.ts";
import type { Desk, View } from "./desk.ts";
import { el, fill } from "./el.ts";
import { newJob } from "./job.ts";
import { linkOf } from "./link.ts";
import { button, refusalOf } from "./pieces.ts";
import { type Question, questionTyped } from "./question.ts";
import { radiusForm } from "./radius-form.ts";
import { byEyeTold, moveTold, type Told } from "./told.ts";

/** Marks that the figure keys of a phone lack. */
const markKeys = ["°", "′", "″", "±", "/", "+", "−"] as const;

/** How long nothing is typed before the answer is read aloud, in ms. */
const quiet = 700;

/** Asks a count, an angle or a move, and answers as it is typed. */
export function askView(desk: Desk): View {
  let way: string | null = null;
  let all = false;
  const answer = el("div", { class: "answer" });
  const aloud = el("p", { class: "aloud", role: "status" });
  const input = el("input", {
    id: "question",
    class: "question",
    inputmode: "decimal",
    enterkeyhint: "done",
    autocomplete: "off",
    autocapitalize: "off",
    spellcheck: "false",
    placeholder: " ",
    "aria-describedby": "hint",
    oninput: asked,
    onkeydown: (event) => (event as KeyboardEvent).key === "Enter" && input.blur(),
  });
  const radius = radiusForm(desk, tell);
  let timer = 0;

  function asked() {
    way = null;
    all = false;
    tell();
    history.replaceState(null, "", `#${new URLSearchParams({ ask: input.value })}`);
  }

  function tell() {
    // Should anything fail, no answer to another question may be left standing.
    fill(answer);
    const { panel, short, rest } = said();
    fill(answer, panel);
    // The first line is painted before the rest is worked out, and nobody waits for the rest of what is typed over.
    const { value } = input;
    if (rest) requestAnimationFrame(() => setTimeout(() => input.value === value && fill(answer, rest())));
    clearTimeout(timer);
    timer = window.setTimeout(() => fill(aloud, short), quiet);
  }

  function said(): Told {
    try {
      const question = questionTyped(input.value);
      if (question === null) return { panel: null, short: "" };
      return told(question);
    } catch (error) {
      const sentence = refusalOf(error);
      return { panel: el("p", { class: "refused" }, sentence), short: sentence };
    }
  }

  function told(question: Question): Told {
    switch (question.kind) {
      case "target":
        return targetTold(question.target);
      case "move":
        return moveTold(desk, question.move);
      case "by-eye":
        return byEyeTold(question.read, ask);
    }
  }

  function ask(text: string) {
    input.value = text;
    asked();
  }

  function targetTold(target: Target): Told {
    const { head } = desk.head();
    // Only where gears are owned and none does are there so many near trains to compare that a phone takes its time.
    if (head.gears.length > 0 && exactSettings(desk.head(), target).next().done) {
      const line = notPossibleLine(target);
      return { panel: line, short: line.textContent ?? "", rest: () => answerTold(target).panel };
    }
    return answerTold(target);
  }

  function answerTold(target: Target): Told {
    const told = answerTo(desk, target, all);
    const panel = answerPanel(told, desk.head().head, {
      way,
      take(taken) {
        way = wayShort(taken);
        tell();
        answer.scrollIntoView();
      },
      listAll: all
        ? null
        : () => {
            all = true;
            tell();
          },
      work: (chosen) => begin(desk, target, chosen),
      radius: desk.radius(),
      radiusForm: radius,
    });
    return { panel, short: shortAnswer(told, leading(told, way)) };
  }

  const node = el(
    "div",
    {},
    el("label", { for: "question", class: "ask" }, "Count, angle or move"),
    input,
    el(
      "div",
      { class: "keys" },
      markKeys.map((mark) => button(mark, () => insert(input, mark))),
      lettersKey(input),
    ),
    el(
      "p",
      { id: "hint", class: "note" },
      "127 · 2°54′ · 1/124 rev · a move, to see what it gives: 0 + 22/33 · an angle read by eye: 2.9° ± 0.05°",
    ),
    aloud,
    answer,
  );
  return {
    node,
    show(asking) {
      input.value = asking.get("ask") ?? input.value;
      tell();
      if (input.value === "") input.focus();
    },
  };
}

function answerTo(desk: Desk, target: Target, all: boolean): Answer {
  const options = { all };
  return "divisions" in target
    ? indexDivisions(desk.head(), target.divisions, options)
    : indexAngle(desk.head(), target.angle, options);
}

function shortAnswer({ target, exact }: Answer, way: Way | null): string {
  const how = way === null ? "" : `: ${wayShort(way)}`;
  return `${targetWords(target)}${exact ? ", exact" : ", not possible exactly"}${how}`;
}

function begin(desk: Desk, target: Target, way: Way): void {
  location.hash = linkOf(newJob(desk.head().head, { kind: "divide", target, teeth: null }, wayShort(way)), desk.known);
}

/** Changes between the figures of a phone and its letters, which a few questions need. */
function lettersKey(input: HTMLInputElement): HTMLButtonElement {
  const key = button("abc", () => {
    const hadLetters = input.inputMode === "text";
    input.inputMode = hadLetters ? "decimal" : "text";
    fill(key, hadLetters ? "abc" : "123");
    // A phone changes its keys only when it comes to the field anew.
    input.blur();
    input.focus();
  });
  return key;
}

/** Types a mark where the caret stands. */
function insert(input: HTMLInputElement, mark: string): void {
  input.setRangeText(mark, input.selectionStart ?? input.value.length, input.selectionEnd ?? input.value.length, "end");
  input.focus();
  input.dispatchEvent(new Event("input", { bubbles: true }));
}
