import type { Browser } from "playwright-core";
import { connectBrowser } from "../rig/browserPage";
import { HelpOnPage } from "../rig/helpOnPage";
import { openSheet } from "../rig/sheetOnPage";

let browser: Browser;
beforeAll(async () => {
  browser = await connectBrowser();
});
afterAll(() => browser.close());

async function openBoth() {
  const opened = await openSheet(browser);
  const help = new HelpOnPage(opened.page);
  await help.open();
  return { ...opened, help };
}

describe("the help beside the browser sheet", () => {
  test("find, fill in, insert, see the value, explain it, break it, read why: by mouse", async () => {
    const { page, sheet, help, complaints } = await openBoth();
    await sheet.startBlank();
    await sheet.type("A1", "0.5");
    await sheet.type("A2", "6");
    await sheet.select("B1");

    await help.openFunction("how long do I run", "RUN_MINUTES");
    await help.field("volume_per_plant").fill("A1");
    await help.field("emitter_flow").fill("A2");
    // 60 x 0.5 / 6
    await help.says(".answer", "5 min");
    expect(await help.text("#formula")).toBe("=CANYARD.RUN_MINUTES(A1, A2)");
    await help.frame.getByRole("button", { name: "Insert into the selected cell" }).click();
    await help.says("[role=status]", "Written into B1");
    expect(await sheet.valueOf("B1")).toBe("5");

    await help.goTo("This cell");
    await help.says("main", "Flow to one plant");
    await help.says(".answer", "5 min");
    await help.says("dd", "A1 is 0.5");

    await sheet.select("A2");
    await page.keyboard.press("Delete");
    await sheet.select("B1");
    await help.says(".question", "RUN_MINUTES: emitter_flow is blank or 0; it must be more than 0 (gal/h or L/h)");
    await help.says(".question", "Mend emitter_flow: Measured flow of one emitter");
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  test("the same by keyboard alone, from the sheet into the help and back", async () => {
    const { page, sheet, help } = await openBoth();
    await sheet.startBlank();
    await sheet.select("C3");
    await page.keyboard.press("F6");
    await help.frame.getByLabel("What do you want to know?").focus();
    await page.keyboard.type("gros water");
    await help.says("a.entry", "GROSS_WATER");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("ArrowUp");
    await page.keyboard.press("Enter");
    await help.frame.getByRole("heading", { name: "GROSS_WATER", level: 1 }).waitFor();
    await page.keyboard.press("Tab");
    await page.keyboard.type("1");
    // From field to field; a button for the selected cell stands behind each.
    for (const text of ["20%", "0.9"]) {
      await page.keyboard.press("Tab");
      await page.keyboard.press("Tab");
      await page.keyboard.type(text);
    }
    // 1 / (1 - 0.2)
    await help.says(".answer", "1.25");
    expect(await help.text("#formula")).toBe("=CANYARD.GROSS_WATER(1, 20%, 0.9)");
    for (let presses = 0; presses < 3; presses += 1) await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await help.says("[role=status]", "Written into C3");
    await page.keyboard.press("F6");
    await page.keyboard.press("F6");
    expect(await sheet.valueOf("C3")).toBe("1.25");
    await page.context().close();
  });

  test("a cell that holds something is replaced only after a yes, asked in the pane; undo takes it back", async () => {
    const { page, sheet, help } = await openBoth();
    await sheet.startBlank();
    await sheet.type("B2", "keep me");
    await help.openFunction("leaching fraction", "LEACHING_FRACTION");
    await help.frame.getByRole("button", { name: "Insert into the selected cell" }).click();
    await help.says(".question", "B2 holds keep me. Replace it?");
    await help.frame.getByRole("button", { name: "Keep what is there" }).click();
    expect(await sheet.valueOf("B2")).toBe("keep me");
    await help.frame.getByRole("button", { name: "Insert into the selected cell" }).click();
    await help.frame.getByRole("button", { name: "Replace" }).click();
    await help.says("[role=status]", "Written into B2");
    expect(await sheet.valueOf("B2")).toBe("0.15");
    await page.keyboard.press("Control+z");
    expect(await sheet.valueOf("B2")).toBe("keep me");
    await page.context().close();
  });

  test("cells are taken from the selection, ranges too, and stand in the formula by their sheet", async () => {
    const { page, sheet, help } = await openBoth();
    await sheet.select("'Catch test'!A6");
    for (let presses = 0; presses < 3; presses += 1) await page.keyboard.press("Shift+ArrowRight");
    for (let presses = 0; presses < 3; presses += 1) await page.keyboard.press("Shift+ArrowDown");
    await help.openFunction("how even is my irrigation", "DU_LOW_QUARTER");
    await help.frame.getByRole("button", { name: "Use selected cells for readings" }).click();
    expect(await help.field("readings").inputValue()).toBe("'Catch test'!A6:D9");
    // 58 / 63, worked by hand in the opening workbook's test.
    await help.says(".answer", "0.920635");
    expect(await help.text("#formula")).toBe("=CANYARD.DU_LOW_QUARTER('Catch test'!A6:D9)");
    await page.context().close();
  });

  test("an error stands beside the field that caused it, in the library's words", async () => {
    const { page, help } = await openBoth();
    await help.openFunction("gross water", "GROSS_WATER");
    await help.field("net").fill("1");
    await help.field("leaching_fraction").fill("15");
    await help.field("uniformity").fill("0.9");
    await help.says(
      "#leaching_fraction-error",
      "leaching_fraction is 15; it must be from 0 to less than 1 (fraction); write 0.15 or 15%",
    );
    expect(await help.field("leaching_fraction").getAttribute("aria-invalid")).toBe("true");
    expect(await help.field("net").getAttribute("aria-invalid")).toBe("false");
    await page.context().close();
  });

  test("several functions in one formula are explained one by one, inner ones first", async () => {
    const { page, sheet, help } = await openBoth();
    await sheet.startBlank();
    await sheet.type("B2", "=CANYARD.RUN_MINUTES(CANYARD.GROSS_WATER(0.34, 0.15, 0.9), 6*2)");
    await help.goTo("This cell");
    await help.says("main", "Gross water");
    expect(await help.frame.locator(".call h2").allTextContents()).toEqual(["GROSS_WATER", "RUN_MINUTES"]);
    // 0.34 / 0.85 = 0.4; 60 x 0.4 / 12 = 2
    expect(await help.frame.locator(".answer strong").allTextContents()).toEqual(["0.4", "2"]);
    await page.context().close();
  });

  test("formulas in the form of a file are found and entered anew, and it tells how many", async () => {
    const { page, sheet, help } = await openBoth();
    await sheet.startBlank();
    await sheet.type("B2", "=_xldudf_CANYARD_RUN_MINUTES(0.275, 6)");
    await sheet.type("B4", "=1+1");
    await help.goTo("This cell");
    await help.frame.getByRole("button", { name: "Look and repair" }).click();
    await help.says("[role=status]", "1 cell was entered anew on Sheet1: B2.");
    expect(await sheet.valueOf("B2")).toBe("2.75");
    await help.frame.getByRole("button", { name: "Look and repair" }).click();
    await help.says("[role=status]", "Nothing to repair on Sheet1.");
    await page.context().close();
  });

  test("the choice of units changes what the pane shows, never what the sheet calculates", async () => {
    const { page, sheet, help } = await openBoth();
    const before = await sheet.valueOf("Plan!D27");
    await help.openFunction("plant use", "PLANT_WATER_DEMAND");
    await help.says(".answer", "gal");
    await help.frame.getByLabel("metric").check();
    await help.says(".answer", " L");
    await help.says("#formula", '"metric")');
    expect(await sheet.valueOf("Plan!D27")).toBe(before);
    await page.context().close();
  });

  test("a function's own word for the units is that same choice", async () => {
    const { page, help } = await openBoth();
    await help.openFunction("plant use", "PLANT_WATER_DEMAND");
    await help.field("units").selectOption("metric");
    await help.says(".answer", " L");
    expect(await help.frame.getByLabel("metric").isChecked()).toBe(true);
    await help.says(".unit", "mm");
    await page.context().close();
  });

  test("what stands in a cell is shown as text, whatever it looks like", async () => {
    const { page, sheet, help, complaints } = await openBoth();
    const hostile = "<img src=x onerror=alert(1)><b>six</b>";
    await sheet.startBlank();
    await sheet.type("A1", hostile);
    await sheet.type("B1", "=CANYARD.RUN_MINUTES(0.275, A1)");
    await help.goTo("This cell");
    await help.says("dd", hostile);
    await help.says(".question", hostile);
    await sheet.select("A1");
    await help.says("main", `A1 on Sheet1: ${hostile}`);
    await help.openFunction("how long do I run", "RUN_MINUTES");
    await help.field("emitter_flow").fill(hostile);
    await help.says("#emitter_flow-error", hostile);
    await help.says("#formula", hostile);
    await help.frame.getByRole("button", { name: "Insert into the selected cell" }).click();
    await help.says(".question", `A1 holds ${hostile}. Replace it?`);
    expect(await help.frame.locator("main img, main b").count()).toBe(0);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  test("times are shown as on the clock, and a function that takes any number of arguments gets more fields", async () => {
    const { page, help } = await openBoth();
    await help.openFunction("cyclic irrigation", "PULSE_SCHEDULE");
    await help.field("start_time").fill("06:30");
    await help.field("total_minutes").fill("30");
    await help.field("pulses").fill("2");
    await help.field("rest_minutes").fill("60");
    // 15 minutes from 06:30, an hour's rest, 15 minutes again
    await help.says(".result tbody", /06:30.*06:45.*07:45.*08:00/);
    await help.says("#formula", "TIME(6, 30, 0)");
    await help.openFunction("show the steps", "SHOW_WORKING");
    await help.field("function_name").fill("RUN_MINUTES");
    await help.field("input").fill("0.275");
    await help.field("input_2").fill("6");
    await help.field("input_3").fill("1");
    await help.field("input_4").waitFor();
    await help.says("#formula", '=CANYARD.SHOW_WORKING("RUN_MINUTES", 0.275, 6, 1)');
    await help.says(".result tbody", "2.75");
    await page.context().close();
  });

  test("it can be folded away, and stays folded after a reload", async () => {
    const { page, help } = await openBoth();
    await page.getByRole("button", { name: "Help", exact: true }).click();
    expect(await page.locator("#help").isVisible()).toBe(false);
    await page.reload();
    await page.waitForFunction(() => "canyardSheet" in window);
    expect(await page.locator("#help").isVisible()).toBe(false);
    await help.open();
    expect(await page.locator("#help").isVisible()).toBe(true);
    await page.context().close();
  });
});
