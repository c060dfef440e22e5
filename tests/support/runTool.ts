import { spawn } from "node:child_process";
import { root } from "./sourceFiles.ts";

/** How a tool of the project ended, and all it said. */
export interface ToolRun {
  readonly code: number | null;
  readonly said: string;
}

/** Runs a script of node_modules by this Node, at the top of the checkout, without blocking the runner. */
export function runTool(script: string, args: readonly string[]): Promise<ToolRun> {
  return new Promise((resolve, reject) => {
    const tool = spawn(process.execPath, [script, ...args], { cwd: root, stdio: ["ignore", "pipe", "pipe"] });
    let said = "";
    const listen = (piece: Buffer) => {
      said += piece.toString("utf8");
    };
    tool.stdout.on("data", listen);
    tool.stderr.on("data", listen);
    tool.on("error", reject);
    tool.on("close", (code) => resolve({ code, said }));
  });
}
