/** What pages, endpoints, terminal commands and the start script may use of the server's room. */
export type { Actor, Role } from './actor';
export { LedgerRefusal, type LedgerRefusalCode } from './refusal';
export * from './views';

export { readConfig, type Config } from './ledger/readConfig';
export { splitFlags } from './ledger/splitFlags';
export { openLedger, type Ledger, type OpenOptions } from './ledger/openLedger';
export { closeLedger, getLedger } from './ledger/getLedger';
export { fromInstant, toInstant } from './ledger/instants';

export { actorOf, choosePerson, findPerson, findPersonAsActor, listPeople } from './people/people';
export { getSettings, setSettings, type Settings } from './settings/settings';

export { exampleState, type ExampleState } from './example/exampleState';
export { ledgerIsEmpty, startEmpty } from './example/firstStart';
export { installExample } from './example/installExample';
export { removeExample } from './example/removeExample';

export { createBuild, type BuildInput } from './hardware/builds';
export { buildView, type BuildView } from './hardware/buildView';
export { correctFittedPeriod, type PeriodCorrection } from './hardware/correctFittedPeriod';
export { endFittedPeriod, fitBuild } from './hardware/fittedPeriods';
export { setKnownGood } from './hardware/setKnownGood';
export { withdrawFittedPeriod } from './hardware/withdrawFittedPeriod';
export { createWheel, type WheelInput } from './hardware/wheels';
export { listWheels, wheelView } from './hardware/wheelViews';

export { comparison } from './rates/comparison';
export { falseAlarms } from './rates/falseAlarms';
export { programmeRows, programmeRows as listBuilds } from './rates/programmeRows';

export { answerRiderMark } from './marks/markAnswers';
export { openMarks } from './marks/openMarks';

export { recordVerdict, undoVerdict, type SeenEvent, type VerdictInput } from './review/verdicts';

export { assignRide } from './rides/assignRide';
export { decideTwin, restoreRide, withdrawRide } from './rides/changeRide';
export type { AnswerName, RideAnswers } from './rides/rideAnswers';
export { joinRide, splitRide } from './rides/splitRide';
export { SURFACES, type Surface } from './rides/surfaces';
export { listRides, type RideQuery } from './rides/listRides';
export { rideChannels, type RideChannels } from './rides/rideChannels';
export { rideView } from './rides/rideView';

export { countUnfinishedImports, findImport, listImports, retryImport } from './queue/importQueue';
export { ImportRunner, type RunnerOptions } from './queue/importRunner';
export type { RideHints } from './queue/rideHints';

export { removeBrokenUpload } from './store/brokenUploads';
export { cleanFileName } from './store/cleanFileName';
export { recoverUploads } from './store/recoverUploads';
export { storeFile } from './store/storeFile';
export { uploadLimitBytes } from './store/uploadLimit';
export { appendToUpload, createUpload, finishUpload, uploadOffset } from './store/uploads';

export { answerJson } from './access/answerJson';
export { comesFromUs, hostAnswer } from './access/hostAnswer';
export { PERSON_COOKIE, personOfToken, personToken } from './access/personToken';
export { bodyPieces, readJsonObject } from './access/readBody';
export { mayUse, ROUTE_ROLES } from './access/routeRoles';
export { health, type Health } from './health';
export { channelBytes } from './rides/channelBytes';
export { eventsCsv } from './rides/eventsCsv';
export { pokeWebRunner, startWebRunner, stopWebRunner } from './queue/webRunner';
