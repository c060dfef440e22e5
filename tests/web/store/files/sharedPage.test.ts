import { parseHTML } from "linkedom";
import { describe, expect, it } from "vitest";
import { pageInOneFile, sourceOf } from "../../../../web/store/files/pageInOneFile.ts";
import { jobInPage, sharedPage } from "../../../../web/store/files/sharedPage.ts";
import { inventedJob, withRecordedRoad } from "../../../support/inventedJob.ts";

const page = "<!doctype html><html><body><main></main></body></html>";
const documentOf = (html: string) => parseHTML(html).document as unknown as Document;

describe("a shared page", () => {
  it("carries its job whole, whatever stands in its words", () => {
    const job = {
      ...withRecordedRoad(inventedJob("</script><script>alert(1)</script> <!-- \u2028 שלום"), 400),
      use: "$& $1 \\u003c",
    };
    const html = sharedPage(page, job);
    expect(html.match(/<script/g)).toHaveLength(1);
    expect(jobInPage(documentOf(html))).toEqual(job);
  });

  it("leaves out the notes to what the client does not see", () => {
    const notes = [
      { after: "packs", text: "for all" },
      { after: "motor", text: "for the workshop" },
    ];
    const html = sharedPage(page, { ...inventedJob(), notes, hiddenSections: ["motor"] });
    expect(jobInPage(documentOf(html))?.notes).toEqual([notes[0]]);
    expect(html).not.toContain("for the workshop");
  });

  it("is known from the notebook itself, and one with a job that is none says so", () => {
    expect(jobInPage(documentOf(page))).toBeUndefined();
    const torn = sharedPage(page, inventedJob()).replace("bellhousing-job", "something");
    expect(() => jobInPage(documentOf(torn))).toThrow("bellhousing-job");
  });
});

describe("the page in one file", () => {
  it("is the page itself where all of it is inside, else the one served beside it", async () => {
    expect(sourceOf(documentOf(page))).toBe("<!doctype html>\n<html><body><main></main></body></html>\n");
    expect(sourceOf(documentOf(`${page}<!-- licences -->`))).toMatch(/<!-- licences -->\n$/);
    expect(sourceOf(documentOf(page.replace("<main>", '<script src="./a.js"></script><main>')))).toBeUndefined();
    expect(await pageInOneFile("all of it")).toBe("all of it");
    expect(await pageInOneFile(undefined, async () => new Response("beside"))).toBe("beside");
  });

  it("that cannot be had is a sentence", async () => {
    const gone = () => Promise.reject(new TypeError("Failed to fetch"));
    await expect(pageInOneFile(undefined, gone)).rejects.toThrow("start the notebook's server again");
    const none = async () => new Response("no", { status: 404 });
    await expect(pageInOneFile(undefined, none)).rejects.toThrow("start the notebook's server again");
  });
});
