import { startServer } from './tests/faults/runCommand';
import { chooseName } from './tests/bench/serverClient';
import { writeFileSync } from 'node:fs';
const s=await startServer('/tmp/w/full/data'); const cookie=await chooseName(s.origin,'Bench');
for (const [p,n] of [['/compare','c'],['/builds/1','b'],['/rides','r'],['/','i']]) { let r=await fetch(s.origin+p+'?now=1',{headers:{cookie}}); await r.text(); r=await fetch(s.origin+p,{headers:{cookie}}); writeFileSync('/tmp/w/full/'+n+'.html',await r.text()); }
await s.stop();
