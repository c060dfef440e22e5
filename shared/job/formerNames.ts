const KERB = { group: "vehicle", former: "arriving_kg", present: "kerb_kg" };

/** The path as it is called now, for one kept from an earlier document. */
export function presentPath(path: string): string {
  return path === `${KERB.group}.${KERB.former}` ? `${KERB.group}.${KERB.present}` : path;
}

/** A document with values and origins under the names of today. One with both names of a value keeps both, to be reported. */
export function inPresentNames(document: unknown): unknown {
  if (!isGroup(document)) return document;
  const { [KERB.group]: group, origins } = document;
  return {
    ...document,
    ...(isGroup(group) && { [KERB.group]: renamed(group, (key) => (key === KERB.former ? KERB.present : key)) }),
    ...(isGroup(origins) && { origins: renamed(origins, presentPath) }),
  };
}

/** The same entries in the same order, each under the name given to it unless that is taken. */
function renamed(group: Group, nameOf: (key: string) => string): Group {
  const named = ([key, value]: [string, unknown]): [string, unknown] => [
    Object.hasOwn(group, nameOf(key)) ? key : nameOf(key),
    value,
  ];
  return Object.fromEntries(Object.entries(group).map(named));
}

type Group = Readonly<Record<string, unknown>>;

function isGroup(value: unknown): value is Group {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
