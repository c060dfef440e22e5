import { hemispheres, type LogFile, type Question, type ReadLogOptions, speedUnits } from "../../route/log/logFile.ts";
import { choiceOption } from "../arguments/choiceOption.ts";
import { numberOption, textOption } from "../arguments/optionValue.ts";
import type { CommandArguments, CommandOption } from "../command.ts";

/** Options that answer what a log may leave open, in the order of the help. */
export const answerOptions = {
  "speed-unit": { type: "string", value: speedUnits.join("|"), help: "unit of a log's speeds, where it does not say" },
  hemisphere: { type: "string", value: hemispheres.join("|"), help: "side of the globe, where a log does not say" },
  interval: { type: "string", value: "S", help: "seconds between the rows of a log without times, 0.01 to 3600" },
  vehicle: { type: "string", value: "NAME", help: "which car, where a log holds several" },
  date: { type: "string", value: "YYYY-MM-DD", help: "day of the first row, where a log has a clock and no date" },
} as const satisfies Readonly<Record<string, CommandOption>>;

/** The answers given on a command line. Throws InputError for one that is none; the reader of logs checks the date. */
export function logAnswers(args: CommandArguments): ReadLogOptions {
  return {
    speedUnit: choiceOption(args, "speed-unit", speedUnits),
    hemisphere: choiceOption(args, "hemisphere", hemispheres),
    interval_s: numberOption(args, "interval", { low: 0.01, high: 3600, unit: "s" }),
    date: textOption(args, "date"),
    vehicle: textOption(args, "vehicle"),
  };
}

/** What a log leaves open and nobody answered, as a sentence that ends with the option to give. */
export function askFor(question: Question): string {
  const wanted: Readonly<Record<string, string>> = {
    speedUnit: "the unit of its speeds is wanted",
    hemisphere: "the side of the globe is wanted",
    interval: "the time between its rows is wanted",
    date: "the day of its first row is wanted",
    vehicle: "the car to read is wanted",
  };
  const option = question.option.replace(/^--/, "");
  const value = Object.hasOwn(answerOptions, option) ? answerOptions[option as keyof typeof answerOptions].value : "";
  return `found ${question.evidence}; ${wanted[question.name] ?? "an answer is wanted"}: ${question.option} ${value}`;
}

/** Options that were given and to which no log had a question, with their dashes. */
export function idleAnswers(answers: ReadLogOptions, logs: readonly LogFile[]): readonly string[] {
  const isUsed = (name: Question["name"], answer: string) =>
    logs.some(({ questions }) =>
      questions.some(
        (one) => one.name === name && one.guess === answer && (name === "date" || one.evidence === "given"),
      ),
    );
  const hasNoTimes = logs.some(
    ({ format, guess }) => format !== "nmea" && !guess.columns.some(({ role }) => role === "time"),
  );
  const { speedUnit, hemisphere, interval_s, date, vehicle } = answers;
  return [
    ...(speedUnit === undefined || isUsed("speedUnit", speedUnit) ? [] : ["--speed-unit"]),
    ...(vehicle === undefined || isUsed("vehicle", vehicle) ? [] : ["--vehicle"]),
    ...(hemisphere === undefined || isUsed("hemisphere", hemisphere) ? [] : ["--hemisphere"]),
    ...(interval_s === undefined || hasNoTimes ? [] : ["--interval"]),
    ...(date === undefined || hasNoTimes || isUsed("date", date) ? [] : ["--date"]),
  ];
}
