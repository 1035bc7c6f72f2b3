import { readFileSync } from 'node:fs';
import { it } from 'vitest';
import { make, workshop } from './shipped.ts';
const text = readFileSync('content/consults/otter-r1.md','utf8');
const add=(s:string,t=text)=>[{file:'otter-r1.md',bytes:new TextEncoder().encode(t.replace('overrides:',`${s}\noverrides:`)),link:'no' as const}];
it('x',()=>{
  const show=(n:string,m:any)=>{ if('printed' in m) console.log(n,m.printed.slice(0,700)); else console.log(n, m.programme.exercises.map((e:any)=>`${e.slot}=${e.card} ${e.dose}`), m.programme.record.remarks.filter((r:string)=>/clinician/.test(r)), m.programme.record.passedOver.filter((p:any)=>p.limit==='clinician').map((p:any)=>p.card+' '+p.because)); };
  const t=(n:string,s:string)=>show(n,make(add(s),workshop));
  t('none','');
  console.log([...workshop.library.protocols.get('proximal-hamstring')!.stages[1]!.slots].map(s=>`${s.name} [${s.dose.kind} ${s.when} ${s.needed}]: ${s.cards.join(' ')}`));
  t('left','leftOut:\n  - card: slow-prone-curl\n    reason: dislikes it');
  t('chosen fits','chosen:\n  - slot: Slow hip strength\n    card: hip-thrust\n    reason: likes it');
  t('chosen position','chosen:\n  - slot: Slow hip strength\n    card: kettlebell-swing\n    reason: likes it');
  t('added','added:\n  - card: calf-raise\n    reason: calf');
});
