/** What the reader puts in the place of the engine's own as it loads, for engines older than any here. */
const replaced = [
  [Array.prototype, "push"],
  [Function.prototype, "toString"],
  [JSON, "parse"],
  [JSON, "stringify"],
] as const;
const own = replaced.map(([of, name]) => [of, name, Object.getOwnPropertyDescriptor(of, name)] as const);

// The part that it would otherwise load with the first file.
// @ts-expect-error It comes without types.
await import("pdfjs-dist/legacy/build/pdf.worker.mjs");
const { getDocument, OPS } = await import("pdfjs-dist/legacy/build/pdf.mjs");

// Its own are many times slower, and everything that is tested in this process would run on them.
for (const [of, name, descriptor] of own) if (descriptor !== undefined) Object.defineProperty(of, name, descriptor);

export { getDocument, OPS };
