import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";

/** A folder and programs that live as long as one browser. */
export interface OwnPrograms {
  readonly folder: string;
  start(path: string, args: readonly string[], env?: Readonly<Record<string, string>>): ChildProcess;
  /** Asks again until there is an answer; what is thrown meanwhile counts as none. Throws a sentence where a program ends or 30 s pass. */
  patiently<T>(what: string, ask: () => T | undefined | Promise<T | undefined>): Promise<T>;
  /** Ends the programs, the last started first, and takes the folder away. */
  close(): Promise<void>;
}

export function ownPrograms(): OwnPrograms {
  const folder = mkdtempSync(join(tmpdir(), "bellhousing-engine-"));
  const running: ChildProcess[] = [];
  const hasEnded = ({ pid, exitCode, signalCode }: ChildProcess) =>
    pid === undefined || exitCode !== null || signalCode !== null;
  return {
    folder,
    start(path, args, env = {}) {
      const program = spawn(path, args, { stdio: ["ignore", "pipe", "ignore"], env: { ...process.env, ...env } });
      program.on("error", () => {}); // not there: it has no pid, and whoever waits for it hears that
      program.stdout.resume(); // a program stops where nobody reads what it writes
      running.push(program);
      return program;
    },
    async patiently(what, ask) {
      for (const end_ms = Date.now() + 30_000; Date.now() < end_ms; await pause(50)) {
        const ended = running.find(hasEnded);
        if (ended) throw new Error(`${ended.spawnfile} did not start or has ended`);
        try {
          const answer = await ask();
          if (answer !== undefined) return answer;
        } catch {
          // not yet
        }
      }
      throw new Error(`${what} did not come within 30 s`);
    },
    async close() {
      for (const program of running.reverse()) {
        if (hasEnded(program)) continue;
        program.kill();
        await Promise.race([once(program, "exit"), pause(5000)]);
        program.kill("SIGKILL");
      }
      rmSync(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
    },
  };
}
