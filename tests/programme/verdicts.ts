/** Pairs of sentences of which one must be wrong, looked for on a whole leaflet. */
import type { Programme } from '../../src/programme/programme.ts';
import { RUN_WORDS } from '../../src/messages/en/patient/running.ts';
import { leafletLines, sectionLines } from './leafletText.ts';

/** Sentences that allow a kind of run, beside the one that says it waits. */
const ALLOWS: Readonly<Record<string, RegExp>> = {
  'walk-run': /walk and run in turn/i,
  easy: /easy (and|or) flat|easy, flat running|easy running may|easy run|run easy/i,
  longer: /then run longer|longer easy run|add time/i,
  steady: /steady (pace|run)/i,
  'hills-or-strides': /(add|from .*:) hills or strides|strides and hills first/i,
  fast: /(from .*:) fast run|fast running last/i,
};

/** Words by which an activity that is left is done all the same. */
const GOES_ON = /if you enjoy|do the rest|carry on|keep (going|it)|^(go|ride|play|start|swim)\b|as you like/i;

/** Everything that contradicts itself, a sentence each; empty on a leaflet that agrees with itself. */
export function contradictions(programme: Programme): string[] {
  return [
    ...waitingRuns(programme),
    ...noRunning(programme),
    ...leftActivities(programme),
    ...longestRuns(programme),
    ...growth(programme),
    ...asYouLike(programme),
  ];
}

function waitingRuns(programme: Programme): string[] {
  const lines = leafletLines(programme);
  const waits = lines.find((line) => /these wait: /i.test(line));
  if (waits === undefined) return [];
  return Object.entries(RUN_WORDS).flatMap(([kind, words]) => {
    if (kind === 'none' || !waits.includes(words)) return [];
    const printed = programme.plan.flatMap(({ runs }) => runs).some((run) => run.kind === kind);
    // What only tells the order in which running comes back allows nothing yet.
    const said = lines.filter(
      (line) => line !== waits && ALLOWS[kind]?.test(line) === true && !TELLS_THE_ORDER.test(line),
    );
    return [
      ...(printed ? [`“${waits}” and a ${words} in the plan`] : []),
      ...said.map((line) => `“${waits}” and “${line}”`),
    ];
  });
}

const TELLS_THE_ORDER =
  /come next|comes back in this order|add fast running last|then run longer|count as hard|only a part (of|is harder)/i;

function noRunning({ plan, running, ...rest }: Programme): string[] {
  const programme = { plan, running, ...rest };
  const none = sectionLines(running).find((line) => line.startsWith('No running for now'));
  if (none === undefined) return [];
  const lines = leafletLines(programme).filter((line) => line !== none);
  const said = lines.filter((line) => /walk and run in turn|run easy|running may go on|jog if/i.test(line));
  return [
    ...said.map((line) => `“${none}” and “${line}”`),
    ...(plan.some(({ runs }) => runs.length > 0) ? [`“${none}” and a run in the plan`] : []),
  ];
}

function leftActivities({ activities }: Programme): string[] {
  const rows = activities.parts.flatMap((part) => (part.kind === 'table' ? part.table.rows : []));
  return rows.flatMap(([what = '', verdict = '', how = '']) =>
    verdict.startsWith('Leave') && GOES_ON.test(how) ? [`${what}: “${verdict}” and “${how}”`] : [],
  );
}

function longestRuns({ plan, running }: Programme): string[] {
  const line = sectionLines(running).find((text) => /let no run be longer/i.test(text));
  const longest = Number(/was ([\d.]+) km/.exec(line ?? '')?.[1] ?? Infinity);
  return plan.flatMap(({ on, runs }) =>
    runs.flatMap(({ km }) => ((km ?? 0) > longest ? [`“${line}” and ${km} km on ${on}`] : [])),
  );
}

/** What has its dates does not also grow by steps, or whenever it feels settled. */
function growth(programme: Programme): string[] {
  return leafletLines(programme)
    .filter((line) => /each time you go on a step|a little longer each time|let the minutes grow/i.test(line))
    .map((line) => `dated minutes and “${line}”`);
}

/** Who runs as he likes is not held to his longest run. */
function asYouLike({ running }: Programme): string[] {
  const lines = sectionLines(running);
  const free = lines.find((line) => line.includes('Run as you like'));
  const held = lines.find((line) => /let no run be longer|these wait/i.test(line));
  return free === undefined || held === undefined ? [] : [`“${free}” and “${held}”`];
}
