import { type Face, type Head, InputError, type Plate } from "../../src/index.ts";
import { counted, goesBy } from "../../src/words/index.ts";
import { armsInWords } from "./arms.ts";
import type { DrawingSheet } from "./figure-blocks.ts";
import { type Job, plannedJob, titleOf } from "./job.ts";
import { plateOf } from "./words.ts";

/** A drawing with the name of its file, without its ending. */
export interface NamedSheet extends DrawingSheet {
  readonly name: string;
}

/** Of a face whose circles were not measured, in mm: the outermost, and the innermost in parts of it. */
const ownOutermost = 150;
const ownInnermost = 0.46;

const asSize = "Print at 100 %, without fitting to the page, and measure both scales with a rule.";

/** Every face of every plate at true size, to be drilled through. */
export function faceSheets(head: Head): readonly NamedSheet[] {
  return head.plates.flatMap((plate) => plate.faces.map((face) => faceSheet(head, plate, face)));
}

function faceSheet(head: Head, plate: Plate, face: Face): NamedSheet {
  const name = plateOf(head, { plate: plate.name, face: face.name });
  const diameters = face.diameters ?? ownDiameters(face.circles.length);
  const each = face.circles.map((holes, index) => `${holes} on ${diameters[index]} mm`).join(", ");
  const whose =
    face.diameters === undefined
      ? "The head file gives no diameters: these are the drawing’s own, the angles are the plate’s."
      : "Diameters as in the head file.";
  return {
    name: `${head.id}-plate-${inName(name)}`,
    title: `Plate ${name}: ${head.name}`,
    lines: [`From the crank side; a cross is a hole, hole 0 of each circle is ringed. ${asSize}`, `Circles: ${each}. ${whose}`],
    figure: { type: "template", circles: face.circles, diameters },
  };
}

function ownDiameters(circles: number): readonly number[] {
  return Array.from({ length: circles }, (_, index) => {
    const part = circles === 1 ? 1 : ownInnermost + ((1 - ownInnermost) * index) / (circles - 1);
    return Math.round(ownOutermost * part * 10) / 10;
  });
}

/**
 * The card of one job, to be laid under the arms: their angle, with the holes of the move filled.
 *
 * @throws {@link InputError} as a job sheet does, and where the job takes no arms on one circle of a plate.
 */
export function armsSheet(head: Head, job: Job): NamedSheet {
  const plan = plannedJob(head, job);
  const { way } = plan;
  const title = titleOf(plan.target);
  if (way.by !== "moves" || goesBy(way) !== "index-holes" || way.setting.circle === null || way.setting.spaces === 0) {
    const problem = `${title} takes no arms on a circle of an index plate, so there is no card to lay under them; leave --job out for the plates`;
    throw new InputError([{ code: "cannot-be-made", place: "job", problem }]);
  }
  const { turns, spaces, circle, plate, face } = way.setting;
  const on = head.plates.find(({ name }) => name === plate)?.faces.find(({ name }) => name === face);
  const diameter = on?.diameters?.[on.circles.indexOf(circle)];
  const size =
    diameter === undefined ? "The circle’s diameter is not known: only the angle is at true size." : `At true size. ${asSize}`;
  return {
    name: `${head.id}-arms-${inName(title)}`,
    title: `${title}: ${counted(turns, "turn")} + ${counted(spaces, "space")} of the ${circle} circle, plate ${plateOf(head, way.setting)}`,
    lines: [
      `The ${armsInWords({ circle, spaces })}. Lay it under the arms, the pin’s hole on 0, or set them to its edges.`,
      `${size} ${head.name}.`,
    ],
    figure: { type: "plate", circles: [circle], diameters: [diameter ?? ownOutermost], chosen: { circle, spaces } },
  };
}

/** A name as a part of a file's: letters, digits and hyphens. */
function inName(text: string): string {
  const plain = text
    .toLowerCase()
    .replace(/[^a-z0-9.]+/g, "-")
    .replace(/^[-.]+|[-.]+$/g, "");
  return plain === "" ? "unnamed" : plain;
}
