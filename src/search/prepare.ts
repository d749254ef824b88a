import { checkIsHead } from "../head/check-is-head.ts";
import type { Head } from "../head/head.ts";
import { type HeadLayout, layOut, withMounted } from "../methods/layout.ts";

/**
 * A head laid out once, to be asked many times: its circles, its change gears sorted for looking up
 * and the trains found so far. Whatever takes a head takes this as well, and answers the same,
 * sooner. It is a tool and not data: keep the head itself in files.
 */
export interface PreparedHead {
  readonly head: Head;
  /** @internal */
  readonly layout: HeadLayout;
}

/**
 * Lays out a head for many questions, such as a table or a book; one that is prepared stays as it is.
 *
 * @example
 * ```ts
 * indexDivisions(prepare(readyHeads[0]), 59).settings[0].circle; // 15
 * ```
 */
export function prepare(head: Head | PreparedHead): PreparedHead {
  return isPrepared(head) ? head : { head, layout: layOut(headOf(head)) };
}

/** The layout of a head, made now where it was not before, with the plate on it that was asked for. */
export function layoutOf(on: Head | PreparedHead, mounted: string | undefined): HeadLayout {
  return isPrepared(on) ? withMounted(on.layout, mounted) : layOut(headOf(on), mounted);
}

/**
 * The head itself.
 *
 * @throws {@link InputError} when it is none, such as the description that a head is made of.
 */
export function headOf(on: Head | PreparedHead): Head {
  if (isPrepared(on)) return on.head;
  checkIsHead(on);
  return on;
}

function isPrepared(on: unknown): on is PreparedHead {
  return typeof on === "object" && on !== null && "layout" in on;
}
