/** The protocol's own tests by name and picture, and what was seen on the video turned into degrees. */
import { useEffect, useState } from 'preact/hooks';
import { TRIED_TITLE } from '../../messages/en/desk/quick.ts';
import { TEST_WORDS } from '../../messages/en/desk/seen.ts';
import type { ProtocolName } from '../catalogue.ts';
import type { Landmark } from '../talk.ts';
import { at, catalogue, listAt, set, setAll } from './state.ts';
import { focusSoon, idOf } from './control.ts';
import { Choice } from './choice.tsx';
import { landmarks } from './thread.ts';

function protocol(): ProtocolName | undefined {
  return catalogue.value?.protocols.find(({ id }) => id === at('protocol'));
}

/** A press for each test that was not done yet. */
export function OwnTests() {
  const own = protocol();
  if (own === undefined) return <p class="quiet">{TEST_WORDS.protocolFirst}</p>;
  const done = new Set(listAt('tests').map((test) => (test as { test?: unknown } | null)?.test));
  const add = (id: string) => {
    const index = listAt('tests').length;
    setAll([[`tests.${index}.test`, id]]);
    focusSoon(`tests.${index}.pain`);
  };
  return (
    <ul class="owntests" aria-label={TEST_WORDS.ofProtocol}>
      {own.tests.map(({ id, name, card }) => (
        <li key={id}>
          <button type="button" data-test={id} disabled={done.has(id)} onClick={() => add(id)}>
            {card === null || !hasPicture(card) ? (
              <span class="nopicture" />
            ) : (
              <img src={`../exercises/figures/${card}.svg`} alt="" width="96" height="72" loading="lazy" />
            )}
            <span>{name}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}

/** A press for each test of today that is an exercise with a weight and has no tested set yet. */
export function TriedTests() {
  const idsAt = (name: string, key: 'test' | 'card') =>
    listAt(name).map((one) => (one as Partial<Record<string, unknown>> | null)?.[key]);
  const [tests, sets] = [idsAt('tests', 'test'), idsAt('testedSets', 'card')];
  const tried = (catalogue.value?.cards ?? []).filter(
    ({ id, hasWeight }) => hasWeight && tests.includes(id) && !sets.includes(id),
  );
  if (tried.length === 0) return null;
  const add = (id: string) => {
    const index = sets.length;
    setAll([[`testedSets.${index}.card`, id]]);
    focusSoon(`testedSets.${index}.side`);
  };
  return (
    <div class="short" role="group" aria-label={TRIED_TITLE}>
      {tried.map(({ id, title }) => (
        <button key={id} type="button" data-tried={id} onClick={() => add(id)}>
          {title}
        </button>
      ))}
    </div>
  );
}

function hasPicture(card: string): boolean {
  return catalogue.value?.cards.find(({ id }) => id === card)?.hasPicture === true;
}

export function TestChoice({ name }: { name: string }) {
  const there = at(name);
  const own = protocol()?.tests ?? [];
  const ownIds = new Set(own.map(({ id }) => id));
  const cards = (catalogue.value?.cards ?? []).filter(({ id }) => !ownIds.has(id));
  const isKnown = ownIds.has(String(there)) || cards.some(({ id }) => id === there);
  return (
    <Choice name={name} isKnown={isKnown}>
      <optgroup label={TEST_WORDS.ofProtocol}>
        {own.map((one) => (
          <option key={one.id} value={one.id}>
            {one.name}
          </option>
        ))}
      </optgroup>
      <optgroup label={TEST_WORDS.exercises}>
        {cards.map(({ id, title }) => (
          <option key={id} value={id}>
            {title}
          </option>
        ))}
      </optgroup>
    </Choice>
  );
}

const KEY_OF_ANGLE: Readonly<Record<string, string>> = {
  kneeFlexion: 'painFreeKneeFlexionDeg',
  ankleDorsiflexion: 'painFreeAnkleDorsiflexionDeg',
};

/** Which of a test's keys says where pain began, by the joint that guards the protocol. */
export function provokedKey(): string {
  return KEY_OF_ANGLE[protocol()?.angle ?? ''] ?? 'painFreeHipFlexionDeg';
}

/** "Hands reached the knee" and its like, for the body in hand. */
export function Seen({ name }: { name: string }) {
  const card = at(`${name}.test`);
  const [heightM, massKg] = [at('heightM'), at('massKg')].map((one) =>
    typeof one === 'number' ? one : null,
  );
  const protocolId = at('protocol');
  const [marks, setMarks] = useState<readonly Landmark[]>([]);
  const isPosed = catalogue.value?.cards.find(({ id }) => id === card)?.hasPose === true;
  useEffect(() => {
    let isOld = false;
    setMarks([]);
    if (isPosed && typeof card === 'string' && typeof protocolId === 'string')
      void landmarks(card, protocolId, heightM ?? null, massKg ?? null).then(
        (found) => isOld || setMarks(found),
        () => undefined,
      );
    return () => void (isOld = true);
  }, [card, heightM, massKg, protocolId, isPosed]);
  if (marks.length === 0) return null;
  const key = `${name}.${provokedKey()}`;
  const there = at(key);
  const nearest = marks.find(({ deg }) => deg === there);
  return (
    <div class="field seen">
      <label for={`${idOf(name)}-seen`}>{TEST_WORDS.seen}</label>
      <select
        id={`${idOf(name)}-seen`}
        value={nearest === undefined ? '' : String(nearest.deg)}
        onChange={({ currentTarget }) =>
          set(key, currentTarget.value === '' ? undefined : Number(currentTarget.value))
        }
      >
        <option value="">-</option>
        {marks.map(({ deg, words }) => (
          <option key={deg} value={String(deg)}>
            {words}: {deg}°
          </option>
        ))}
      </select>
    </div>
  );
}
