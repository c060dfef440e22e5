/** The commands of W3C WebDriver that the tests use: how each is addressed over HTTP, within its session, and what Firefox calls it. */
export const commands = {
  newSession: { method: "POST", path: "", name: "NewSession" },
  deleteSession: { method: "DELETE", path: "", name: "DeleteSession" },
  navigateTo: { method: "POST", path: "/url", name: "Navigate" },
  refresh: { method: "POST", path: "/refresh", name: "Refresh" },
  setWindowRect: { method: "POST", path: "/window/rect", name: "SetWindowRect" },
  executeAsyncScript: { method: "POST", path: "/execute/async", name: "ExecuteAsyncScript" },
  findElement: { method: "POST", path: "/element", name: "FindElement" },
  elementSendKeys: { method: "POST", path: "/element/{id}/value", name: "ElementSendKeys" },
  performActions: { method: "POST", path: "/actions", name: "PerformActions" },
} as const;

export type Command = keyof typeof commands;

/** A browser that is driven by commands of W3C WebDriver, however they reach it. `id` is the element's, where the command is of one. */
export interface Driver {
  send(command: Command, parameters: Readonly<Record<string, unknown>>, id?: string): Promise<unknown>;
}
