/** The filters of the index with the words there are to choose: those of the library's own cards and protocols. */
import type { Messages } from '../messages/messages.ts';
import type { Library } from '../content/library.ts';
import { KINDS } from '../content/schema/exercise.ts';
import { CANNOT_DO, KIT_WORDS, POSITIONS } from '../content/schema/words.ts';

import type { Measured } from './measured.ts';
import { inOrder, type Scale } from './scale.ts';
import { type Marks, type Word, FILTER_KEYS, type FilterKey } from '../decisions/terms/scale.ts';
import { stageFacet } from './uses.ts';
import { type Filter, type FilterOption, type FilterRule } from './view.ts';

const RULES: Readonly<Record<FilterKey, FilterRule>> = {
  bend: 'atMost',
  squeeze: 'any',
  pull: 'any',
  kind: 'any',
  position: 'any',
  stage: 'any',
  kit: 'within',
  cannot: 'none',
};

const WORDS: readonly Word[] = ['low', 'middle', 'high', 'unknown'];

/** A filter that could not part the cards is left out: one without words, or with a single one to share. */
export function filtersOf(
  say: Messages,
  measured: readonly Measured[],
  library: Library,
  scale: Scale,
): readonly Filter[] {
  const options = optionsOf(say, measured, library, scale);
  return FILTER_KEYS.map((key) => ({
    key,
    rule: RULES[key],
    heading: say.FILTER_HEADINGS[key],
    options: options[key],
  })).filter(({ options: { length }, rule }) => length > (rule === 'any' ? 1 : 0));
}

function optionsOf(
  say: Messages,
  measured: readonly Measured[],
  { protocols }: Library,
  { bendsDeg, squeezeBw, pullBw }: Scale,
): Readonly<Record<FilterKey, readonly FilterOption[]>> {
  const cards = measured.map(({ card }) => card);
  const positions = inOrder(
    cards.flatMap((card) => card.positions),
    POSITIONS,
  );
  const kit = inOrder(
    cards.flatMap(({ equipment }) => equipment),
    KIT_WORDS,
  );
  const needs = inOrder(
    cards.flatMap((card) => card.needs),
    CANNOT_DO,
  );
  return {
    bend: bendsDeg.map((deg) => option(String(deg), say.degText(deg))),
    squeeze: wordOptions(
      say,
      measured.map(({ squeeze }) => squeeze),
      squeezeBw,
    ),
    pull: wordOptions(
      say,
      measured.map(({ pull }) => pull),
      pullBw,
    ),
    kind: inOrder(
      cards.map(({ kind }) => kind),
      KINDS,
    ).map((kind) => option(kind, say.KIND_WORDS[kind])),
    position: positions.map((position) => option(position, say.capital(say.POSITION_WORDS[position]))),
    stage: [...protocols.values()].flatMap(({ id, title, stages }) =>
      stages.map(({ name }, index) => option(stageFacet(id, index), say.stageOption(index, name), title)),
    ),
    kit: [
      option(say.KIT_NONE.value, say.KIT_NONE.label),
      ...kit.map((word) => option(word, say.capital(say.kitWord(word)))),
    ],
    cannot: needs.map((need) => ({
      ...option(need, say.capital(say.NEED_WORDS[need])),
      asked: say.REASON_TERMS[need] ?? '',
    })),
  };
}

function wordOptions(say: Messages, words: readonly Word[], marks: Marks | null): readonly FilterOption[] {
  if (marks === null) return [];
  return inOrder(words, WORDS).map((word) => option(word, say.wordOption(word, marks)));
}

function option(value: string, label: string, group = ''): FilterOption {
  return { value, label, group, asked: '' };
}
