/** What can stand in an element. Text stays text: nothing that was typed can become markup. */
export type Child = Node | string | number | null | false | readonly Child[];

/** An attribute, or under `on…` what is done on an event. */
type Value = string | number | boolean | null | undefined | ((event: Event) => void);
type Attributes = Readonly<Record<string, Value>>;

/** Makes an element of a page. */
export function el<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  attributes: Attributes,
  ...children: readonly Child[]
): HTMLElementTagNameMap[Tag] {
  return filled(document.createElement(tag), attributes, children);
}

/** Makes an element of a drawing. */
export function svg<Tag extends keyof SVGElementTagNameMap>(
  tag: Tag,
  attributes: Attributes,
  ...children: readonly Child[]
): SVGElementTagNameMap[Tag] {
  return filled(document.createElementNS("http://www.w3.org/2000/svg", tag), attributes, children);
}

/** Puts these into an element in place of what is in it. */
export function fill(element: Element, ...children: readonly Child[]): void {
  element.replaceChildren(...nodesOf(children));
}

function filled<E extends Element>(element: E, attributes: Attributes, children: readonly Child[]): E {
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === "function") element.addEventListener(name.slice(2), value);
    else if (value !== null && value !== undefined && value !== false)
      element.setAttribute(name, value === true ? "" : String(value));
  }
  element.append(...nodesOf(children));
  return element;
}

function nodesOf(children: readonly Child[]): readonly (Node | string)[] {
  return children.flatMap((child): readonly (Node | string)[] => {
    if (child === null || child === false) return [];
    if (typeof child === "string" || child instanceof Node) return [child];
    return typeof child === "number" ? [String(child)] : nodesOf(child);
  });
}
