/** The part of pdfkit's stream in use that its published types lack. */
interface Untyped {
  push(chunk: Uint8Array | null): boolean;
}

const blockSize = 65_536;

/**
 * Gathers what a document writes, some ten thousand pieces of a few bytes each, in blocks: the
 * stream itself would keep every piece until the drawing is done.
 */
export function bytesOf(document: PDFKit.PDFDocument): Promise<Uint8Array> {
  const blocks: Uint8Array[] = [];
  let block = new Uint8Array(blockSize);
  let used = 0;
  const add = (chunk: Uint8Array) => {
    for (let from = 0; from < chunk.length; ) {
      if (used === blockSize) {
        blocks.push(block);
        block = new Uint8Array(blockSize);
        used = 0;
      }
      const taken = chunk.subarray(from, from + blockSize - used);
      block.set(taken, used);
      used += taken.length;
      from += taken.length;
    }
  };
  // The first line is written when a document is opened.
  const opening = document.read() as Uint8Array | null;
  if (opening !== null) add(opening);
  return new Promise((resolve) => {
    (document as unknown as Untyped).push = (chunk) => {
      if (chunk === null) resolve(Buffer.concat([...blocks, block.subarray(0, used)]));
      else add(chunk);
      return true;
    };
  });
}
