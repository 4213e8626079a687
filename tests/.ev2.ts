import { readRules } from '/work/main/tests/helpers/read-rules.ts';
import { placeFor } from '/work/main/tests/understanding/place.ts';
import { understand } from '/work/main/cli/understand/understand.ts';
import { makeLexicon } from '/work/main/cli/understand/lexicon.ts';
const about = placeFor(readRules()); 
let t=performance.now(); const lex = makeLexicon(about.book); console.log('lexicon ms', performance.now()-t);
t=performance.now(); makeLexicon(about.book); console.log('again ms', performance.now()-t);
let before = null as any;
for (const w0 of process.argv.slice(2)) { const f = w0.startsWith('+'); const w = f? w0.slice(1): w0; const h = understand(w, {...about, before: f? before: null}, lex); before=h;
 const r = h.readings[0]; console.log(`> ${w}  [${h.sure?'sure':'?'} ${h.readings.map(r=>r.topic+' '+r.score.toFixed(1)).join(', ')}]`);
 if (r) console.log('     ', JSON.stringify(r.entries.length? r.entries.map(e=>({k:e.kind,on:e.on.slice(5),...e.fields,...(e.missing.length?{MISSING:e.missing}:{})})): {g:r.groups,on:r.on,until:r.until,days:r.days,sup:r.supposing, slots:r.slots}), r.assumed.join('; ')); }
