import type { Head, OnHoles } from "../../src/index.ts";

/** The plate and face that a printed name means: faces stand after the name of their plate. */
export function plateNamed(text: string, { plates }: Head): Pick<OnHoles, "plate" | "face"> {
  for (const { name, faces } of plates) {
    for (const face of faces) {
      if (text === (face.name === null ? name : `${name} ${face.name}`)) return { plate: name, face: face.name };
    }
  }
  return { plate: text, face: null };
}
