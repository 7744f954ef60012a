import { chooseName } from './tests/bench/serverClient';
const o='http://127.0.0.1:4987'; const cookie=await chooseName(o,'Bench');
for (const p of ['/compare','/builds/1']) { let r=await fetch(o+p+'?now=1',{headers:{cookie}}); await r.text(); }
const only=process.argv[2];
const t0=performance.now();
for (let k=0;k<100;k++){const r=await fetch(o+only,{headers:{cookie}}); await r.text();}
console.log((performance.now()-t0)/100);
