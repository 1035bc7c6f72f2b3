// The rooms of the deciding code, and for each the tests that every mutant is put to: its tables and the laws that need no
// programme, none that takes seconds. A file is of the first room that names it.
export const ROOMS = [
  { name: 'plan', files: ['src/scheduling/datedPlan.ts'], tests: ['tests/programme/datedPlan.test.ts'] },
  // Weeks as they are told: whole programmes show them.
  {
    name: 'weeks',
    files: [
      'src/scheduling/weekGroups.ts',
      'src/scheduling/usualWeek.ts',
      'src/scheduling/planDay.ts',
      'src/scheduling/plannedRun.ts',
      'src/scheduling/planWeek.ts',
    ],
    tests: ['tests/scheduling/*.test.ts', 'tests/programme/{datedPlan,running,sport}.test.ts'],
  },
  {
    name: 'dosing',
    files: ['src/dosing'],
    tests: ['tests/dosing/*.test.ts', 'tests/published/{doses,strength}.test.ts'],
  },
  {
    name: 'scheduling',
    files: ['src/scheduling'],
    tests: ['tests/scheduling/*.test.ts', 'tests/published/{running,painRules}.test.ts'],
  },
  {
    name: 'screen',
    files: ['src/decisions/screen'],
    tests: [
      'tests/decisions/*.test.ts',
      'tests/programme/{alarmItems,fastWorkFirst,painLimits,withdrawal}.test.ts',
    ],
  },
  { name: 'stage', files: ['src/decisions/stage'], tests: ['tests/decisions/*.test.ts'] },
  { name: 'review', files: ['src/review'], tests: ['tests/review/*.test.ts'] },
  {
    name: 'mechanics',
    files: ['src/mechanics'],
    tests: ['tests/mechanics/*.test.ts', 'tests/published/*.test.ts'],
  },
  // Whole programmes, those of each room's own tables: hours.
  {
    name: 'session',
    files: ['src/decisions/session'],
    tests: [
      'tests/decisions/*.test.ts',
      'tests/programme/{effort,firstWeight,hold,load,overrides,ownChanges,rules}.test.ts',
    ],
  },
  {
    name: 'days',
    files: ['src/decisions/days'],
    tests: [
      'tests/decisions/*.test.ts',
      'tests/programme/{datedPlan,outlook,running,saidDay,sport,stepsAhead}.test.ts',
    ],
  },
  // The rest of them by all there is: a night.
  {
    name: 'decisions',
    files: ['src/decisions'],
    tests: ['tests/decisions/*.test.ts', 'tests/programme/*.test.ts'],
  },
];

/** @param {string} file */
export function roomOf(file) {
  return ROOMS.find(({ files }) => files.some((one) => file === one || file.startsWith(`${one}/`))) ?? null;
}
