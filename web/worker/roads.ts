import { expose } from "comlink";
import { openRoutes } from "../../sim/index.ts";
import { cycleText } from "./cycleText.ts";
import { createLogDesk } from "./logDesk.ts";

/** The worker's side of the room for logs. */
expose(createLogDesk(openRoutes, cycleText));
