import type { Fault, Head, Plate, Scale } from "../../src/index.ts";
import { el, fill } from "./el.ts";
import { button, field } from "./pieces.ts";

/** The description of a head as a form. */
export interface HeadForm {
  readonly node: HTMLElement;
  /** What the form says, to be checked. */
  spec(): unknown;
  /** Shows each fault below the field that it is of, and gives back those that are of no field. */
  tell(faults: readonly Fault[]): readonly Fault[];
}

/** A field for one part of a head, with the place of that part. */
interface Part {
  /** The place, as a fault names it; null where the part is left out. */
  place(): string;
  readonly node: HTMLElement;
  readonly said: HTMLElement;
}

/** A form that is filled with a head. */
export function headForm(head: Head, changed: () => void): HeadForm {
  const parts: Part[] = [];
  const plates: PlateRow[] = [];
  const text = (label: string, value: string, place: () => string, mode = "text") => {
    const input = el("input", { inputmode: mode, autocomplete: "off", oninput: changed });
    input.value = value;
    const said = el("p", { class: "refused" });
    const node = field(label, input, said);
    parts.push({ place, node, said });
    return { node, read: () => input.value.trim() };
  };
  const name = text("Name", head.name, () => "name");
  const ratio = text("Worm ratio; empty where there is no crank", head.wormRatio ?? "", () => "wormRatio");
  const gears = text("Change gears, every one", head.gears.join(" "), () => "gears");
  const idlers = text("Gears kept as idlers; empty if any will do", (head.idlers ?? []).join(" "), () => "idlers");
  const ring = text("Marks of the degree ring; empty for none", scaleWritten(head.ring), () => "ring");
  const dial = text("Marks of the dial and lines of its vernier", scaleWritten(head.dial), () => "dial");
  const rear = el("input", { type: "checkbox", onchange: changed });
  rear.checked = head.rearPin;
  const list = el("div", {});
  const addPlate = (plate: Plate) => {
    const place = () => `plates[${plates.indexOf(row)}]`;
    const named = text("Plate", plate.name, () => `${place()}.name`);
    const circles = text("Holes of its circles; / before a second face", circlesWritten(plate), place);
    const drop = button("Take it off", () => {
      plates.splice(plates.indexOf(row), 1);
      row.node.remove();
      changed();
    });
    const row: PlateRow = {
      node: el("div", { class: "row of-plate" }, named.node, circles.node, drop),
      name: named.read,
      circles: circles.read,
      plate,
    };
    plates.push(row);
    list.append(row.node);
  };
  head.plates.forEach(addPlate);
  const add = button("Add a plate", () => {
    addPlate({ name: String(plates.length + 1), faces: [{ name: null, circles: [] }] });
    changed();
  });
  return {
    node: el(
      "div",
      {},
      name.node,
      ratio.node,
      list,
      add,
      el("label", { class: "tick" }, rear, "A rear pin holds the plate"),
      gears.node,
      idlers.node,
      ring.node,
      dial.node,
    ),
    spec: () => ({
      ...head,
      // Another head has another name in files.
      id: name.read() === head.name ? head.id : undefined,
      name: name.read(),
      wormRatio: ratio.read() || null,
      plates: plates.map(({ name, circles, plate }) => ({ name: name(), ...facesTyped(circles(), plate) })),
      rearPin: rear.checked,
      gears: numbersOf(gears.read()),
      idlers: idlers.read() === "" ? null : numbersOf(idlers.read()),
      gearing: head.gearing ?? (gears.read() === "" ? null : {}),
      ring: scaleTyped(ring.read(), head.ring, "angle"),
      dial: scaleTyped(dial.read(), head.dial, "marks"),
      mounted: plates.some((row) => row.name() === head.mounted) ? head.mounted : null,
    }),
    tell: (faults) => told(faults, parts),
  };
}

interface PlateRow {
  readonly node: HTMLElement;
  readonly name: () => string;
  readonly circles: () => string;
  /** As it was before it was edited. */
  readonly plate: Plate;
}

/** Each fault goes to the field whose place it is in, the closest one first. */
function told(faults: readonly Fault[], parts: readonly Part[]): readonly Fault[] {
  const isIn = (place: string, part: string) =>
    place === part || (place.startsWith(part) && /^[.[]/.test(place.slice(part.length)));
  const partOf = ({ place }: Fault) =>
    parts.filter((part) => isIn(place, part.place())).sort((a, b) => b.place().length - a.place().length)[0];
  for (const part of parts) {
    const own = faults.filter((fault) => partOf(fault) === part);
    fill(part.said, own.map(({ problem }) => problem).join("; "));
    part.node.querySelector("input")?.setAttribute("aria-invalid", String(own.length > 0));
  }
  return faults.filter((fault) => partOf(fault) === undefined);
}

/** Numbers as they were typed; what is none stays text, for the check to refuse by its place. */
function numbersOf(text: string): readonly (number | string)[] {
  return text
    .split(/[\s,;]+/)
    .filter((part) => part !== "")
    .map((part) => (/^\d{1,9}$/.test(part) ? Number(part) : part));
}

function circlesWritten({ faces }: Plate): string {
  return faces.map(({ circles }) => circles.join(" ")).join(" / ");
}

/** What stands as it was keeps what the form does not show of it. */
function facesTyped(text: string, plate: Plate): object {
  if (text === circlesWritten(plate)) return { faces: plate.faces };
  const [front = "", ...others] = text.split("/");
  if (others.length === 0) return { circles: numbersOf(front) };
  const names = ["front", "back"];
  return {
    faces: [front, ...others].map((circles, index) => ({ name: names[index] ?? String(index + 1), circles: numbersOf(circles) })),
  };
}

function scaleWritten(scale: Scale | null): string {
  if (scale === null) return "";
  return `${scale.marksPerTurn}${scale.vernierLines > 1 ? ` ${scale.vernierLines}` : ""}`;
}

function scaleTyped(text: string, before: Scale | null, figures: Scale["figures"]): object | null {
  const [marksPerTurn, vernierLines = 1] = numbersOf(text);
  return marksPerTurn === undefined ? null : { marksPerTurn, vernierLines, figures: before?.figures ?? figures };
}
