/** What a browser has and Node has not: reading and writing of XML. Import it before what needs it. */
import { JSDOM } from "jsdom";

const { window } = new JSDOM("");
Object.assign(globalThis, { DOMParser: window.DOMParser, XMLSerializer: window.XMLSerializer });
