import { readRules } from '/work/main/tests/helpers/read-rules.ts';
import { placeFor } from '/work/main/tests/understanding/place.ts';
import { understand } from '/work/main/cli/understand/understand.ts';
const about = placeFor(readRules());
for (const w of process.argv.slice(2)) { const h = understand(w, about); console.log('\n>', w, h.sure, h.nearest.join());
 for (const r of h.readings) { console.log('  ', r.topic, r.score.toFixed(2), r.evidence.map(e=>`${e.idea}:${e.words}:${e.weight.toFixed(2)}`).join(' | ')); }
 const r = h.readings[0]; if (r) console.log('   ', JSON.stringify({g:r.groups,on:r.on,until:r.until,days:r.days,slots:r.slots,sup:r.supposing,e:r.entries,as:r.assumed})); }
