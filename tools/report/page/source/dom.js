// Makes elements. Every text of the data goes through textContent, so no name can become markup.

const SVG = "http://www.w3.org/2000/svg";

function fill(node, attributes, children) {
  for (const [name, value] of Object.entries(attributes ?? {})) {
    if (value === undefined || value === null || value === false) continue;
    if (name === "on") for (const [event, handler] of Object.entries(value)) node.addEventListener(event, handler);
    else if (name === "style") for (const [key, text] of Object.entries(value)) node.style.setProperty(key, text);
    else node.setAttribute(name, value === true ? "" : String(value));
  }
  for (const child of children.flat(Infinity)) {
    if (child === undefined || child === null || child === false) continue;
    node.append(child instanceof Node ? child : document.createTextNode(String(child)));
  }
  return node;
}

export const el = (tag, attributes, ...children) => fill(document.createElement(tag), attributes, children);
export const svg = (tag, attributes, ...children) => fill(document.createElementNS(SVG, tag), attributes, children);

/// A name from the data: isolated, so that right-to-left text cannot reorder what stands beside it.
export const name = (text, attributes) => el("bdi", attributes, text ?? "");

/// Writes only what changed: texts are set in every frame.
export function setText(node, text) {
  if (node.firstChild?.data !== text) node.textContent = text;
}
export function setAttribute(node, attribute, value) {
  if (node.getAttribute(attribute) !== value) node.setAttribute(attribute, value);
}
