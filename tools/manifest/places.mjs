/** Rules on what the manifest points to: addresses, files, icons, the metadata of the functions. */
import { addresses, allBelow, at, named, nameOf, resourceOf, typeOf } from "./reading.mjs";

export function addressesAreSafe(manifest, { allowLocal }) {
  return addresses(manifest).flatMap(({ element, value }) => {
    if (!URL.canParse(value)) return [`${nameOf(element)} is ${value}; it must be a whole address`];
    const { protocol, hostname } = new URL(value);
    if (protocol !== "https:") return [`${nameOf(element)} is ${value}; it must begin with https`];
    const isLocal = hostname === "localhost" || hostname === "127.0.0.1";
    return isLocal && !allowLocal ? [`${nameOf(element)} is ${value}; a manifest for others names no localhost`] : [];
  });
}

export function addressesShareOneBase(manifest) {
  const { base } = manifest;
  if (base === "") return ["DefaultSettings has no SourceLocation to take the base address from"];
  return addresses(manifest)
    .filter(({ value }) => !`${value}/`.startsWith(base) && new URL(base).origin !== value.replace(/\/$/, ""))
    .map(({ element, value }) => `${nameOf(element)} is ${value}; it must lie under ${base}`);
}

export function onePageIsShared(manifest) {
  const { root, overrides, source } = manifest;
  if (!overrides) return [];
  const runtimes = allBelow(overrides).filter(({ localName }) => localName === "Runtime");
  const wrong = [];
  if (runtimes.length !== 1) wrong.push(`there are ${runtimes.length} runtimes; there must be one`);
  for (const runtime of runtimes) {
    if (runtime.getAttribute("lifetime") !== "long") wrong.push("the runtime's lifetime must be long, or pane and functions do not share it");
  }
  const shared = runtimes[0]?.getAttribute("resid");
  const points = allBelow(overrides).filter(({ localName }) => localName === "Page" || localName === "Action");
  for (const point of points) {
    const resid = at(point, "SourceLocation")?.getAttribute("resid");
    if (resid !== shared) wrong.push(`${point.localName} opens ${resid}; it must open ${shared}, the shared page`);
  }
  if (allBelow(root).some(({ localName }) => localName === "TaskpaneId")) wrong.push("TaskpaneId does not go with a shared page");
  const address = shared && resourceOf(manifest, shared)?.getAttribute("DefaultValue");
  if (address !== source) wrong.push(`DefaultSettings opens ${source}; it must open ${address}, the shared page`);
  return wrong;
}

const NAMESPACE = /^[A-Z][A-Z0-9_]{1,31}$/;

export function namespaceIsLegal(manifest) {
  const resid = allBelow(manifest.root).find(({ localName }) => localName === "Namespace")?.getAttribute("resid");
  const namespace = resid && resourceOf(manifest, resid)?.getAttribute("DefaultValue");
  if (!namespace) return ["there is no Namespace"];
  const wrong = NAMESPACE.test(namespace) ? [] : [`the namespace is ${namespace}; it must be 2 to 32 capitals, digits or _, a letter first`];
  const looksLikeCell = /^[A-Z]{1,3}\d+$/.test(namespace) ? [`the namespace ${namespace} reads like a cell`] : [];
  return [...wrong, ...looksLikeCell];
}

function fileOf(manifest, address) {
  return address.startsWith(manifest.base) ? address.slice(manifest.base.length).replace(/[?#].*$/, "") : "";
}

export function filesAreThere(manifest) {
  return addresses(manifest)
    .filter(({ element }) => element.localName !== "AppDomain")
    .map(({ element, value }) => ({ element, file: fileOf(manifest, value) }))
    .filter(({ file }) => file !== "" && !manifest.has(file))
    .map(({ element, file }) => `${nameOf(element)} needs ${file}, which is not in the folder`);
}

const PNG = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

/** Width and height from the header of a PNG file. */
function pixelsOf(bytes) {
  if (!PNG.every((byte, index) => bytes[index] === byte)) return null;
  return { width: bytes.readUInt32BE(16), height: bytes.readUInt32BE(20) };
}

export function iconsHaveTheirSize(manifest) {
  const { root } = manifest;
  const sized = allBelow(root)
    .filter(({ localName }) => localName === "Image")
    .filter((image) => image.getAttribute("size"))
    .map((image) => [nameOf(image), Number(image.getAttribute("size")), resourceOf(manifest, image.getAttribute("resid"))]);
  const main = [
    ["IconUrl", 32, at(root, "IconUrl")],
    ["HighResolutionIconUrl", 64, at(root, "HighResolutionIconUrl")],
  ];
  const wrong = [...main, ...sized].flatMap(([what, size, element]) => {
    const file = element ? fileOf(manifest, element.getAttribute("DefaultValue") ?? "") : "";
    if (file === "" || !manifest.has(file)) return [`${what} has no picture file`];
    const pixels = pixelsOf(manifest.bytes(file));
    if (pixels === null) return [`${what}: ${file} is no PNG picture`];
    return pixels.width === size && pixels.height === size ? [] : [`${what}: ${file} is ${pixels.width} x ${pixels.height}; it must be ${size} x ${size}`];
  });
  const groups = allBelow(root).filter(({ localName }) => localName === "Icon");
  const short = groups.filter((icon) => ![16, 32, 80].every((size) => named(icon, "Image").some((image) => Number(image.getAttribute("size")) === size)));
  return [...new Set(wrong), ...short.map(() => "an Icon must have the sizes 16, 32 and 80")];
}

export function metadataAgrees(manifest) {
  if (!manifest.has("functions.json")) return ["functions.json is not in the folder"];
  let functions;
  try {
    ({ functions } = JSON.parse(manifest.textOf("functions.json")));
  } catch {
    return ["functions.json is not JSON"];
  }
  if (!Array.isArray(functions) || functions.length === 0) return ["functions.json names no function"];
  const ids = functions.map(({ id }) => id);
  const script = manifest.has("functions.js") ? manifest.textOf("functions.js") : "";
  return [
    ...ids.filter((id) => !/^[A-Z][A-Z0-9_]{2,63}$/.test(id)).map((id) => `the function ${id} has no legal name`),
    ...ids.filter((id, index) => ids.indexOf(id) !== index).map((id) => `the function ${id} occurs twice`),
    ...functions.filter(({ id, name }) => id !== name).map(({ id, name }) => `the function ${id} is called ${name}; a saved file knows its id only`),
    ...functions.filter(({ helpUrl }) => !helpUrl?.startsWith(manifest.base)).map(({ id, helpUrl }) => `the help of ${id} is ${helpUrl}; it must lie under ${manifest.base}`),
    ...ids.filter((id) => !script.includes(`"${id}"`)).map((id) => `functions.js does not know ${id}`),
  ];
}

export function sharedPageLoadsTheFunctions(manifest) {
  const page = fileOf(manifest, manifest.source);
  if (page === "" || !manifest.has(page)) return [];
  return /<script[^>]+src="?functions\.js["\s>]/.test(manifest.textOf(page)) ? [] : [`${page} does not load functions.js: the cells would stay without functions`];
}

export function functionsPointIsThere({ root }) {
  const points = allBelow(root).filter((element) => element.localName === "ExtensionPoint").map(typeOf);
  return ["CustomFunctions", "PrimaryCommandSurface"].filter((type) => !points.includes(type)).map((type) => `there is no ExtensionPoint ${type}`);
}
