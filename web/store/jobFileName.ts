/** A file name for a job: its title in plain letters, the day, and the ending of job files. */
export function jobFileName(title: string, now: Date): string {
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
  return `${plain || "job"}-${day}.bellhousing.json`;
}
