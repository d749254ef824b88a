import ts from "typescript";

/** A schema, or a part of one. */
type Schema = Readonly<Record<string, unknown>>;

/** Reads types and keeps those with a name of their own, each once. */
interface Reader {
  readonly checker: ts.TypeChecker;
  readonly named: Map<string, Schema>;
}

/** What stands for a person beside codes in what the command prints: the same in English. */
const inEnglish: Schema = { type: "string" };

/** The JSON schema of all that a file of types exports: whatever is printed is one of them. */
export function schemaOf(file: string): Schema {
  const program = ts.createProgram([file], {
    strict: true,
    target: ts.ScriptTarget.ES2023,
    module: ts.ModuleKind.NodeNext,
    types: [],
  });
  const reader: Reader = { checker: program.getTypeChecker(), named: new Map() };
  const source = program.getSourceFile(file);
  const exported = source === undefined ? undefined : reader.checker.getSymbolAtLocation(source);
  if (exported === undefined) throw new Error(`there are no types in ${file}`);
  const anyOf = reader.checker.getExportsOfModule(exported).map((symbol) => {
    const type = reader.checker.getDeclaredTypeOfSymbol(symbol);
    reader.named.set(symbol.name, { ...described(symbol, reader), ...shapeOf(type, reader) });
    return { $ref: `#/$defs/${symbol.name}` };
  });
  return {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    title: "What the command prints with --json",
    anyOf,
    $defs: Object.fromEntries([...reader.named].sort(([a], [b]) => (a < b ? -1 : 1))),
  };
}

/** A part by its type: by reference where the type has a name. */
function partOf(type: ts.Type, reader: Reader): Schema {
  const symbol = type.aliasSymbol ?? type.getSymbol();
  const isOfOurs = symbol?.declarations?.some((each) => !each.getSourceFile().isDeclarationFile) === true;
  const isGeneric = (type.aliasTypeArguments ?? argumentsOf(type, reader)).length > 0;
  if (symbol === undefined || symbol.name.startsWith("__") || !isOfOurs || isGeneric) return shapeOf(type, reader);
  const { name } = symbol;
  if (!reader.named.has(name)) {
    // Before its parts are read: they may be of the same type.
    reader.named.set(name, {});
    reader.named.set(name, { ...described(symbol, reader), ...shapeOf(type, reader) });
  }
  return { $ref: `#/$defs/${name}` };
}

function argumentsOf(type: ts.Type, { checker }: Reader): readonly ts.Type[] {
  const isReference = ((type as ts.ObjectType).objectFlags & ts.ObjectFlags.Reference) !== 0;
  return isReference ? checker.getTypeArguments(type as ts.TypeReference) : [];
}

function shapeOf(type: ts.Type, reader: Reader): Schema {
  const { checker } = reader;
  if (type.isUnion()) return unionOf(type, reader);
  if (type.isStringLiteral() || type.isNumberLiteral()) return { const: type.value };
  if (type.flags & ts.TypeFlags.BooleanLiteral) return { const: checker.typeToString(type) === "true" };
  if (type.flags & ts.TypeFlags.Null) return { type: "null" };
  if (type.flags & ts.TypeFlags.Number) return { type: "number" };
  // Exact text is branded, which leaves no trace in it.
  const isText =
    type.flags & ts.TypeFlags.String || (type.isIntersection() && type.types.some(({ flags }) => flags & ts.TypeFlags.String));
  if (isText) return { type: "string" };
  if (checker.isTupleType(type)) return tupleOf(type as ts.TypeReference, reader);
  if (checker.isArrayType(type))
    return { type: "array", items: partOf(checker.getTypeArguments(type as ts.TypeReference)[0] as ts.Type, reader) };
  return objectOf(type, reader);
}

function unionOf(union: ts.UnionType, reader: Reader): Schema {
  const parts = union.types.filter(({ flags }) => (flags & ts.TypeFlags.Undefined) === 0).map((each) => partOf(each, reader));
  const [first, ...more] = parts;
  if (first !== undefined && more.length === 0) return first;
  if (parts.every((each) => "const" in each)) {
    const values = parts.map((each) => each.const);
    return values.every((value) => typeof value === "boolean") ? { type: "boolean" } : { enum: values };
  }
  return { anyOf: parts.map((each, at) => (at === 0 ? each : withoutWords(each))) };
}

/** What the first of several shapes says of its parts need not be said again. */
function withoutWords(part: Schema): Schema {
  return JSON.parse(JSON.stringify(part, (key, value: unknown) => (key === "description" ? undefined : value))) as Schema;
}

function tupleOf(tuple: ts.TypeReference, reader: Reader): Schema {
  const { elementFlags } = tuple.target as ts.TupleType;
  const parts = reader.checker.getTypeArguments(tuple).map((each) => partOf(each, reader));
  const fixed = parts.filter((_, at) => ((elementFlags[at] ?? 0) & ts.ElementFlags.Variable) === 0);
  const rest = parts.find((_, at) => ((elementFlags[at] ?? 0) & ts.ElementFlags.Variable) !== 0);
  return { type: "array", minItems: fixed.length, ...(fixed.length > 0 && { prefixItems: fixed }), items: rest ?? false };
}

function objectOf(type: ts.Type, reader: Reader): Schema {
  const members = reader.checker.getPropertiesOfType(type);
  const isOptional = (member: ts.Symbol) => (member.flags & ts.SymbolFlags.Optional) !== 0;
  const properties = members.map((member) => {
    const part = partOf(reader.checker.getTypeOfSymbol(member), reader);
    return [member.name, { ...described(member, reader), ...part }] as const;
  });
  const has = (wanted: string) => members.some(({ name }) => name === wanted);
  const sentences = { ...(has("why") ? {} : { why: inEnglish }), ...(has("code") && !has("text") && { text: inEnglish }) };
  const required = members.filter((member) => !isOptional(member)).map(({ name }) => name);
  return {
    type: "object",
    properties: { ...Object.fromEntries(properties), ...sentences },
    ...(required.length > 0 && { required }),
    additionalProperties: false,
  };
}

function described(symbol: ts.Symbol, { checker }: Reader): Schema {
  const text = ts
    .displayPartsToString(symbol.getDocumentationComment(checker))
    .replace(/\{@link (\w+)\}/g, "$1")
    .replace(/\s+/g, " ")
    .trim();
  return text === "" ? {} : { description: text };
}
