/** Tells on the error stream what is being done. */
export interface Progress {
  /** Names the work, with how much of it is done where that is known. */
  tell(doing: string, done?: number, total?: number): void;
  /** Takes the line away again. */
  end(): void;
}

const patience = 1000;
const betweenTellings = 100;

/** The work of a command, told on a terminal once it takes over a second; a pipe or a file is told nothing. */
export function progress(stream: Pick<NodeJS.WriteStream, "isTTY" | "write"> = process.stderr): Progress {
  let next = performance.now() + patience;
  let width = 0;
  const show = (text: string) => {
    // Over what stood there, to its end.
    stream.write(`\r${text.padEnd(width)}\r${text}`);
    width = text.length;
  };
  return {
    tell(doing, done, total) {
      const now = performance.now();
      if (stream.isTTY !== true || now < next) return;
      next = now + betweenTellings;
      show(`… ${doing}${done === undefined || total === undefined ? "" : ` ${done} of ${total}`}`);
    },
    end() {
      if (width > 0) show("");
      width = 0;
    },
  };
}
