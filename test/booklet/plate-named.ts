import type { Face, Head, OnHoles } from "../../src/index.ts";

/** Every face of a head's plates, by the name that print gives it: a face's own stands after that of its plate. */
export function facesPrinted({
  plates,
}: Head): readonly { readonly printed: string; readonly plate: string; readonly face: Face }[] {
  return plates.flatMap(({ name: plate, faces }) =>
    faces.map((face) => ({ printed: face.name === null ? plate : `${plate} ${face.name}`, plate, face })),
  );
}

/** The plate and face that a printed name means. */
export function plateNamed(text: string, head: Head): Pick<OnHoles, "plate" | "face"> {
  const named = facesPrinted(head).find(({ printed }) => printed === text);
  return { plate: named?.plate ?? text, face: named?.face.name ?? null };
}
