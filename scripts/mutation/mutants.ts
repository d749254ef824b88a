import ts from "typescript";
import { changesOf, decisionsOf } from "./operators.ts";

/** One small change of the source. */
export interface Mutant {
  readonly id: number;
  readonly file: string;
  readonly line: number;
  /** The source where it is changed, shortened; of a number or a truth value what it stands in, which tells it from others. */
  readonly at: string;
  readonly what: string;
}

/** A file with all its mutants in it, of which `$m(id)` chooses one when it runs. */
export interface Mutated {
  readonly text: string;
  readonly mutants: readonly Mutant[];
}

/**
 * Writes every mutant of a file into it, each to be chosen when it runs: so all are compiled once, and
 * the tests that reach one are known from a single run.
 */
export function mutated(file: string, text: string, firstId: number): Mutated {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2023, true);
  const mutants: Mutant[] = [];
  const add = (node: ts.Node, what: string): number => {
    const id = firstId + mutants.length;
    const line = source.getLineAndCharacterOfPosition(node.getStart(source)).line + 1;
    mutants.push({ id, file, line, what, at: named(node).getText(source).replace(/\s+/g, " ").slice(0, 80) });
    return id;
  };
  const render = (node: ts.Node): string => {
    const own = () => text.slice(node.getStart(source), node.end);
    if (isWithoutMeaning(node)) return own();
    const changes = changesOf(node, source).map(({ what, instead }) => ({ id: add(node, what), instead }));
    for (const instead of ts.isSourceFile(node) ? [] : decisionsOf(node))
      changes.push({ id: add(node, `→ ${instead}`), instead });
    const isCall = ts.isExpressionStatement(node) && ts.isCallExpression(node.expression);
    const dropped = isCall ? add(node, "left out") : null;
    let [out, from] = ["", node.getStart(source)];
    node.forEachChild((child) => {
      out += text.slice(from, child.getStart(source)) + render(child);
      from = child.end;
    });
    out += text.slice(from, node.end);
    // In braces of its own, so that an `else` that follows stays with the `if` before it.
    if (dropped !== null) return `{ if (!$m(${dropped})) { ${out} } }`;
    return changes.length === 0 ? out : `(${changes.map(({ id, instead }) => `$m(${id}) ? (${instead}) : `).join("")}(${out}))`;
  };
  const rendered = text.slice(0, source.getStart(source)) + render(source) + text.slice(source.end);
  return { text: rendered, mutants };
}

/** What a change is named by. */
function named(node: ts.Node): ts.Node {
  const isValue =
    ts.isNumericLiteral(node) || node.kind === ts.SyntaxKind.TrueKeyword || node.kind === ts.SyntaxKind.FalseKeyword;
  return isValue ? node.parent : node;
}

function isWithoutMeaning(node: ts.Node): boolean {
  return (
    ts.isTypeNode(node) ||
    ts.isInterfaceDeclaration(node) ||
    ts.isTypeAliasDeclaration(node) ||
    ts.isImportDeclaration(node) ||
    ts.isExportDeclaration(node)
  );
}
