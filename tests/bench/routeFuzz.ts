// Many damaged logs through the readers and the cleaning: npx tsx tests/bench/routeFuzz.ts [runs per form] [seed]
import fc from "fast-check";
import { damaged, damages, digest, soundLogs } from "../logs/logFuzz.ts";

const runs = Number(process.argv[2] ?? 10000);
const seed = Number(process.argv[3] ?? 1);
for (const [form, bytes] of Object.entries(soundLogs)) {
  const came = { refused: 0, read: 0, cleaned: 0 };
  let slowest_ms = 0;
  const start = process.hrtime.bigint();
  fc.assert(
    fc.property(damages, (list) => {
      const before = process.hrtime.bigint();
      came[digest(damaged(bytes, list))]++;
      slowest_ms = Math.max(slowest_ms, Number(process.hrtime.bigint() - before) / 1e6);
    }),
    { numRuns: runs, seed },
  );
  const took_s = Number(process.hrtime.bigint() - start) / 1e9;
  console.log(
    `${form}: ${runs} damaged logs in ${took_s.toFixed(1)} s, slowest ${slowest_ms.toFixed(0)} ms; ${JSON.stringify(came)}`,
  );
}
