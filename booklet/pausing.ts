import { setImmediate } from "node:timers/promises";

/** How long work is watched and stopped. */
export interface Watched {
  /** Stops the work where it stands: what was asked for is rejected with the signal's reason. */
  readonly signal?: AbortSignal | undefined;
  /**
   * Called as the work goes on, with what is being done and, where it is known, how much of how much is
   * done: counts while they are worked out, then pages while they are drawn.
   */
  readonly onProgress?: ((doing: string, done?: number, total?: number) => void) | undefined;
}

/** In milliseconds: so long nothing else gets a turn. */
const longest = 15;

/** A step of long work: tells of it, lets others have a turn now and then, and stops where that is asked for. */
export type Pause = (doing: string, done?: number, total?: number) => Promise<void>;

/** Pauses for work that is watched. */
export function pausing({ signal, onProgress }: Watched): Pause {
  let last = performance.now();
  return async (doing, done, total) => {
    onProgress?.(doing, done, total);
    if (performance.now() - last > longest) {
      await setImmediate();
      last = performance.now();
    }
    signal?.throwIfAborted();
  };
}
