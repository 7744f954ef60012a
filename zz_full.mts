import { startServer } from './tests/faults/runCommand';
import { chooseName } from './tests/bench/serverClient';
const data='/tmp/w/full/data';
const s=await startServer(data); await chooseName(s.origin,'Bench'); await s.stop();
