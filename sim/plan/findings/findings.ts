import type { Job } from "../../../shared/job/job.ts";
import { message, quantity as q } from "../../../shared/quantity/message.ts";
import { MPS_PER_KMH } from "../../../shared/units.ts";
import type { Model } from "../../step/model.ts";
import { characteristics } from "../../trace/characteristics.ts";
import type { Trace } from "../../trace/trace.ts";
import type { Candidate, Finding } from "../driveReport.ts";
import type { Range } from "../going/range.ts";
import { drivingFindings, isCannot } from "./drivingFindings.ts";
import { note, warning } from "./finding.ts";
import { regenFindings } from "./regenFindings.ts";
import { requirementFindings } from "./requirementFindings.ts";
import { roadFindings } from "./roadFindings.ts";

/** DC voltage strictly above which a circuit counts as high voltage (class B). [ISO6469-3, voltage classes], from memory. */
export const HIGH_VOLTAGE_V = 60;

/**
 * What a person should know about one candidate on one road, warnings first, and before all others that the car cannot drive it.
 * Sentences hold for the candidate's own figures.
 */
export function findingsFor(job: Job, model: Model, trace: Trace, candidate: Candidate, range: Range): Finding[] {
  const findings = [
    ...voltageFindings(job, candidate),
    ...drivingFindings(candidate, range),
    ...roadFindings(trace),
    ...speedFindings(model, trace),
    ...requirementFindings(job, model),
    ...regenFindings(job, candidate),
    ...weightFindings(job, candidate),
    ...inputFindings(job),
  ];
  const rank = ({ kind, weight }: Finding) => (isCannot(kind) ? 0 : weight === "warning" ? 1 : 2);
  return findings.sort((a, b) => rank(a) - rank(b));
}

function voltageFindings(job: Job, { pack }: Candidate): Finding[] {
  const { controller, charger } = job;
  const found: Finding[] = [];
  if (pack.max_V > controller.max_V) {
    found.push(
      warning(
        "packAboveController",
        message`Full, this pack has ${q("voltage", pack.max_V)} and the controller takes at most ${q("voltage", controller.max_V)}: fewer modules in series, or another controller.`,
      ),
    );
  }
  if (pack.max_V < controller.min_V) {
    found.push(
      warning(
        "packBelowController",
        message`Even full, this pack has ${q("voltage", pack.max_V)} and the controller needs at least ${q("voltage", controller.min_V)}: the car does not move.`,
      ),
    );
  } else if (pack.min_V < controller.min_V) {
    found.push(
      note(
        "controllerCutsFirst",
        message`The controller stops at ${q("voltage", controller.min_V)}, before the cells are down to their lowest (${q("voltage", pack.min_V)} for the pack).`,
      ),
    );
  }
  if (charger.max_V !== undefined && pack.max_V > charger.max_V) {
    found.push(
      warning(
        "packAboveCharger",
        message`Full, this pack has ${q("voltage", pack.max_V)} and the charger goes to ${q("voltage", charger.max_V)}: it will never be charged full.`,
      ),
    );
  }
  if (pack.max_V > HIGH_VOLTAGE_V) {
    found.push(
      note(
        "highVoltage",
        message`Up to ${q("voltage", pack.max_V)} DC, which is above ${q("voltage", HIGH_VOLTAGE_V)}: treat it as deadly; local rules say who may work on it.`,
      ),
    );
  }
  return found;
}

/** Gears in which the motor reaches its top speed before the road's fastest, or before the speed at which the next gear follows. */
function speedFindings({ gears, gearUp_mps }: Model, trace: Trace): Finding[] {
  const wanted_mps = characteristics(trace).max_mps;
  return gears.flatMap(({ name, top_mps }, i) => {
    const isLast = i === gears.length - 1;
    const needed_mps = isLast ? wanted_mps : Math.min(wanted_mps, gearUp_mps[i]);
    if (needed_mps <= top_mps) return [];
    const asks = isLast ? "the road asks for" : `${gears[i + 1].name} gear follows at`;
    const speed_mps = isLast ? wanted_mps : gearUp_mps[i];
    return [
      warning(
        "motorPastTopSpeed",
        message`In ${name} gear the motor is at its top speed at ${q("speed", top_mps / MPS_PER_KMH)}; ${asks} ${q("speed", speed_mps / MPS_PER_KMH)}.`,
      ),
    ];
  });
}

function weightFindings(job: Job, { testMass_kg }: Candidate): Finding[] {
  const { gross_kg } = job.vehicle;
  if (gross_kg === undefined || testMass_kg <= gross_kg) return [];
  return [
    warning(
      "aboveGross",
      message`As driven the car weighs ${q("mass", testMass_kg, 4)}, ${q("mass", testMass_kg - gross_kg)} more than its plate allows (${q("mass", gross_kg, 4)}).`,
    ),
  ];
}

function inputFindings(job: Job): Finding[] {
  const found: Finding[] = [];
  const { transferBox } = job.driveline;
  if (job.motor.loss.kind === "flat") {
    found.push(
      note(
        "flatEfficiency",
        message`The motor has one efficiency everywhere (${q("fraction", job.motor.loss.efficiency_frac)}): town driving usually takes more than such a figure says.`,
      ),
    );
  }
  if (transferBox?.isFrontEngaged && transferBox.hubs === "free") {
    found.push(note("hubsFree", message`The front axle is engaged but its hubs are free: only the rear wheels drive.`));
  }
  return found;
}
