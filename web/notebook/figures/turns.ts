import { beforeFrame } from "../../look/afterFrame.ts";

/** Work for the page's thread in short turns, so that a key press never waits long. */
export interface Turns {
  /** Puts work in line under a name; work still waiting under that name is dropped for it. `urgency`: least first. */
  take(name: string, urgency: () => number, work: () => void): void;
  /** Does all that waits at once, as before printing. */
  finish(): void;
}

interface Piece {
  readonly name: string;
  readonly urgency: () => number;
  readonly work: () => void;
}

/**
 * After this long no further piece is begun in a turn. Between turns the browser may lay out and paint, which costs it half a
 * frame each time: a turn a piece would pay for that six times over, and a key waits no longer than for this and one piece.
 */
const TURN_ms = 16;

/**
 * `later` calls its argument in a turn of its own, the first of several once the page has been painted. `onWaiting` hears whether work waits, each time that changes. `now_ms` is a
 * clock.
 */
export function createTurns(
  onWaiting: (isWaiting: boolean) => void = () => {},
  later: (run: () => void, isFirst: boolean) => void = nextTurn(),
  now_ms: () => number = () => performance.now(),
): Turns {
  let waiting: Piece[] = [];
  let isComing = false;
  const turn = () => {
    isComing = false;
    const end_ms = now_ms() + TURN_ms;
    try {
      do {
        const [first] = waiting.toSorted((a, b) => a.urgency() - b.urgency());
        if (!first) return;
        waiting = waiting.filter((piece) => piece !== first);
        first.work();
      } while (now_ms() < end_ms);
    } finally {
      if (waiting.length === 0) onWaiting(false);
      else come(false);
    }
  };
  const come = (isFirst: boolean) => {
    if (isComing || waiting.length === 0) return;
    isComing = true;
    later(turn, isFirst);
  };
  return {
    take(name, urgency, work) {
      if (waiting.length === 0) onWaiting(true);
      waiting = [...waiting.filter((piece) => piece.name !== name), { name, urgency, work }];
      come(true);
    },
    finish() {
      // Work may put more in line.
      while (waiting.length > 0) {
        const all = waiting;
        waiting = [];
        for (const { work } of all) work();
      }
      onWaiting(false);
    },
  };
}

/**
 * Calls in a turn of its own, by a message to oneself: timers set one out of another are held back 4 ms each by browsers,
 * which for a dozen figures would be half of all the time they take. The first turn comes after a frame, so that the answer, which is
 * drawn at once, is seen before any figure below it.
 */
function nextTurn(): (run: () => void, isFirst: boolean) => void {
  const { port1, port2 } = new MessageChannel();
  const coming: (() => void)[] = [];
  port1.onmessage = () => coming.shift()?.();
  return (run, isFirst) => {
    coming.push(run);
    if (isFirst) beforeFrame(() => port2.postMessage(undefined));
    else port2.postMessage(undefined);
  };
}
