import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { parseHTML } from "linkedom";
import { describe, expect, it } from "vitest";
import { demos } from "../../../../shared/demos/index.ts";
import { emptyFolder } from "../../../support/emptyFolder.ts";
import { runCommand } from "../../../support/runCommand.ts";

/** A demo as a file, changed as asked. */
function jobFile(change: (job: Record<string, unknown>) => void = () => {}): string {
  const job = structuredClone(demos[0].document) as Record<string, unknown>;
  change(job);
  const path = join(emptyFolder(), "my.bellhousing.json");
  writeFileSync(path, JSON.stringify(job));
  return path;
}

async function written(path: string, ...words: readonly string[]) {
  const out = `${path}.html`;
  const run = await runCommand("sheet", path, "--out", out, ...words);
  expect(run).toMatchObject({ code: 0, out: "" });
  const text = readFileSync(out, "utf8");
  const { document } = parseHTML(text);
  return { text, document, words: (document.querySelector(".sheet")?.textContent ?? "").replace(/\s+/g, " ") };
}

describe("the client sheet", () => {
  it("is one page that asks nothing of anybody: no script, no other file", async () => {
    const { text, document } = await written(jobFile());
    expect(document.querySelectorAll("script, link, img, iframe")).toHaveLength(0);
    expect(text).not.toMatch(/\bon\w+=|https?:\/\/(?!www\.w3\.org)/);
    expect(text).toContain("font/woff2;base64,");
    expect(document.querySelectorAll(".page")).toHaveLength(2);
  });

  it("says the verdict that drive says", async () => {
    const path = jobFile();
    const { document } = await written(path);
    const verdict = document.querySelector(".verdict")?.textContent ?? "";
    const drive = await runCommand("drive", path);
    expect(verdict).toMatch(/(not enough|only just|enough|more than enough)\.$/);
    expect(drive.out).toContain(verdict);
  });

  it("names client and workshop, and shows what is typed as text whatever it is", async () => {
    const { document, words } = await written(
      jobFile((job) => {
        job["client"] = "<img src=x onerror=alert(1)>";
        job["workshop"] = "Ann & Ben";
        job["use"] = "<script>alert(1)</script> to chapel";
      }),
    );
    expect(words).toContain("For: <img src=x onerror=alert(1)>");
    expect(words).toContain("Workshop: Ann & Ben");
    expect(words).toContain("<script>alert(1)</script> to chapel");
    expect(document.querySelectorAll(".sheet script, .sheet img")).toHaveLength(0);
  });

  it("has at most four packs, the chosen one marked, and numbers in the job's units", async () => {
    const { document } = await written(
      jobFile((job) => {
        job["units"] = "british";
      }),
      "--pack",
      "17 kWh",
    );
    const rows = [...document.querySelectorAll("table:first-of-type tbody tr")].filter((row) =>
      row.closest(".page:first-child"),
    );
    expect(rows.length).toBeGreaterThan(0);
    expect(rows.length).toBeLessThanOrEqual(4);
    expect(document.querySelector(".is-chosen")?.textContent).toContain("17 kWh");
    const first = (document.querySelector(".page")?.textContent ?? "").replace(/\s+/g, " ");
    expect(first).toContain("miles left");
    expect(first).not.toMatch(/\d km\b/);
  });

  it("never shows where somebody lives", async () => {
    const { text } = await written(jobFile());
    expect(text).not.toMatch(/latitude|longitude/);
  });

  it("says first that a pack above the controller must not be used, and prints no distance for it", async () => {
    const { document } = await written(
      jobFile((job) => {
        for (const pack of job["packs"] as Record<string, unknown>[]) pack["seriesModules"] = 8;
      }),
    );
    expect(document.querySelector(".verdict")?.textContent).toMatch(/stop\.$/);
    expect(document.querySelector(".picture")).toBeNull();
  });
});

describe("the other papers", () => {
  it.each([
    ["visit", "measured while it still drives"],
    ["handover", "Service disconnect"],
    ["service", "service card"],
  ])("%s is written without a script", async (paper, words) => {
    const found = await written(jobFile(), "--paper", paper);
    expect(found.words).toContain(words);
    expect(found.document.querySelectorAll("script")).toHaveLength(0);
  });

  it("the visit form has the workshop's units", async () => {
    const metric = await written(jobFile(), "--paper", "visit");
    const british = await written(
      jobFile((job) => {
        job["units"] = "british";
      }),
      "--paper",
      "visit",
    );
    expect(metric.words).toContain("80 to 64 km/h");
    expect(british.words).toContain("50 to 40 mph");
    expect(british.words).not.toContain("km/h");
  });
});

describe("what sheet refuses", () => {
  it("a missing file name, with nothing written", async () => {
    const run = await runCommand("sheet", jobFile());
    expect(run.code).toBe(2);
    expect(run.err).toContain("--out");
  });

  it("to write over a file, unless it is told to", async () => {
    const path = jobFile();
    const out = `${path}.html`;
    writeFileSync(out, "the sheet of last year");
    expect((await runCommand("sheet", path, "--out", out)).code).toBe(2);
    expect(readFileSync(out, "utf8")).toBe("the sheet of last year");
    expect((await runCommand("sheet", path, "--out", out, "--force")).code).toBe(0);
    expect(readFileSync(out, "utf8")).toContain("<!doctype html>");
  });

  it("to write over the job itself, even when told to", async () => {
    const path = jobFile();
    const before = readFileSync(path, "utf8");
    expect((await runCommand("sheet", path, "--out", path, "--force")).code).toBe(2);
    expect(readFileSync(path, "utf8")).toBe(before);
  });

  it("a paper or a pack that there is none of, with the nearest", async () => {
    const path = jobFile();
    const out = `${path}.html`;
    expect((await runCommand("sheet", path, "--out", out, "--paper", "poster")).err).toContain(
      "client, visit, settings, handover, service",
    );
    expect((await runCommand("sheet", path, "--out", out, "--pack", "13kWh")).err).toContain("did you mean 13 kWh");
    expect(existsSync(out)).toBe(false);
  });
});
