import { describe, expect, it } from "vitest";
import { StoreRefusal, toRefusal } from "../../../web/store/database/storeRefusal.ts";
import { placeSentence, statusSentence } from "../../../web/store/saveStatus.ts";

const clock = () => "14:05";

describe("the save status in words", () => {
  it("says when it was saved and where", () => {
    const saved = { kind: "saved", at_ms: 0 } as const;
    expect(statusSentence(saved, { kind: "database", unreadable: 0 }, clock)).toBe("Saved in this browser at 14:05.");
    expect(statusSentence(saved, { kind: "memory", unreadable: 0 }, clock)).toContain("this page only");
  });

  it.each(["full", "differs", "outdated", "failed"] as const)("says what to do when it is refused (%s)", (reason) => {
    const refused = { kind: "refused", reason, message: "x" } as const;
    const sentence = statusSentence(refused, { kind: "database", unreadable: 0 }, clock);
    expect(sentence).toMatch(/^Not saved: /);
    expect(sentence).toContain("save it as a file now");
  });
});

describe("where jobs live, in words", () => {
  it("says what the browser promised and what it did not", () => {
    expect(placeSentence({ kind: "database", isKept: true, unreadable: 0 })).toContain("has promised");
    expect(placeSentence({ kind: "database", isKept: false, unreadable: 0 })).toContain("may clear them");
  });

  it("says that jobs end with the page where there is no database, and why", () => {
    const sentence = placeSentence({ kind: "memory", why: "this browser has no database", unreadable: 0 });
    expect(sentence).toContain("(this browser has no database)");
    expect(sentence).toContain("until it is closed");
  });

  it("says how full it is when little room is left, and not before", () => {
    const place = { kind: "database", unreadable: 0, room_MB: 100 } as const;
    expect(placeSentence({ ...place, used_MB: 79 })).not.toContain("MB");
    expect(placeSentence({ ...place, used_MB: 92.34 })).toContain("92.3 MB of the 100 MB it allows are used");
  });

  it("counts records that cannot be read", () => {
    expect(placeSentence({ kind: "database", unreadable: 1 })).toContain(
      "One record in it cannot be read and was left",
    );
    expect(placeSentence({ kind: "database", unreadable: 2 })).toContain(
      "2 records in it cannot be read and were left",
    );
  });
});

describe("a refusal's reason", () => {
  it.each([
    [new DOMException("", "QuotaExceededError"), "full"],
    [new DOMException("older", "VersionError"), "outdated"],
    [new DOMException("gone", "InvalidStateError"), "failed"],
    [new StoreRefusal("differs", "x"), "differs"],
    ["text", "failed"],
  ])("of %s is %s", (error, reason) => {
    expect(toRefusal(error)).toMatchObject({ reason });
  });
});
