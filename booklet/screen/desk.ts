import { type Head, type PreparedHead, prepare, readyHeads } from "../../src/index.ts";
import type { AtRadius } from "../../src/words/index.ts";
import { fingerprint, headsKept, headsToChoose } from "./heads.ts";
import { keepFor } from "./keep.ts";

/** What the views share: the head that answers, and what the browser keeps. */
export interface Desk {
  /** The heads that every copy of this page has: the one it was made for, and the ready ones. */
  readonly known: readonly Head[];
  head(): PreparedHead;
  /** Every head to choose from. */
  heads(): readonly Head[];
  /** Takes a head to answer with from now on; one that is new is kept. */
  take(head: Head): void;
  /** The radius that errors are told at, and the unit of lengths; null where none was given. */
  radius(): AtRadius | null;
  setRadius(radius: AtRadius | null): void;
  /** The jobs that were begun, as links, the last one first. */
  jobs(): readonly string[];
  setJobs(links: readonly string[]): void;
}

/** Lays out the desk of a page. */
export function deskFor(own: Head): Desk {
  const keep = keepFor(fingerprint(own));
  let kept = headsKept(keep.read("heads"));
  let current = prepare(headsToChoose(own, kept).find((head) => fingerprint(head) === keep.read("head")) ?? own);
  return {
    known: [own, ...readyHeads],
    head: () => current,
    heads: () => headsToChoose(own, kept),
    take(head) {
      if (!headsToChoose(own, kept).some((each) => fingerprint(each) === fingerprint(head))) {
        kept = [head, ...kept];
        keep.write("heads", kept);
      }
      current = prepare(head);
      keep.write("head", fingerprint(head));
    },
    radius: () => radiusKept(keep.read("radius")),
    setRadius: (radius) => keep.write("radius", radius),
    jobs: () => linksKept(keep.read("jobs")),
    setJobs: (links) => keep.write("jobs", links),
  };
}

function radiusKept(value: unknown): AtRadius | null {
  const { mm, unit } = (typeof value === "object" && value !== null ? value : {}) as Partial<AtRadius>;
  return typeof mm === "number" && mm > 0 && (unit === "mm" || unit === "in") ? { mm, unit } : null;
}

function linksKept(value: unknown): readonly string[] {
  return Array.isArray(value) ? value.filter((link) => typeof link === "string") : [];
}

/** One of the pages in the page. */
export interface View {
  readonly node: HTMLElement;
  /** Shows what a link says after the name of the view. */
  show(said: URLSearchParams): void;
}
