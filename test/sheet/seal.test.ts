import fc from "fast-check";
import { gzipSync } from "node:zlib";
import { checksum, sealed, sealOf } from "../../src/sheet/seal";

const SEED = 20261129;

/** Every gzip file ends with the CRC-32 of its content, low byte first, and its length. */
function checksumByGzip(text: string): string {
  const packed = gzipSync(Buffer.from(text, "utf16le"));
  return packed
    .readUInt32LE(packed.length - 8)
    .toString(16)
    .padStart(8, "0");
}

test.each(["", "a", "0".repeat(70_000), "Tern Hollow – 27 °C, 水"])("the checksum is that of gzip: %.20s", (text) => {
  expect(checksum(text)).toBe(checksumByGzip(text));
});

test("and so for any text", () => {
  const anyText = fc.string({ unit: "binary", maxLength: 200 });
  fc.assert(
    fc.property(anyText, (text) => expect(checksum(text)).toBe(checksumByGzip(text))),
    { seed: SEED },
  );
});

test("a sealed text is whole, still JSON, and no longer whole with any one character another", () => {
  fc.assert(
    fc.property(fc.jsonValue(), fc.nat(), fc.integer({ min: 1, max: 0xffff }), (value, place, change) => {
      const text = sealed(JSON.stringify({ value }));
      expect(sealOf(text)).toBe("whole");
      expect(JSON.stringify((JSON.parse(text) as { value: unknown }).value)).toBe(JSON.stringify(value));
      const at = place % text.length;
      const changed = text.slice(0, at) + String.fromCharCode(text.charCodeAt(at) ^ change) + text.slice(at + 1);
      expect(sealOf(changed)).not.toBe("whole");
      expect(sealOf(text.slice(0, at))).not.toBe("whole");
    }),
    { seed: SEED, numRuns: 500 },
  );
});

test("what was never sealed is told from what has lost its seal", () => {
  expect(sealOf('{"value":{"checksum":"01234567"}}')).toBe("none");
  expect(sealOf('{"value":1,"checksum":"01234567"}')).toBe("broken");
});
