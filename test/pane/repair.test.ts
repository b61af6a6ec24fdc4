import { repairSheet } from "../../src/taskpane/repair";
import { MemoryHost } from "../rig/memoryHost";

const UNKNOWN = { code: "#NAME?", message: "" };

function sheetOf(formulas: Readonly<Record<string, string>>, cells = {}): MemoryHost {
  return new MemoryHost({ Plan: { formulas, cells } }, { sheet: "Plan", cell: "A1" });
}

describe("repair of a sheet", () => {
  test("enters anew what the sheet does not know and what stands in the form of a file, and nothing else", async () => {
    const host = sheetOf(
      {
        A1: "=CANYARD.RUN_MINUTES(0.275, 6)",
        A2: "=CANYARD.RUN_MINUTES(0.275, 6)",
        A3: "=_xldudf_CANYARD_RUN_MINUTES(0.275, 6)",
        A4: "=[2]!_xldudf_CANYARD_RUN_MINUTES(0.275, 6)",
        A5: "=NO_SUCH(1)",
        A6: '="_xldudf_CANYARD_RUN_MINUTES"',
        A7: "=CANYARD.RUN_MINUTES(0.275, 0)",
      },
      { A1: 2.75, A2: UNKNOWN, A3: 2.75, A4: UNKNOWN, A5: UNKNOWN, A7: { code: "#VALUE!", message: "" } },
    );
    expect(await repairSheet(host)).toEqual({ sheet: "Plan", entered: ["A2", "A3", "A4"], stillUnknown: [] });
    expect(host.lastFormulas).toEqual(Array(3).fill("=CANYARD.RUN_MINUTES(0.275, 6)"));
  });

  test("tells which cells the sheet does not know even then", async () => {
    const host = sheetOf({ A1: "=CANYARD.RUN_MINUTES(0.275, 6)" }, { A1: UNKNOWN });
    host.afterEntering = UNKNOWN;
    expect(await repairSheet(host)).toEqual({ sheet: "Plan", entered: ["A1"], stillUnknown: ["A1"] });
  });

  test("leaves a sheet alone on which nothing is to be repaired", async () => {
    const host = sheetOf({ A1: "=CANYARD.RUN_MINUTES(0.275, 6)" }, { A1: 2.75 });
    expect(await repairSheet(host)).toEqual({ sheet: "Plan", entered: [], stillUnknown: [] });
    expect(host.entered).toEqual([]);
  });
});
