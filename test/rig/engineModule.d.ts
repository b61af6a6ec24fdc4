declare module "@odoo/o-spreadsheet/dist/o_spreadsheet.cjs" {
  import type { Engine } from "../../src/sheet/engine";
  const engine: Engine;
  export = engine;
}
