/** Files that rest on nothing anybody could look up. */
import { evidenceWeak } from '../messages/en/author/library.ts';
import type { LibraryFiles } from '../content/library.ts';
import type { PlaceOf } from '../content/place.ts';
import type { Problem } from '../content/problem.ts';
import type { Mark } from '../units/source.ts';
import { warn, type FieldPlace } from './fieldPlace.ts';

const WEAK: readonly Mark[] = ['choice', 'memory'];

export function weakEvidence({ exercises, advice, protocols }: LibraryFiles, placeOf: PlaceOf): Problem[] {
  const fields = [
    ...[...exercises.values()].map(({ id, evidence }) => ({
      field: { kind: 'exercise', id, path: ['evidence'] } satisfies FieldPlace,
      sources: evidence,
    })),
    ...[...advice.values()].map(({ id, sources }) => ({
      field: { kind: 'advice', id, path: ['sources'] } satisfies FieldPlace,
      sources,
    })),
    ...[...protocols.values()].map(({ id, sources }) => ({
      field: { kind: 'protocol', id, path: ['sources'] } satisfies FieldPlace,
      sources,
    })),
  ];
  return fields
    .filter(({ sources }) => sources.every(({ mark }) => WEAK.includes(mark)))
    .map(({ field, sources }) =>
      warn(placeOf, field, 'evidence-weak', evidenceWeak([...new Set(sources.map(({ mark }) => mark))])),
    );
}
