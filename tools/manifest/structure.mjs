/** Rules on the elements themselves: what must be there, in which order, how long. */
import { allBelow, at, elementsOf, named, nameOf, resourceOf, typeOf } from "./reading.mjs";

const OFFICE = "http://schemas.microsoft.com/office/appforoffice/1.1";

/** Children in the order that the host's schema has them; after the host's public page on the order of manifest elements. */
const ORDER = {
  OfficeApp: [
    "Id",
    "AlternateId",
    "Version",
    "ProviderName",
    "DefaultLocale",
    "DisplayName",
    "Description",
    "IconUrl",
    "HighResolutionIconUrl",
    "SupportUrl",
    "AppDomains",
    "Hosts",
    "Requirements",
    "DefaultSettings",
    "Permissions",
    "VersionOverrides",
  ],
  VersionOverrides: ["Description", "Requirements", "Hosts", "Resources", "WebApplicationInfo", "ExtendedOverrides"],
  Host: ["Runtimes", "AllFormFactors", "DesktopFormFactor", "MobileFormFactor"],
  DesktopFormFactor: ["GetStarted", "FunctionFile", "ExtensionPoint"],
  GetStarted: ["Title", "Description", "LearnMoreUrl"],
  Group: ["Label", "Icon", "Control"],
  Control: ["Label", "Supertip", "Icon", "Action"],
  Supertip: ["Title", "Description"],
  Resources: ["Images", "Urls", "ShortStrings", "LongStrings"],
};
const FUNCTIONS_ORDER = ["Script", "Page", "Metadata", "Namespace"];

function orderOf(element) {
  if (element.localName === "ExtensionPoint" && typeOf(element) === "CustomFunctions") return FUNCTIONS_ORDER;
  return ORDER[element.localName];
}

export function rootIsTaskPaneApp({ root }) {
  if (root.localName !== "OfficeApp" || root.namespaceURI !== OFFICE) return [`the root is ${root.localName}; it must be OfficeApp of ${OFFICE}`];
  return typeOf(root) === "TaskPaneApp" ? [] : [`OfficeApp is ${typeOf(root)}; it must be TaskPaneApp`];
}

export function elementsAreInOrder({ root }) {
  return [root, ...allBelow(root)].flatMap((element) => {
    const order = orderOf(element);
    if (!order) return [];
    const names = elementsOf(element).map(({ localName }) => localName);
    const unknown = names.filter((name) => !order.includes(name)).map((name) => `${element.localName} holds ${name}, which does not belong there`);
    const places = names.filter((name) => order.includes(name)).map((name) => order.indexOf(name));
    const wrong = places.findIndex((place, index) => index > 0 && place < places[index - 1]);
    const known = names.filter((name) => order.includes(name));
    return wrong < 0 ? unknown : [...unknown, `${element.localName}: ${known[wrong]} stands after ${known[wrong - 1]}; it must come before`];
  });
}

const REQUIRED = ["Id", "Version", "ProviderName", "DefaultLocale", "DisplayName", "Description", "IconUrl", "HighResolutionIconUrl", "SupportUrl", "Hosts", "Requirements", "DefaultSettings", "Permissions", "VersionOverrides"];

export function everyPartIsThere({ root }) {
  return REQUIRED.filter((name) => !at(root, name)).map((name) => `${name} is missing`);
}

const MOST = { ProviderName: 125, DisplayName: 125, Description: 250, ShortString: 125, LongString: 250, Address: 2048, Id: 32 };

export function textsAreShortEnough(manifest) {
  const { root } = manifest;
  const texts = ["ProviderName", "DisplayName", "Description"].flatMap((name) => {
    const element = at(root, name);
    return element ? [[name, element.getAttribute("DefaultValue") || element.textContent.trim(), MOST[name]]] : [];
  });
  const of = (list, most) => list.map((each) => [nameOf(each), each.getAttribute("DefaultValue") ?? "", most]);
  const ids = [...manifest.urls, ...manifest.images, ...manifest.shortStrings, ...manifest.longStrings].map((each) => [
    `the id of ${nameOf(each)}`,
    each.getAttribute("id"),
    MOST.Id,
  ]);
  const all = [...texts, ...of(manifest.shortStrings, MOST.ShortString), ...of(manifest.longStrings, MOST.LongString), ...of([...manifest.urls, ...manifest.images], MOST.Address), ...ids];
  return all.flatMap(([what, text, most]) => {
    if (text === "") return [`${what} is empty`];
    return text.length > most ? [`${what} has ${text.length} characters; at most ${most} are allowed`] : [];
  });
}

export function idsResolve(manifest) {
  const ids = allBelow(manifest.root).flatMap((element) => {
    const id = element.getAttribute("resid");
    return id ? [{ element, id }] : [];
  });
  const missing = ids.filter(({ id }) => !resourceOf(manifest, id)).map(({ element, id }) => `${element.localName} points to ${id}, which no resource has`);
  return [...missing, ...idsOfTheRightKind(manifest, ids)];
}

const KIND_OF = { SourceLocation: "Url", LearnMoreUrl: "Url", Runtime: "Url", Image: "Image", Label: "String", Title: "String", Description: "String", Namespace: "String" };

function idsOfTheRightKind(manifest, ids) {
  return ids.flatMap(({ element, id }) => {
    const resource = resourceOf(manifest, id);
    const kind = KIND_OF[element.localName];
    if (!resource || !kind || resource.localName === kind) return [];
    return [`${element.localName} points to ${id}, which is a ${resource.localName}; it must be a ${kind}`];
  });
}

export function idsAreUnique(manifest) {
  const own = allBelow(manifest.root).map((element) => element.getAttribute("id")).filter(Boolean);
  return [...new Set(own.filter((id, index) => own.indexOf(id) !== index))].map((id) => `the id ${id} occurs twice`);
}

export function idAndVersionAreLegal(manifest, { version }) {
  const { root } = manifest;
  const id = at(root, "Id")?.textContent.trim() ?? "";
  const found = at(root, "Version")?.textContent.trim() ?? "";
  const wrong = [];
  if (!/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i.test(id)) wrong.push(`Id is ${id}; it must be a GUID`);
  if (!/^\d+(\.\d+){3}$/.test(found)) wrong.push(`Version is ${found}; it must have four parts`);
  else if (found !== `${version}.0`) wrong.push(`Version is ${found}; it must be ${version}.0, the version of package.json`);
  return wrong;
}

export function hostIsTheWorkbook({ root, overrides }) {
  const hosts = named(at(root, "Hosts") ?? root, "Host").map((host) => host.getAttribute("Name"));
  const over = overrides ? named(at(overrides, "Hosts") ?? overrides, "Host").map(typeOf) : [];
  const wrong = [...hosts, ...over].filter((name) => name !== "Workbook");
  const permission = at(root, "Permissions")?.textContent.trim();
  return [
    ...wrong.map((name) => `a host is ${name}; only Workbook is served`),
    ...(hosts.length === 1 && over.length === 1 ? [] : ["there must be one Host, and one in VersionOverrides"]),
    ...(permission === "ReadWriteDocument" ? [] : [`Permissions is ${permission}; the pane writes formulas, so it must be ReadWriteDocument`]),
  ];
}

const NEEDED_SETS = { SharedRuntime: "1.1", CustomFunctionsRuntime: "1.2" };

export function requirementsAreThose({ root }) {
  const sets = named(at(root, "Requirements", "Sets") ?? root, "Set");
  const found = Object.fromEntries(sets.map((set) => [set.getAttribute("Name"), set.getAttribute("MinVersion")]));
  const wrong = Object.entries(NEEDED_SETS).filter(([name, version]) => found[name] !== version);
  const more = Object.keys(found).filter((name) => !(name in NEEDED_SETS));
  return [
    ...wrong.map(([name, version]) => `the requirement set ${name} is ${found[name] ?? "missing"}; it must be ${version}`),
    ...more.map((name) => `the requirement set ${name} shuts out hosts that need not be`),
  ];
}
