import type { Driver } from "./driver.ts";

/** Keys as WebDriver writes them. [W3C-WebDriver, 17.4.2] */
export const keys = { enter: "\uE007", right: "\uE014", tab: "\uE004", control: "\uE009" } as const;

/** A page in a driven browser: the few things a test does with it. Elements are found by CSS, or by XPath where it begins with `//`. */
export class EnginePage {
  private readonly driver: Driver;

  constructor(driver: Driver) {
    this.driver = driver;
  }

  async goTo(url: string): Promise<void> {
    await this.driver.send("navigateTo", { url });
  }

  async reload(): Promise<void> {
    await this.driver.send("refresh", {});
  }

  /** Runs a function in the page, which knows nothing of what is around it here, and waits for what it promises. */
  async evaluate<A extends readonly unknown[], T>(run: (...args: A) => T | Promise<T>, ...args: A): Promise<T> {
    const script = `const args = [...arguments]; const done = args.pop();
      Promise.resolve().then(() => (${run})(...args)).then((value) => done({ value }), (error) => done({ error: String(error) }));`;
    const { value, error } = (await this.driver.send("executeAsyncScript", { script, args })) as {
      value: T;
      error?: string;
    };
    if (error !== undefined) throw new Error(error);
    return value;
  }

  async focus(place: string): Promise<void> {
    await this.evaluate((element) => (element as unknown as HTMLElement).focus(), await this.find(place));
  }

  /** Presses a button by the keyboard: a pointer would miss it where what is still being drawn above moves it on. */
  async activate(place: string): Promise<void> {
    await this.focus(place);
    await this.press([keys.enter]);
  }

  /** Types keys into an element; a file's control takes paths. */
  async type(place: string, text: string): Promise<void> {
    const [id] = Object.values(await this.find(place));
    await this.driver.send("elementSendKeys", { text }, id);
  }

  /** Presses keys one after the other where the keyboard stands, the first of them held meanwhile where they are a chord. */
  async press(...chords: readonly (readonly string[])[]): Promise<void> {
    const actions = chords.flatMap((chord) => [
      ...chord.map((value) => ({ type: "keyDown", value })),
      ...chord.toReversed().map((value) => ({ type: "keyUp", value })),
    ]);
    await this.driver.send("performActions", { actions: [{ type: "key", id: "keyboard", actions }] });
  }

  /** Gives the page this width within its window. */
  async setWidth(width: number): Promise<void> {
    await this.driver.send("setWindowRect", { x: 0, y: 0, width, height: 900 });
  }

  private async find(place: string): Promise<Readonly<Record<string, string>>> {
    const using = place.startsWith("//") ? "xpath" : "css selector";
    return (await this.driver.send("findElement", { using, value: place })) as Readonly<Record<string, string>>;
  }
}
