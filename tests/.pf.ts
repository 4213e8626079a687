import { readRules } from './helpers/read-rules.ts';
import { learn, makeLexicon } from '../cli/understand/lexicon.ts';
const b = readRules(); let t=performance.now(); const l = learn(b); console.log('learn', performance.now()-t); const j = JSON.stringify(l); console.log('size', j.length, JSON.stringify(l.index).length, JSON.stringify(l.likeness).length); t=performance.now(); const p = JSON.parse(j); console.log('parse', performance.now()-t); t=performance.now(); makeLexicon(b, p); console.log('make', performance.now()-t); t=performance.now(); 
