import { readFileSync } from 'node:fs';
import { readRules } from './helpers/read-rules.ts';
import { placeFor } from './understanding/place.ts';
import { countOutcomes, readLabelled, scoreLines } from './understanding/score.ts';
import { part } from '../cli/understand/match.ts';
import { bounds } from '../cli/understand/decide.ts';
const about = placeFor(readRules());
const files = process.argv.slice(2).map(p=>readLabelled(readFileSync(p,'utf8')));
const lines = files.flat();
const value = () => { const s = scoreLines(lines, about); const a = countOutcomes(s.filter(x=>x.askable)), o = countOutcomes(s.filter(x=>!x.askable));
  const na = s.filter(x=>x.askable).length, no = s.length-na;
  const v = (a.right + 0.45*a.asked - 0.6*a.wrong)/na + 0.45*(o.away + 0.3*o.astray+ 0.3*o.asked - 0.6*o.wrong)/no;
  return {v, txt: `ask right ${(100*a.right/na).toFixed(0)} asked ${(100*a.asked/na).toFixed(0)} astray ${(100*a.astray/na).toFixed(0)} wrong ${(100*a.wrong/na).toFixed(0)} away ${(100*a.away/na).toFixed(0)} || out away ${(100*o.away/no).toFixed(0)} astray ${(100*(o.astray+o.asked)/no).toFixed(0)} wrong ${(100*o.wrong/no).toFixed(0)}`}; };
let best = value(); console.log('start', best.v.toFixed(3), best.txt);
const knobs: [Record<string, number>, string, number[]][] = [
 [part,'likeness',[0.3,0.42,0.55,0.7]],[part,'small',[0.2,0.5,0.8]],[part,'asked',[1.2,1.8,2.5]],[part,'told',[0.8,1.2,1.7]],[part,'unexplained',[1.2,1.8,2.5]],[part,'strange',[0.15,0.3,0.5,0.8]],
 [bounds,'sure',[1.6,2.1,2.6,3.2,3.8]],[bounds,'lead',[0.6,1,1.4]],[bounds,'choice',[0.6,1,1.6,2.2]],
];
for (let round=0; round<2; round++) for (const [o,k,vals] of knobs) { let keep=o[k]!; for (const v of vals) { if (v===keep) continue; const was=o[k]!; o[k]=v; const r=value(); if (r.v>best.v+1e-9){best=r;keep=v;} o[k]=was; } o[k]=keep; console.log(k,keep,best.v.toFixed(3),best.txt); }
