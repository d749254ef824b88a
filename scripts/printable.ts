/** What steers a terminal, turns the direction of writing or cannot be seen; ends of lines may stay, and what joins letters. */
const steering = /(?!\n|\t|\r\n)\p{Cc}|\p{Zl}|\p{Zp}|(?![\u00ad\u200c\u200d])\p{Cf}/gu;

/**
 * A text that shows itself and does nothing else to a terminal: what would is written `\u001b`. In the
 * text of JSON that is the same string.
 */
export function printable(text: string): string {
  return text.replace(steering, (letter) =>
    Array.from({ length: letter.length }, (_, at) => `\\u${letter.charCodeAt(at).toString(16).padStart(4, "0")}`).join(""),
  );
}
