/** One person at one point of the protocol: everything the choices of a session are made from. */
import type { Clinic, Consult, ExerciseCard, Library, Protocol, Stage } from '../../content/library.ts';
import type { Body } from '../../mechanics/body.ts';
import type { Caps } from '../../mechanics/cap.ts';
import type { RangeDecision } from '../../mechanics/range.ts';
import { cappedAngleOf, provokedDeg as provokedDegIn } from '../../content/guardedAngle.ts';
import { isJointAngle, type JointAngle } from '../../mechanics/jointAngle.ts';
import { bodyOf } from './body.ts';
import type { CannotDo } from '../../content/schema/words.ts';
import { cannotDoOf, maternityOf, type Maternity } from '../screen/maternity.ts';
import type { Model } from './model.ts';
import { lastDoneIn } from './lastDone.ts';
import { type LastDone } from '../terms/lastDone.ts';
import { painfulSide } from '../screen/painfulSide.ts';
import type { Earlier, LoggedLoads } from '../terms/earlier.ts';
import type { DecidedBy } from '../terms/cell.ts';
import type { ScreenEffects } from '../screen/screen.ts';
import type { StageName } from '../terms/stageName.ts';
import { suddenStartOf } from '../screen/suddenStart.ts';
import type { SuddenStart } from '../terms/suddenStart.ts';
import { walkedBefore } from './walkedBefore.ts';

export { painfulSide };

export interface Person {
  readonly consult: Consult;
  readonly library: Library;
  readonly clinic: Clinic;
  readonly protocol: Protocol;
  readonly effects: ScreenEffects;
  /** Null where it is no matter. */
  readonly maternity: Maternity | null;
  /** What was recorded, and what follows from pregnancy or birth. */
  readonly cannotDo: readonly CannotDo[];
  readonly body: Body;
  readonly model: Model;
  /** Degrees of the guarded angle not to be passed because it hurt there: the provoked angle less the house margin; null when nothing hurt. */
  readonly provokedDeg: number | null;
  /** The present step of the revision before; empty for a first revision. */
  readonly lastDone: readonly LastDone[];
  /** What was really lifted under the revision before; null where no log was kept, or it followed another protocol. */
  readonly logged: LoggedLoads | null;
  /** A cleared sudden start that no programme has followed yet; null for everybody else. */
  readonly sudden: SuddenStart | null;
  /** The programme before walked and ran in turn, and no more. */
  readonly walkedBefore: boolean;
}

/** One person put together; a height or mass that was not recorded is that of the reference body. `earlier`: the revision before. */
export function personOf(
  consult: Consult,
  library: Library,
  protocol: Protocol,
  effects: ScreenEffects,
  modelFor: (body: Body, guardedBy: JointAngle) => Model,
  earlier: Earlier | null = null,
): Person {
  const body = bodyOf(consult, library.clinic);
  const maternity = maternityOf(consult, protocol);
  return {
    consult,
    library,
    clinic: library.clinic,
    protocol,
    effects,
    maternity,
    cannotDo: cannotDoOf(consult, maternity),
    body,
    model: modelFor(body, cappedAngleOf(protocol.angle)),
    provokedDeg: provokedDeg(consult, protocol),
    lastDone: lastDoneIn(earlier, protocol.id),
    logged: earlier?.protocol === protocol.id ? (earlier.logged ?? null) : null,
    sudden: suddenStartOf(consult, protocol, earlier),
    walkedBefore: walkedBefore(earlier),
  };
}

/** The limits in force at one point of a stage: its caps and the angle that hurt, whichever is smaller. */
export interface Bounds {
  readonly name: StageName;
  readonly stage: Stage;
  readonly caps: Caps;
  /** True when it is the provoked angle that limits the guarded one. */
  readonly byProvokedAngle: boolean;
  /** A stage that is only looked at from afar: what can be done there is asked without a weight. */
  readonly ahead: boolean;
}

/** `opened`: at the far end of the stage's ladder; otherwise at its first step. */
export function boundsOf(person: Person, name: StageName, stage: Stage, opened: boolean): Bounds {
  const { caps, opensToDeg, supportMargin } = stage;
  const stageDeg = opened ? (opensToDeg ?? caps.angleDeg) : caps.angleDeg;
  const { provokedDeg } = person;
  const byProvokedAngle = provokedDeg !== null && (stageDeg === null || provokedDeg < stageDeg);
  // No model caps under 18: position and joint angle alone (house rules 2).
  const modelled = !person.effects.under18;
  return {
    name,
    stage,
    byProvokedAngle,
    ahead: false,
    caps: {
      angle: caps.angle,
      angleDeg: byProvokedAngle ? provokedDeg : stageDeg,
      compressionBw: modelled ? caps.compressionBw : null,
      tensionBw: modelled ? caps.tensionBw : null,
      demand: modelled ? caps.demand : null,
      supportMargin,
    },
  };
}

/** The name by which a cell gives what decided a range or a load. */
export function decidedByOf(
  limit: RangeDecision | 'step',
  { byProvokedAngle }: Pick<Bounds, 'byProvokedAngle'>,
): DecidedBy {
  if (limit === 'full' || limit === 'pose') return 'dose';
  if (limit === 'step') return 'kit';
  return isJointAngle(limit) && byProvokedAngle ? 'provokedAngle' : limit;
}

function provokedDeg(consult: Consult, { limits }: Protocol): number | null {
  const angles = consult.tests.flatMap((test) => provokedDegIn(test) ?? []);
  return angles.length === 0 ? null : Math.max(0, Math.min(...angles) - limits.provokedLessDeg.value);
}

/** The library's card of an id. */
export function cardOf({ library }: Person, id: string): ExerciseCard {
  const card = library.exercises.get(id);
  if (card === undefined)
    throw new Error(`card ${id}: content resolves every reference before a programme is made`);
  return card;
}
