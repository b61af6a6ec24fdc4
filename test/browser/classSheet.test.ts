import type { Browser } from "playwright-core";
import { connectBrowser } from "../rig/browserPage";
import { openSheet } from "../rig/sheetOnPage";

let browser: Browser;
beforeAll(async () => {
  browser = await connectBrowser();
});
afterAll(() => browser.close());

test("a student fills in a step with a slip, then right, then leaves it blank, and reads what a teacher would say", async () => {
  const { page, sheet } = await openSheet(browser);
  await sheet.startBlank();
  // 60 x 0.275 / 6 = 2.75 minutes.
  await sheet.type("A1", "0.275");
  await sheet.type("A2", "6");
  await sheet.type("B1", "=CANYARD.CHECK_ANSWER(A3, CANYARD.RUN_MINUTES(A1, A2))");
  await sheet.type("B2", '=CANYARD.DIAGNOSE_ANSWER(A3, "RUN_MINUTES", 0.02, 2, A1, A2)');
  expect(await sheet.valueOf("B1")).toBe("not answered");
  expect(await sheet.valueOf("B2")).toBe("not answered");
  await sheet.type("A3", "0.0458");
  expect(await sheet.valueOf("B1")).toBe("wrong");
  expect(await sheet.valueOf("B2")).toBe(
    "wrong: 0.0458 is what comes out when the flow per hour was taken as flow per minute",
  );
  await sheet.type("A3", "2.75");
  expect(await sheet.valueOf("B1")).toBe("right");
  expect(await sheet.valueOf("B2")).toBe("right");
  await page.context().close();
});
