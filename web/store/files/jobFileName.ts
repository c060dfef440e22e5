/** A file name for a job: its title in plain letters, the day, and an ending, that of job files where none is given. */
export function jobFileName(title: string, now: Date, ending = "bellhousing.json"): string {
  const plain = title
    .normalize("NFKD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "")
    .slice(0, 60)
    .replace(/-+$/, "");
  const two = (part: number) => String(part).padStart(2, "0");
  const day = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  return `${plain || "job"}-${day}.${ending}`;
}
