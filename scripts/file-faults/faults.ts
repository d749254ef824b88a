import { contents, newFolder, type Ran, shell } from "./folder.ts";

/** A way to write a file, and the name of the file that it writes. */
interface Writer {
  readonly words: (file: string) => string;
  readonly name: string;
}

const writers: Readonly<Record<string, Writer>> = {
  sheet: { words: (file) => `booklet --job 12 --out ${file}`, name: "sheet.pdf" },
  page: { words: (file) => `booklet --as screen --out ${file}`, name: "page.html" },
  repair: { words: (file) => `repair 86 --module 2 --damaged 31 --sheet ${file}`, name: "repair.pdf" },
};

/** What is wrong with a place: made ready by a line of the shell, `F` being the file. */
const wrongPlaces: Readonly<Record<string, { readonly ready: string; readonly file?: string; readonly run?: string }>> = {
  "a directory": { ready: "mkdir F" },
  "links in a circle": { ready: "ln -s F F" },
  "no such directory": { ready: ":", file: "nowhere/F" },
  "a file for a directory": { ready: "echo x > file", file: "file/F" },
  "a folder that may not be written": { ready: "mkdir shut; chmod 555 shut", file: "shut/F" },
  "a folder that may not be looked into": { ready: "mkdir shut; chmod 000 shut", file: "shut/F" },
  "a file that may not be written": { ready: "$T WORDS >/dev/null; chmod 444 F" },
  "another program's file": { ready: "echo mine > F" },
  "a file that was added to": {
    ready: "$T WORDS >/dev/null; printf '\\n<!-- x -->startxref\\n1\\n%%EOF\\n' >> F; sed -i 's/<title>/<title> /' F",
  },
  "too long a name": { ready: ":", file: `${"n".repeat(252)}F` },
  "a full device": { ready: ":", file: "/dev/full" },
  "no room for so large a file": { ready: ":", run: "trap '' XFSZ; ulimit -f 4; $T WORDS" },
};

/** Faults that are not of a place to write to. */
const others: Readonly<Record<string, { readonly ready: string; readonly run: string }>> = {
  "an output that is full": { ready: ":", run: "$T 127 > /dev/full" },
  "an output that is full, of data": { ready: ":", run: "$T 127 --json > /dev/full" },
  "an output that is full, of help": { ready: ":", run: "$T --help > /dev/full" },
  "a sheet to an output that is full": { ready: ":", run: "$T booklet --job 12 --out - > /dev/full" },
  "an input that is a directory": { ready: ":", run: "$T 12 --head - < /" },
  "a head file that may not be read": { ready: "echo '{}' > h.json; chmod 000 h.json", run: "$T 12 --head h.json" },
  "a head file in a circle of links": { ready: "ln -s h.json h.json", run: "$T 12 --head h.json" },
  "a head file in a folder that is shut": {
    ready: "mkdir shut; echo '{}' > shut/h.json; chmod 000 shut",
    run: "$T 12 --head shut/h.json",
  },
};

interface Judged {
  readonly what: string;
  readonly fault: string | null;
}

/** Brings about every fault, and judges: one sentence, status 3, and nothing in the folder changed. */
export function allFaults(): readonly Judged[] {
  const places = Object.entries(writers).flatMap(([writer, { words, name }]) =>
    Object.entries(wrongPlaces).map(([what, { ready, file = "F", run = "$T WORDS" }]) => {
      const filled = (line: string) =>
        line.replaceAll("WORDS", words(file)).replaceAll(/\bF\b/g, name).replaceAll("nF", `n${name}`);
      return judged(`${writer}: ${what}`, filled(ready), filled(run));
    }),
  );
  return [...places, ...Object.entries(others).map(([what, { ready, run }]) => judged(what, ready, run))];
}

function judged(what: string, ready: string, run: string): Judged {
  const { path, remove } = newFolder();
  shell(ready, path);
  const before = contents(path);
  const ran = shell(run, path);
  const fault = faultOf(ran) ?? (contents(path) === before ? null : "the folder is not as it was");
  shell("chmod -R u+rwX .", path);
  remove();
  return { what, fault };
}

function faultOf({ status, stdout, stderr }: Ran): string | null {
  if (status !== 3) return `ended with ${status}: ${(stderr || stdout).slice(0, 300)}`;
  if (!/^turns-and-holes: [^\n]+\n$/.test(stderr) || /node:|\bat .*:\d+/.test(stderr)) return `said ${stderr.slice(0, 300)}`;
  return stdout === "" ? null : `printed ${stdout.slice(0, 100)}`;
}
