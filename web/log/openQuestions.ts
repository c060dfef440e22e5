import type { FileReading } from "../worker/roads/roadsApi.ts";
import { questionWords } from "./logText.ts";

/** What must be answered before a road is made of the log. */
export function openQuestions({ questions }: FileReading): FileReading["questions"] {
  return questions.filter(({ decided, name }) => !decided && questionWords[name] !== undefined);
}
