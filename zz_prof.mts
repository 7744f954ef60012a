import { startServer } from './tests/faults/runCommand';
import { chooseName } from './tests/bench/serverClient';
const data='/tmp/w/full/data';
const s=await startServer(data, process.argv[2]?{NODE_OPTIONS:`--cpu-prof --cpu-prof-dir=/tmp/w/full/prof`}:{}); const cookie=await chooseName(s.origin,'Bench');
const pages=['/', '/rides', '/imports.json', '/builds', '/wheels','/builds/1','/compare'];
for (const p of pages) { const r=await fetch(s.origin+p+'?now=1',{headers:{cookie}}); await r.text(); }
const ms=new Map<string,number[]>();let bytes=new Map<string,number>();
for (let k=0;k<40;k++) for (const p of pages){const t=performance.now(); const r=await fetch(s.origin+p,{headers:{cookie}}); const x=await r.text(); bytes.set(p,x.length); (ms.get(p)??ms.set(p,[]).get(p)!).push(performance.now()-t);}
for (const [p,m] of ms){m.sort((a,b)=>a-b);console.log(p,m[20].toFixed(1),m[38].toFixed(1),bytes.get(p));}
await s.stop();
