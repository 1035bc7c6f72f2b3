/** Words of the trade in texts that patients read. */
import type { Shelves } from '../content/library.ts';
import type { PlaceOf } from '../content/place.ts';
import type { Problem } from '../content/problem.ts';
import { GLOSSARY } from '../messages/en/catalogue/glossary.ts';
import { finderOf, type Lexicon } from './lexicon.ts';
import { warn } from './spot.ts';
import { sheetsOf } from './text.ts';

/** Word and plain words [choice]; patterns take the forms a word is met in. */
const TRADE: Lexicon = [
  ['abduct(?:s|ed|ing|ion|ors?)?', 'move out to the side'],
  ['adduct(?:s|ed|ing|ion|ors?)?', 'move in across the body'],
  ['dorsi-?flex(?:es|ed|ing|ion)?', 'pull the toes up'],
  ['plantar-?flex(?:es|ed|ing|ion)?|plantar flexion', 'point the toes'],
  ['(?:hyper)?flex(?:es|ed|ing|ion|ors?)?', 'bend'],
  ['(?:hyper)?exten(?:d|ds|ded|ding|sion|sors?)', 'straighten, stretch out'],
  ['internal(?:ly)? rotat\\w*', 'turn in'],
  ['external(?:ly)? rotat\\w*', 'turn out'],
  ['pronat\\w*', 'roll in'],
  ['supinat\\w*', 'roll out'],
  ['(?:antero|retro)version|pelvic tilt', 'tip of the hips'],
  ['valgus', 'knee falling in'],
  ['varus', 'knee falling out'],
  ['prone', 'face down'],
  ['supine', 'on your back'],
  ['unilateral(?:ly)?', 'on one side'],
  ['bilateral(?:ly)?', 'on both sides'],
  ['contralateral(?:ly)?', 'on the other side'],
  ['ipsilateral(?:ly)?', 'on the same side'],
  ['proximal(?:ly)?', 'upper, at the top end'],
  ['distal(?:ly)?', 'lower, at the far end'],
  ['medial(?:ly)?', 'inner'],
  ['lateral(?:ly)?', 'outer, to the side'],
  ['anterior(?:ly)?', 'front'],
  ['posterior(?:ly)?', 'back'],
  ['cranial(?:ly)?|caudal(?:ly)?', 'up or down the body'],
  ['isch\\w+', 'sit bone'],
  ['glutes?|glute(?:al|us)\\w*(?! tendon)', 'buttock muscles'],
  ['hamstrings?(?! tendon)', 'back of the thigh'],
  ['quads?|quadriceps', 'front of the thigh'],
  ['gastrocnemi\\w+|soleus', 'calf'],
  ['erector\\w*', 'muscles of the back'],
  ['pelvis|pelvic', 'hips'],
  ['sacr(?:um|al)', 'the bone at the bottom of the back'],
  ['lumbar', 'lower back'],
  ['thoracic', 'upper back'],
  ['cervical', 'neck'],
  ['femur|femoral', 'thigh bone'],
  ['tibia(?:l|lis)?', 'shin bone'],
  ['patell(?:a|ar|as)', 'kneecap'],
  ['scapul(?:a|ae|ar)', 'shoulder blade'],
  ['core', 'belly and back'],
  ['neutral (?:spine|pelvis|position)', 'back as it is when you stand tall'],
  ['kinetic chain', 'whole leg'],
  ['isometrics?', 'hold'],
  ['isotonics?', 'slow lift'],
  ['eccentric(?:s|ally)?', 'slow way down'],
  ['concentric(?:s|ally)?', 'way up'],
  ['plyometrics?', 'hops and jumps'],
  ['ballistic', 'fast'],
  ['energy[- ]storage', 'springy work'],
  ['propriocept\\w+', 'balance'],
  ['neuromuscular', 'muscle control'],
  ['hypertroph\\w+', 'growing muscle'],
  ['reps?', 'repetitions, times'],
  ['(?:range of motion|ROM)', 'how far'],
  ['RPE|RIR|DOMS|AMRAP', 'it in words'],
  ['cadence', 'steps a minute'],
  ['gait', 'the way you walk or run'],
  ['tempo', 'how slow'],
  ['torque|tensile|shear', 'pull or push'],
  ['tendinopath\\w+|tendin(?:osis|itis)|enthes\\w+', 'sore tendon'],
  ['patholog\\w+|aetiolog\\w+|etiolog\\w+', 'what is behind it'],
  ['irritab\\w+', 'easily stirred up'],
  ['palpat\\w+', 'press with a finger'],
  ['contra-?indicat\\w+', 'leave out'],
  ['(?:o?edema|oedematous)', 'swelling'],
  ['inflam\\w+', 'sore, hot, swollen'],
  ['neural|neuropath\\w+|sciatic\\w*', 'nerve'],
  ['regress(?:ion|ions)?', 'an easier one'],
  ['progress(?:ion|ions)', 'a harder one'],
  ['modalit(?:y|ies)', 'way of treating'],
  ['biomechanic\\w*', 'how you move'],
];

/** The trade words of a text. */
export const tradeIn = finderOf(TRADE);

/** Words of the glossary may stand on the public pages beside it; on a leaflet there is none. */
export function tradeWords(library: Shelves, placeOf: PlaceOf): Problem[] {
  return sheetsOf(library).flatMap(({ kind, id, texts }) =>
    texts.flatMap(({ path, text, on }) =>
      tradeIn(text)
        .filter(({ word }) => on === 'leaflet' || !EXPLAINED.has(word.toLowerCase()))
        .map(({ word, offset, instead }) =>
          warn(placeOf, { kind, id, path, offset }, 'trade-word', {
            found: `text with “${word}”`,
            expected:
              on === 'leaflet' ? 'text in everyday words' : 'text in everyday words or those of the glossary',
            fix: `say ${instead}`,
          }),
        ),
    ),
  );
}

const EXPLAINED = new Set(GLOSSARY.flatMap(({ term }) => term.toLowerCase().split(', ')));
