import { inputError } from "../../../shared/problems.ts";
import { countOf } from "../log/countOf.ts";
import type { Question } from "../log/logFile.ts";

/** More names than a workshop has cars at once: such a column names something else. */
const MOST_CARS = 20;

/** Which car each fix of a table is of, where the table says so. */
export class Vehicles {
  private readonly names: string[] = [];
  private readonly rows = new Map<string, number>();

  /** The words of the row's cell, one call for each fix in order. */
  add(cell: string): void {
    const name = cell.trim().slice(0, 40);
    this.names.push(name);
    this.rows.set(name, (this.rows.get(name) ?? 0) + 1);
  }

  /**
   * Which fixes are those of the car given, or of the one with most, and the question that chooses among several; undefined where the
   * table is of one car. Throws `InputError` where the car given is none of them.
   */
  choose(
    given: string | undefined,
    file: string,
  ): { readonly isOf: (i: number) => boolean; readonly question: Question } | undefined {
    const cars = [...this.rows].filter(([name]) => name !== "").sort((a, b) => b[1] - a[1]);
    if (cars.length < 2 || cars.length > MOST_CARS) {
      return undefined;
    }
    const choices = cars.map(([name]) => name);
    if (given !== undefined && !choices.includes(given)) {
      throw inputError("badOption", "--vehicle", `found "${given}", ${file} holds ${choices.join(", ")}`);
    }
    const guess = given ?? choices[0];
    const counted = cars.map(([name, count]) => `${name} with ${countOf(count, "row")}`).join(", ");
    const evidence = given === undefined ? `${cars.length} cars in one file, ${counted}` : "given";
    const about = { name: "vehicle", option: "--vehicle" } as const;
    return {
      isOf: (i) => this.names[i] === guess,
      question: { ...about, choices, guess, evidence, decided: given !== undefined },
    };
  }
}
