import { rulebook } from './helpers/rulebook-of.ts';
const r = rulebook() as any; console.log((r.problems ?? []).filter((p:any)=>/words|questions|records/.test(p.at.file)).slice(0,20).map((p:any)=>JSON.stringify(p)).join('\n')); console.log(Object.keys(r.book.words.ideas).length);
