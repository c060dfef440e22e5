import uprightUrl from "@fontsource-variable/source-serif-4/files/source-serif-4-latin-wght-normal.woff2?url";

let face: Promise<string> | undefined;

/** An @font-face rule with the text face inside it, so that a saved figure looks the same where the face is not known. */
export function handbookFace(): Promise<string> {
  face ??= fetch(uprightUrl)
    .then((answer) => answer.arrayBuffer())
    .then(
      (bytes) =>
        `@font-face{font-family:"Handbook";font-weight:200 900;src:url(data:font/woff2;base64,${base64(bytes)}) format("woff2")}`,
    );
  face.catch(() => {
    face = undefined; // the next figure that is saved asks again
  });
  return face;
}

function base64(bytes: ArrayBuffer): string {
  let binary = "";
  for (const byte of new Uint8Array(bytes)) binary += String.fromCharCode(byte);
  return btoa(binary);
}
