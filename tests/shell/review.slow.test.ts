/** The command review from end to end: what it says, what it writes, what it leaves, and what an alarm takes away. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { alone, type Bench } from './reviewBench.ts';

let bench: Bench;
beforeAll(() => {
  bench = alone();
});

const LOG = readFileSync('tests/reviews/moves-on/in/otter-r1.log.csv');
const lines = (log: Buffer) => log.toString().split('\r\n').sort();

describe('review', () => {
  it('without a log stays, and asks what was done', () => {
    const { code, json } = bench.run('review', 'otter', '--json', '--on', '2026-12-15');
    expect(code).toBe(0);
    expect(json).toMatchObject({
      alias: 'otter',
      revision: 1,
      decision: 'stay',
      stage: 2,
      step: 1,
      problems: [],
    });
    expect(json['asks']).toMatchObject([{ code: 'nothing-written' }]);
  });

  it('names the nearest alias', () => {
    expect(bench.run('review', 'oter', '--json')).toMatchObject({ code: 66, json: { nearest: 'otter' } });
  });

  it('with a log writes the next draft, and leaves the revision and its files as they were', () => {
    const given = join(bench.folder, 'shared.csv');
    writeFileSync(given, LOG);
    const before = readFileSync(bench.consult('otter-r1.md'));
    const { code, json } = bench.run(
      'review',
      'otter',
      '--json',
      '--log',
      given,
      '--write',
      '--on',
      '2026-12-15',
    );
    expect(code).toBe(0);
    expect(json).toMatchObject({ decision: 'moveOn', stage: 2, step: 2 });
    expect(readFileSync(bench.consult('otter-r1.md'))).toEqual(before);
    const draft = readFileSync(bench.consult('otter-r2.md'), 'utf8');
    for (const line of [
      'draft: yes',
      'stage: 2',
      'step: 2',
      '  fever: notAsked',
      'irritability:',
      'testedSets: []',
    ])
      expect(draft).toContain(`\n${line}\n`);
    expect(lines(readFileSync(bench.consult('otter-r1.log.csv')))).toEqual(lines(LOG));
    expect(bench.run('review', 'otter', '--write', '--json').code).toBe(73);
  });

  it('a broken line is a Problem, and the decision stays', () => {
    const given = join(bench.folder, 'broken.csv');
    writeFileSync(given, `${LOG.toString()}01.12.2026,1,morning,,,0,,,,,,,2,,,\r\n`);
    const { code, json } = bench.run('review', 'otter', '--json', '--log', given, '--on', '2026-12-15');
    expect(code).toBe(65);
    expect(json).toMatchObject({ decision: 'stay', problems: [{ code: 'not-a-date', path: 'date' }] });
  });

  it('an alarm takes the leaflet away in the same build', () => {
    const leaflet = join(bench.folder, 'out/private/otter/leaflet.html');
    expect(bench.run('build', 'otter', '--json').code).toBe(0);
    expect(existsSync(leaflet)).toBe(true);
    writeFileSync(
      bench.consult('otter-r1.log.csv'),
      `${LOG.toString()}2026-12-13,1,alarm,footDrop,,0,yes,,,,,,,,,\r\n`,
    );
    const { code, json } = bench.run('build', 'heron', '--json');
    expect(code).toBe(0);
    expect(json['ok']).toBe(true);
    expect(existsSync(leaflet)).toBe(false);
    expect(bench.run('check', '--json')).toMatchObject({ code: 65 });
    expect(bench.run('review', 'otter', '--json', '--on', '2026-12-15').json).toMatchObject({
      decision: 'beSeen',
    });
  });
});
