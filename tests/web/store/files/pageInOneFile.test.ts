import { JSDOM } from "jsdom";
import { describe, expect, it } from "vitest";
import { pageInOneFile, sourceOf } from "../../../../web/store/files/pageInOneFile.ts";

describe("the page in one file", () => {
  it("is this very page, else the one beside it", async () => {
    const asked: unknown[] = [];
    const get = async (at: unknown) => {
      asked.push(at);
      return new Response("<p>beside</p>");
    };
    expect(await pageInOneFile("<p>this</p>", get)).toBe("<p>this</p>");
    expect(asked).toEqual([]);
    expect(await pageInOneFile(undefined, get)).toBe("<p>beside</p>");
    expect(asked).toEqual(["bellhousing.html"]);
  });

  it("cannot be had where the server is gone or lacks it", async () => {
    const missing = async () => new Response("", { status: 404 });
    const gone = () => Promise.reject(new TypeError("offline"));
    await expect(pageInOneFile(undefined, missing)).rejects.toThrow(/could not be fetched/);
    await expect(pageInOneFile(undefined, gone)).rejects.toThrow(/could not be fetched/);
  });
});

it("takes the text of a page only where nothing of it lies beside, with the licences after it", () => {
  const text = "<html><head><script>1</script></head><body><p>a</p></body></html>";
  const whole = new JSDOM(`<!doctype html>${text}<!-- licence -->`).window.document;
  expect(sourceOf(whole)).toBe(`<!doctype html>\n${text}\n<!-- licence -->\n`);
  const served = new JSDOM('<!doctype html><script src="main.js"></script>').window.document;
  expect(sourceOf(served)).toBeUndefined();
  const styled = new JSDOM('<!doctype html><link rel="stylesheet" href="a.css">').window.document;
  expect(sourceOf(styled)).toBeUndefined();
});
