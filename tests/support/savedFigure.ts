import type { Locator, Page } from "playwright-core";

/**
 * The file that a figure hands to the browser to save, taken where the page hands it over: a browser drops the eleventh download that
 * a page starts within a second.
 */
export async function savedFigure(page: Page, figure: Locator, kind: "SVG" | "PNG" | "CSV"): Promise<Buffer> {
  await page.evaluate(() => {
    const taken = window as unknown as { isTaking?: boolean; saved?: Promise<string> };
    delete taken.saved;
    if (taken.isTaking) return;
    taken.isTaking = true;
    // By its address, since the page may fetch nothing, not even from itself.
    const blobs = new Map<string, Blob>();
    const { createObjectURL } = URL;
    URL.createObjectURL = (content) => {
      const address = createObjectURL.call(URL, content);
      if (content instanceof Blob) blobs.set(address, content);
      return address;
    };
    const { click } = HTMLAnchorElement.prototype;
    HTMLAnchorElement.prototype.click = function () {
      const blob = blobs.get(this.href);
      if (this.download === "" || !blob) return click.call(this);
      taken.saved = new Promise((resolve) => {
        const reader = new FileReader();
        reader.onload = () => resolve(String(reader.result));
        reader.readAsDataURL(blob);
      });
    };
  });
  // By the event and not by the mouse: sixteen figures three times over need no unfolding and no scrolling to.
  await figure.locator(".figure-tools button", { hasText: kind }).dispatchEvent("click");
  const handle = await page.waitForFunction(() => (window as unknown as { saved?: Promise<string> }).saved);
  const address = String(await handle.jsonValue());
  return Buffer.from(address.slice(address.indexOf(",") + 1), "base64");
}

export interface Seen {
  readonly width_px: number;
  readonly height_px: number;
  /** Variance of the grey value, 0 to 255, over its pixels: none in a blank picture. */
  readonly variance: number;
  /** Share of the pixels that are not the colour of the first. */
  readonly inked_frac: number;
}

/** Opens a picture in a page of its own, as somebody would who was sent it, and looks at its pixels. */
export async function seen(viewer: Page, picture: Buffer, type: string): Promise<Seen> {
  return viewer.evaluate(
    async ([text, mime]) => {
      const image = new Image();
      image.src = `data:${mime};base64,${text}`;
      await image.decode();
      const canvas = document.createElement("canvas");
      canvas.width = image.naturalWidth;
      canvas.height = image.naturalHeight;
      const context = canvas.getContext("2d");
      if (!context) throw new Error("no canvas");
      context.drawImage(image, 0, 0);
      const { data } = context.getImageData(0, 0, canvas.width, canvas.height);
      const grey: number[] = [];
      // Every seventh pixel: a drawing of two million has no need of all of them, and seven goes into no row evenly.
      for (let i = 0; i < data.length; i += 28)
        grey.push(0.3 * (data[i] as number) + 0.6 * (data[i + 1] as number) + 0.1 * (data[i + 2] as number));
      const mean = grey.reduce((sum, each) => sum + each, 0) / grey.length;
      return {
        width_px: canvas.width,
        height_px: canvas.height,
        variance: grey.reduce((sum, each) => sum + (each - mean) ** 2, 0) / grey.length,
        inked_frac: grey.filter((each) => Math.abs(each - (grey[0] as number)) > 4).length / grey.length,
      };
    },
    [picture.toString("base64"), type] as const,
  );
}

/** Width and height that a PNG says in its first chunk, IHDR. */
export function sizeOfPng(png: Buffer): readonly [number, number] {
  const signature = png.subarray(1, 4).toString("latin1");
  if (signature !== "PNG" || png.subarray(12, 16).toString("latin1") !== "IHDR") throw new Error("this is no PNG");
  return [png.readUInt32BE(16), png.readUInt32BE(20)];
}
