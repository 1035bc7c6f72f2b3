/** Advice as it fits one person: what cannot be done or contradicts the plan gives way (house rules 11.11). */
import type { AdviceCard, Stage } from '../../content/library.ts';
import type { Block, Inline, ListEntry, ProseSection } from '../../content/prose/block.ts';
import { plainText, proseTexts } from '../../content/prose/plainText.ts';
import type { Circumstance } from '../../content/schema/advice.ts';
import { hasNoWeight } from './kitAtHome.ts';
import { precautionsOf } from './precautions.ts';
import type { Person } from './person.ts';
import { beganSuddenly } from '../screen/suddenStart.ts';

/** What holds for this person in this stage and advice may have to give way to. */
export function circumstancesOf(person: Person, stage: Stage): ReadonlySet<Circumstance> {
  const { consult, effects, maternity, cannotDo } = person;
  const found: [Circumstance, boolean][] = [
    ['gentle', precautionsOf(person).gentle],
    ['sudden', beganSuddenly(consult)],
    ['bends', stage.caps.angleDeg === null],
    ['no-weights', hasNoWeight(consult.kit)],
    [
      'no-running',
      effects.noRunning.length > 0 || effects.lightHolds.length > 0 || maternity?.runMost === 'none',
    ],
    ['pregnant', maternity !== null && maternity.kind !== 'after-birth'],
    ['after-birth', maternity !== null && maternity.kind !== 'pregnant'],
  ];
  return new Set([...cannotDo, ...found.filter(([, holds]) => holds).map(([name]) => name)]);
}

/** The card with its entries changed or left out; null where the whole of it does not fit. */
export function fitted(card: AdviceCard, holds: ReadonlySet<Circumstance>): AdviceCard | null {
  if (card.notWhen.some((one) => holds.has(one))) return null;
  const body = card.body.map((section) => sectionFor(section, card, holds));
  return holds.has('gentle') && proseTexts(body).some(({ text }) => SPEAKS_OF_MUCH.test(text))
    ? null
    : { ...card, body };
}

// Whatever a clinic writes: to someone who is told to take care nobody says to work hard.
const SPEAKS_OF_MUCH = /\bstrong(?:er)? (?:slow )?(?:work|hold|pull|session)|\bheav(?:y|ier)\b/i;

function sectionFor(
  section: ProseSection,
  { givesWay }: AdviceCard,
  holds: ReadonlySet<Circumstance>,
): ProseSection {
  const changed = (text: readonly Inline[]): readonly Inline[] | null => {
    const plain = plainText(text);
    const way = givesWay.find(({ entry, when }) => entry === plain && when.some((one) => holds.has(one)));
    if (way === undefined) return text;
    return way.instead === undefined ? null : [{ kind: 'text', text: way.instead }];
  };
  return { ...section, blocks: section.blocks.flatMap((block) => blockFor(block, changed)) };
}

type Changed = (text: readonly Inline[]) => readonly Inline[] | null;

function blockFor(block: Block, changed: Changed): Block[] {
  if (block.kind === 'paragraph') {
    const text = changed(block.text);
    return text === null ? [] : [{ ...block, text }];
  }
  const entries = block.entries.flatMap((entry): ListEntry[] => {
    const text = changed(entry.text);
    if (text === null) return [];
    const below = entry.entries.flatMap((one) => {
      const own = changed(one.text);
      return own === null ? [] : [{ text: own }];
    });
    return [{ ...entry, text, entries: below }];
  });
  return entries.length === 0 ? [] : [{ ...block, entries }];
}
