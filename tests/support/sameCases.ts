import fc from "fast-check";

// The gate tries the same cases every time, so that it fails for a change and not by luck. `CASES=7 npx vitest run ...` tries others:
// do so when the code below a property changes.
fc.configureGlobal({ seed: Number(process.env["CASES"] ?? 19_640_815) });
