import { fieldAt } from "../../../web/editing/fieldTable/fieldAt.ts";
import { createJobEditor } from "../../../web/editing/jobEditor.ts";
import { enterQuantity } from "../../../web/fields/enterQuantity.ts";
import { createFieldContext } from "../../../web/fields/fieldContext.ts";
import type { QuantityFieldSpec } from "../../../web/fields/quantityField.ts";
import { readField } from "../../../web/fields/readField.ts";
import { demoJob } from "../../support/demoJob.ts";
import { noRoads } from "../../support/noRoads.ts";

export function page() {
  const jobEditor = createJobEditor({ job: demoJob(), drafts: {} });
  const context = createFieldContext(jobEditor, noRoads);
  const specAt = (path: string) => fieldAt(path) as QuantityFieldSpec;
  return {
    jobEditor,
    enter: (path: string, text: string) => enterQuantity(context, path, specAt(path), text),
    read: (path: string, text: string) => readField(context, path, specAt(path), text),
  };
}
