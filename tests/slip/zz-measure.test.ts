import { readFileSync, readdirSync } from 'node:fs';
import { it } from 'vitest';
import { decodeRide } from '$lib/ride/decodeRide';
import { analyseRide } from '$lib/slip/analyseRide';
import { matchRiderMarks } from '$lib/slip/matchRiderMarks';
it('measures', async () => {
 const bins = new Map<string,[number,number,number]>(); let cells=0,n=0,pu=0,opu=0,marks=0,obsMarks=0,matched=0,matchedObs=0,ev=0; let ms=0; let secs=0; let maxCell=0;
 for (const f of readdirSync('sample-rides').filter(f=>f.endsWith('.fit')).filter((_,i)=>i%3===0)) {
  try { const ride = await decodeRide(new Uint8Array(readFileSync('sample-rides/'+f)), f);
   const t0=performance.now(); const a = analyseRide(ride); ms+=performance.now()-t0; n++; secs+=ride.durationS;
   cells+=a.exposure.cells.length; maxCell=Math.max(maxCell,a.exposure.cells.length);
   for (const c of a.exposure.cells){const k=String(c.torqueFromNm);const b=bins.get(k)??[0,0,0];b[0]+=c.drivenM/1000;b[1]+=c.observedM/1000;bins.set(k,b);pu+=c.pickUps;opu+=c.observedPickUps}
   for (const e of a.events){ ev++; if(e.hubTorqueNm){const k=[...bins.keys()].filter(x=>x!=='null').map(Number).filter(x=>x<=e.hubTorqueNm!.value).sort((a,b)=>b-a)[0]; bins.get(String(k))![2]++}else {const b=bins.get('null');if(b)b[2]++}}
   const m = matchRiderMarks(a.marksS,a.events); marks+=a.marksS.length; matched+=m.length; obsMarks+=a.exposure.marks.filter(x=>x.observed).length; matchedObs+=m.filter(x=>a.exposure.marks[x.mark].observed).length;
   const s=(k:any)=>a.exposure.cells.reduce((x,c:any)=>x+c[k],0); console.log(f,(s('drivenM')-a.drivenM).toFixed(6),(s('observedM')-a.observedM).toFixed(6), (a.observedM/a.totalM).toFixed(2), a.exposure.cells.length, a.exposure.hours.length);
  } catch(e){console.log(f,String(e).slice(0,80))}
 }
 console.log(Object.fromEntries([...bins].map(([k,v])=>[k,v.map(x=>+x.toFixed(1))])), {cells:cells/n,maxCell,n,pu,opu,marks,matched,obsMarks,matchedObs,ev,ms,secs});
}, 300000);
