import { Comment, CommentTag, Converter, ReflectionKind } from "typedoc";

/**
 * What each folder is to somebody who comes with a job. The folders are the order of the house, so
 * that nothing need be marked by hand in the code.
 */
const categories = [
  [/^src\/(?:answer|table)\.ts$/, "Looking up"],
  [/^src\/head\//, "Describing a head"],
  [/^src\/setting\//, "Settings"],
  [/^src\/(?:near|instead)\//, "Where it is not possible"],
  [/^src\/kit\//, "What a kit does, and what to add"],
  [/^src\/machine\//, "The job at the machine"],
  [/^src\/gear\//, "Gears and their repair"],
  [/^src\/(?:mechanism|methods|search)\//, "How settings are found and proved"],
  [/^src\/number\//, "Exact values, lengths and faults"],
  [/^src\/words\/gear\//, "Gears and their repair, in words"],
  [/^src\/words\/(?:spreadsheet\/\w+|json)\.ts$/, "For other programs"],
  [/^src\/words\//, "In words"],
  [/^booklet\//, "Printing"],
];

/** Puts every export into the category of its folder. */
export function load(app) {
  app.converter.on(Converter.EVENT_RESOLVE_BEGIN, ({ project }) => {
    for (const reflection of project.getReflectionsByKind(ReflectionKind.SomeExport)) {
      const path = project.getSymbolIdFromReflection(reflection)?.packagePath;
      const category = categories.find(([folder]) => path !== undefined && folder.test(path))?.[1];
      if (category !== undefined) for (const each of [reflection, ...(reflection.signatures ?? [])]) mark(each, category);
    }
  });
}

function mark(documented, category) {
  documented.comment ??= new Comment();
  documented.comment.blockTags.push(new CommentTag("@category", [{ kind: "text", text: category }]));
}
