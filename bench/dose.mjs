// Doses, ladder of steps and week of a whole programme of each demo consult, the slowest told: what is left when the
// model of the body has answered before. Run after `npm run prepare`.
import { decide } from '#dist/decisions/decide.js';
import { runningFacts } from '#dist/decisions/days/running.js';
import { isNoSession, sessionFor } from '#dist/decisions/session/session.js';
import { weekFacts } from '#dist/decisions/days/weekPlan.js';
import { medianMs } from './clock.mjs';
import { tell } from './row.mjs';
import { demos, library } from './shipped.mjs';

const LIMIT_MS = 10;
const ROUNDS = 60;

const times = [];
for (const consult of demos) {
  const decided = decide(consult, { library, models: new Map(), loadleaf: '0' });
  times.push(await medianMs(ROUNDS, () => plan(decided)));
}
const value = Math.max(...times);
const { alias } = demos[times.indexOf(value)];
tell({ what: `dose, ladder and week beside the model (${alias})`, value, unit: 'ms', limit: LIMIT_MS });

function plan({ person, stage, bounds, session: { exercises } }) {
  const kept = exercises.map(({ slot, fits: [fit], ladder }) => ({ slot, fit, dose: ladder.start.dose }));
  const wished = runningFacts(person, bounds.stage);
  const { plan: week } = weekFacts(person, stage.chosen, bounds.stage, kept, wished);
  if (isNoSession(sessionFor(kept, person, bounds, week))) throw new Error('no session');
}
