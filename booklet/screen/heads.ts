import { checkHead, type Head, readyHeads } from "../../src/index.ts";

/** A short mark of all that a head is, so that a link or a kept job is never followed on another. */
export function fingerprint(head: Head): string {
  let hash = 0x811c9dc5;
  for (const unit of new TextEncoder().encode(JSON.stringify(head))) hash = Math.imul(hash ^ unit, 0x01000193);
  return (hash >>> 0).toString(36);
}

/** Heads to choose from: the one the page is for, those its owner has kept, and the ready ones; each once. */
export function headsToChoose(own: Head, kept: readonly Head[]): readonly Head[] {
  const all = [own, ...kept, ...readyHeads];
  const marks = all.map(fingerprint);
  return all.filter((_, index) => marks.indexOf(marks[index] ?? "") === index);
}

/** Those heads of a kept list that are heads. */
export function headsKept(list: unknown): readonly Head[] {
  if (!Array.isArray(list)) return [];
  return list.flatMap((spec) => {
    const checked = checkHead(spec);
    return checked.ok ? [checked.head] : [];
  });
}
