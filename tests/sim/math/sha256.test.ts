import { createHash } from "node:crypto";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { canonicalJson } from "../../../sim/math/canonicalJson.ts";
import { sha256 } from "../../../sim/math/sha256.ts";

describe("the digest of a text", () => {
  // The examples that the standard is published with [FIPS180-4, one block, two blocks, a million letters].
  it.each([
    ["abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"],
    [
      "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq",
      "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1",
    ],
    ["", "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"],
    ["a".repeat(1_000_000), "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0"],
  ])("is that of the standard", (text, digest) => {
    expect(sha256(text)).toBe(digest);
  });

  it("is that of the platform's own for any text, in any script and with halves of letters", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 300 }), (text) => {
        expect(sha256(text)).toBe(createHash("sha256").update(text, "utf8").digest("hex"));
      }),
    );
    expect(sha256("a\ud800b")).toBe(createHash("sha256").update("a\ud800b", "utf8").digest("hex"));
  });
});

describe("a document in one canonical form", () => {
  it("is the sample of the standard", () => {
    // RFC 8785, section 3.2.2: the sample, and 3.2.3: what it becomes, from memory.
    const numbers = JSON.parse("[333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001]");
    const sample = { numbers, string: '\u20ac$\u000F\nA\'B"\\\\"/', literals: [null, true, false] };
    expect(canonicalJson(sample)).toBe(
      `{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"\u20ac$\\u000f\\nA'B\\"\\\\\\\\\\"/"}`,
    );
  });

  it("does not hang on the order in which keys were written, nor on what is undefined", () => {
    expect(canonicalJson({ b: [{ d: 1, c: undefined }], a: { f: 2, e: 3 } })).toBe(
      canonicalJson({ a: { e: 3, f: 2 }, b: [{ d: 1 }] }),
    );
  });
});
