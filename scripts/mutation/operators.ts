import ts from "typescript";

/** One small change of an expression or a statement: what it is called, and what stands there then. */
export interface Change {
  readonly what: string;
  readonly instead: string;
}

/** What may stand in place of an operator. */
const otherOperator: Readonly<Record<string, string>> = {
  "<": "<=",
  "<=": "<",
  ">": ">=",
  ">=": ">",
  "===": "!==",
  "!==": "===",
  "+": "-",
  "-": "+",
  "*": "/",
  "/": "*",
  "%": "*",
  "&&": "||",
  "||": "&&",
};

const otherCall: Readonly<Record<string, string>> = {
  "Math.min": "Math.max",
  "Math.max": "Math.min",
  "Math.floor": "Math.ceil",
  "Math.ceil": "Math.floor",
  "Math.round": "Math.floor",
  "Math.abs": "",
  "Math.sqrt": "",
};
const otherMethod = new Map([
  ["some", "every"],
  ["every", "some"],
  ["find", "findLast"],
  ["findLast", "find"],
]);
/** Methods that can be left out, so that what they are called on stands as it is. */
const droppable = new Set(["sort", "toSorted", "filter", "reverse", "toReversed", "slice", "abs", "neg"]);

/** The changes of a node, none where it has no meaning of its own. */
export function changesOf(node: ts.Node, source: ts.SourceFile): readonly Change[] {
  const text = (of: ts.Node) => of.getText(source);
  if (ts.isBinaryExpression(node)) return ofBinary(node, text);
  if (ts.isPrefixUnaryExpression(node)) return ofPrefix(node, text);
  if (ts.isNumericLiteral(node)) return ofNumber(node, text);
  if (node.kind === ts.SyntaxKind.TrueKeyword || node.kind === ts.SyntaxKind.FalseKeyword) return ofBoolean(node);
  if (ts.isCallExpression(node)) return ofCall(node, text);
  return [];
}

/** Whether a node is what decides a branch; what may stand there instead. */
export function decisionsOf(node: ts.Node): readonly string[] {
  const { parent } = node;
  if (ts.isConditionalExpression(parent) && parent.condition === node) return ["true", "false"];
  if (ts.isIfStatement(parent) && parent.expression === node) return ["true", "false"];
  if (ts.isWhileStatement(parent) && parent.expression === node) return ["false"];
  return ts.isForStatement(parent) && parent.condition === node ? ["false"] : [];
}

type TextOf = (node: ts.Node) => string;

function ofBinary({ left, operatorToken, right }: ts.BinaryExpression, text: TextOf): readonly Change[] {
  const was = text(operatorToken);
  const other = otherOperator[was];
  if (other === undefined || [left, right].some((side) => was === "+" && ts.isStringLiteralLike(side))) return [];
  return [{ what: `${was} → ${other}`, instead: `${text(left)} ${other} ${text(right)}` }];
}

function ofPrefix({ operator, operand }: ts.PrefixUnaryExpression, text: TextOf): readonly Change[] {
  if (operator !== ts.SyntaxKind.ExclamationToken && operator !== ts.SyntaxKind.MinusToken) return [];
  return [{ what: operator === ts.SyntaxKind.MinusToken ? "− left out" : "! left out", instead: text(operand) }];
}

/** What stands after `??` is there for the compiler, and mostly never used. */
function ofNumber(node: ts.NumericLiteral, text: TextOf): readonly Change[] {
  const { parent } = node;
  if (ts.isBinaryExpression(parent) && text(parent.operatorToken) === "??") return [];
  if (ts.isPropertyAssignment(parent) && parent.name === node) return [];
  return [{ what: `${text(node)} → one more`, instead: `${text(node)} + 1` }];
}

/** The keys of options are named in objects whose values say nothing. */
function ofBoolean(node: ts.Node): readonly Change[] {
  const call = node.parent.parent?.parent;
  if (ts.isPropertyAssignment(node.parent) && call !== undefined && ts.isCallExpression(call)) {
    if (ts.isIdentifier(call.expression) && call.expression.text === "keysOf") return [];
  }
  const other = node.kind === ts.SyntaxKind.TrueKeyword ? "false" : "true";
  return [{ what: `→ ${other}`, instead: other }];
}

function ofCall({ expression, arguments: given }: ts.CallExpression, text: TextOf): readonly Change[] {
  const list = given.map(text).join(", ");
  const other = otherCall[text(expression)];
  if (other !== undefined) return [{ what: `${text(expression)} → ${other || "left out"}`, instead: `${other}(${list})` }];
  if (!ts.isPropertyAccessExpression(expression)) return [];
  const { name, expression: on } = expression;
  const changes: Change[] = [];
  const method = otherMethod.get(name.text);
  if (method !== undefined) changes.push({ what: `${name.text} → ${method}`, instead: `${text(on)}.${method}(${list})` });
  if (droppable.has(name.text)) changes.push({ what: `.${name.text} left out`, instead: text(on) });
  return changes;
}
