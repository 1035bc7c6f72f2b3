/** What the consult recorded, as tables for the clinician; what was not recorded is printed so. */
import type { Consult } from '../../../../content/library.ts';
import { SCREEN_ITEMS } from '../../../../content/schema/consult.ts';
import { ANSWER_WORDS, SCREEN_WORDS } from '../screen.ts';
import { capital, listText, numberText } from '../../plain.ts';
import type { Table } from '../../../shapes.ts';
import { provokedDeg } from '../../../../content/guardedAngle.ts';
import type { JointAngle } from '../../../../mechanics/jointAngle.ts';
import { ANGLE_WORDS } from '../../angle.ts';

const NOT_RECORDED = 'not recorded';

/** `nameOf`: a test or card by its id, in words. */
export function findingsTables(consult: Consult, nameOf: (id: string) => string, angle: JointAngle): Table[] {
  return [
    personTable(consult),
    testsTable(consult, nameOf, angle),
    testedSetsTable(consult, nameOf),
    outcomesTable(consult),
    confirmedTable(consult),
  ].filter(({ rows }) => rows.length > 0);
}

/** Every item of the screen with its answer and, where there is one, its clearance. */
export function screenTable(consult: Consult): Table {
  return {
    caption: 'Screen',
    columns: ['Asked about', 'Answer', 'Clearance'],
    rows: SCREEN_ITEMS.map((item) => {
      const clearance = consult.clearances.find(({ flag }) => flag === item);
      return [
        capital(SCREEN_WORDS[item]),
        ANSWER_WORDS[consult.screen[item]],
        clearance === undefined ? '-' : clearanceText(clearance),
      ];
    }),
  };
}

function clearanceText({ decision, by, on, imaging }: Consult['clearances'][number]): string {
  const picture = imaging === undefined ? '' : `; ${imaging.kind} of ${imaging.on}: ${imaging.result}`;
  return `${decision} (${by}, ${on}${picture})`;
}

function personTable(consult: Consult): Table {
  const { sitting, recovery } = consult;
  const rows: [string, string | number | undefined][] = [
    ['Age', `${consult.ageYears} years`],
    ['Country', consult.country],
    [
      'Height',
      consult.heightM === undefined
        ? 'not recorded; the reference body is used'
        : `${numberText(consult.heightM)} m`,
    ],
    [
      'Mass',
      consult.massKg === undefined
        ? 'not recorded; the reference body is used'
        : `${numberText(consult.massKg)} kg`,
    ],
    ['Painful side', consult.side === 'both' ? `both, worse ${consult.worseSide}` : consult.side],
    ['Pain area', consult.painArea],
    ['Weeks since it began', consult.symptomWeeks],
    ['Irritability', consult.irritability],
    ['Next day after the tests', consult.response24h],
    ['Usual morning pain', `${consult.usualMorningPain} of 10`],
    [
      'Changed before it began',
      consult.changedBefore.length === 0 ? undefined : listText(consult.changedBefore),
    ],
    ['Cannot do', consult.cannotDo.length === 0 ? 'nothing named' : listText(consult.cannotDo)],
    ...maternityRows(consult),
    ['Kit', kitListText(consult.kit)],
    ['Days and minutes', `${consult.days.join(', ')}; ${consult.minutesPerDay} minutes`],
    ['Sitting tolerance', `${sitting.toleranceMinutes} minutes`],
    [
      'Fixed sitting',
      sitting.fixedBlocksMinutes === undefined
        ? undefined
        : `${sitting.fixedBlocksMinutes.join(', ')} minutes`,
    ],
    ['Sitting goal', sitting.goalMinutes === undefined ? undefined : `${sitting.goalMinutes} minutes`],
    ['Sleep, strain, tired', `${recovery.sleep}, ${recovery.stress}, ${recovery.tired ? 'yes' : 'no'}`],
    ['Running', runningText(consult)],
    [
      'Does now',
      consult.doesNow.length === 0
        ? undefined
        : consult.doesNow.map(({ what, times }) => `${what} ${times} a week`).join('; '),
    ],
    ['Goals', consult.goals.length === 0 ? undefined : consult.goals.map(goalText).join('; ')],
    ['Not examined', consult.notExamined.length === 0 ? undefined : listText(consult.notExamined)],
  ];
  return {
    caption: 'Findings',
    columns: ['Finding', 'Recorded'],
    rows: rows.map(([name, value]) => [name, String(value ?? NOT_RECORDED)]),
  };
}

function maternityRows({ pregnancy, afterBirth }: Consult): [string, string][] {
  if (pregnancy !== undefined) return [['Pregnant', `${pregnancy.weeks} weeks`]];
  if (afterBirth === undefined) return [];
  const { weeks, clearance } = afterBirth;
  const cleared = clearance === undefined ? '' : `; ${clearance.decision} (${clearance.by}, ${clearance.on})`;
  return [['After birth', `${weeks} weeks${cleared}`]];
}

function goalText({ what, on, doneTimes }: Consult['goals'][number]): string {
  const more = [on ?? [], doneTimes === undefined ? [] : `done ${doneTimes} times`].flat();
  return more.length === 0 ? what : `${what} (${more.join(', ')})`;
}

/** @example 'dumbbells 4, 4 kg; rucksack' */
export function kitListText(kit: Consult['kit']): string {
  const weights: [string, readonly number[], string][] = [
    ['dumbbells', kit.dumbbellsKg, 'kg'],
    ['kettlebells', kit.kettlebellsKg, 'kg'],
    ['plates', kit.platesKg, 'kg'],
    ['bar', kit.barKg === undefined ? [] : [kit.barKg], 'kg'],
    ['bottles', kit.bottlesL, 'l'],
    ['steps', kit.stepCm, 'cm'],
  ];
  const things = [
    ...weights
      .filter(([, amounts]) => amounts.length > 0)
      .map(([name, amounts, unit]) => `${name} ${amounts.map(numberText).join(', ')} ${unit}`),
    ...(kit.bands.length === 0 ? [] : [`bands ${kit.bands.join(', ')}`]),
    ...(['rucksack', 'bench', 'ball'] as const).filter((thing) => kit[thing]),
  ];
  return things.length === 0 ? 'nothing' : things.join('; ');
}

function runningText({ running }: Consult): string {
  if (!running.runs) return 'does not run';
  const rate =
    running.stepsPerMin === undefined ? 'step rate not recorded' : `${running.stepsPerMin} steps a minute`;
  return [
    `decision: ${running.decision}`,
    `${running.weeklyKm} km a week`,
    `longest in 30 days ${running.longestIn30DaysKm} km`,
    running.runsPerWeek === undefined ? 'runs a week not recorded' : `${running.runsPerWeek} runs a week`,
    `hills ${yes(running.hills)}, speed ${yes(running.speed)}, hilly routes ${yes(running.hillyRoutes)}`,
    rate,
    `over-striding ${running.overStriding}`,
    `${running.trainingYears} years of training, ${running.weeksOff} weeks off`,
  ].join('; ');
}

const yes = (value: boolean | undefined) => (value === undefined ? NOT_RECORDED : value ? 'yes' : 'no');

function degText(deg: number | undefined): string {
  return deg === undefined ? NOT_RECORDED : `${deg}°`;
}

function testsTable(consult: Consult, nameOf: (id: string) => string, angle: JointAngle): Table {
  return {
    caption: 'Tests',
    columns: ['Test', 'Pain', `Pain began at ${ANGLE_WORDS[angle].bend}`, 'Held or done'],
    rows: consult.tests.map(({ test, pain, seconds, repetitions, side, ...from }) => [
      side === undefined ? nameOf(test) : `${nameOf(test)}, ${side === 'both' ? 'both legs' : `${side} leg`}`,
      `${pain} of 10`,
      degText(provokedDeg(from)),
      [
        seconds === undefined ? [] : `${seconds} s`,
        repetitions === undefined ? [] : `${repetitions} repetitions`,
      ]
        .flat()
        .join(', ') || NOT_RECORDED,
    ]),
  };
}

function testedSetsTable(consult: Consult, nameOf: (id: string) => string): Table {
  return {
    caption: 'Tested sets',
    columns: ['Card', 'Side', 'Set', 'Reserve', 'Range', 'Pain'],
    rows: consult.testedSets.map(({ card, side, loadKg, repetitions, reserve, rangeDeg, pain }) => [
      nameOf(card),
      side,
      `${repetitions} at ${numberText(loadKg)} kg`,
      String(reserve),
      rangeDeg === undefined ? NOT_RECORDED : `${rangeDeg}°`,
      `${pain} of 10`,
    ]),
  };
}

/** What looked like a slip and is right. */
function confirmedTable({ confirmed }: Consult): Table {
  return {
    caption: 'Confirmed values',
    columns: ['Where', 'Value', 'How it was checked'],
    rows: confirmed.map(({ path, value, reason }) => [path, String(value), reason]),
  };
}

function outcomesTable(consult: Consult): Table {
  return {
    caption: 'Outcome scores',
    columns: ['On', 'VISA-H', 'Activities', 'Sitting', 'Global change'],
    rows: consult.outcomes.map(({ on, visaH, activities, sittingMinutes, globalChange }) => [
      on,
      String(visaH ?? NOT_RECORDED),
      activities === undefined
        ? NOT_RECORDED
        : activities.map(({ what, score }) => `${what} ${score}`).join('; '),
      sittingMinutes === undefined ? NOT_RECORDED : `${sittingMinutes} minutes`,
      String(globalChange ?? NOT_RECORDED),
    ]),
  };
}
