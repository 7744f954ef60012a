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
export { columnQuestion, nameColumns, type ColumnQuestion } from './columns/nameColumns';
export { nameColumnsAnew } from './columns/nameColumnsAnew';
export { forgetColumns, rememberedAnswers, type RememberedAnswer } from './columns/rememberedColumns';
export { rideColumns, ridesReadAlike, type RideColumns } from './columns/rideColumns';
export { fileAnswers, fileAnswersCsv, type FileAnswersQuery } from './queue/fileAnswers';
export { archiveLines } from './unpack/archiveLines';
export { giveUpArchive } from './unpack/giveUpArchive';
export { getSettings, setSettings, type Settings } from './settings/settings';

export { exampleState, type ExampleState } from './example/exampleState';
export { firstLook, type FirstLook } from './example/firstLook';
export { ledgerIsEmpty, startEmpty } from './example/firstStart';
export { installExample } from './example/installExample';
export { removeExample } from './example/removeExample';

export { createBuild, listBuildRecords as buildsToChoose, type BuildInput } from './hardware/builds';
export { buildView, type BuildView } from './hardware/buildView';
export { correctFittedPeriod, type PeriodCorrection } from './hardware/correctFittedPeriod';
export { endFittedPeriod, fitBuild } from './hardware/fittedPeriods';
export { setKnownGood } from './hardware/setKnownGood';
export { withdrawFittedPeriod } from './hardware/withdrawFittedPeriod';
export { createWheel, type WheelInput } from './hardware/wheels';
export { listWheelRecords as wheelsToChoose } from './hardware/wheels';
export { listWheels, wheelView } from './hardware/wheelViews';

export { comparison } from './rates/comparison';
export { falseAlarms } from './rates/falseAlarms';
export { programmeStories, type ProgrammeStory } from './rates/programmeStories';
export { programmeRows, programmeRows as listBuilds } from './rates/programmeRows';

export { answerRiderMark } from './marks/markAnswers';
export { openMarks } from './marks/openMarks';

export { answerReview, undoReview, type GivenReview } from './review/answerReview';
export { disputes, type Dispute } from './review/disputes';
export {
	reviewFigures,
	reviewProgress,
	type MeasuredShare,
	type ReviewerFigures
} from './review/reviewFigures';
export { oneProbeIn, openReviewItem } from './review/reviewItems';
export { reviewLast, type ReviewLast } from './review/reviewLast';
export { reviewScene, type ReviewScene } from './review/reviewScene';
export { recordVerdict, undoVerdict, type SeenEvent, type VerdictInput } from './review/verdicts';

export { assignRide } from './rides/assignRide';
export { decideTwin, restoreRide, withdrawRide } from './rides/changeRide';
export type { AnswerName, RideAnswers } from './rides/rideAnswers';
export { correctRideClock } from './rides/correctRideClock';
export { joinRide, splitRide } from './rides/splitRide';
export { SURFACES, type Surface } from './rides/surfaces';
export { countHeldBack, listRides, type RideKey, type RideQuery } from './rides/listRides';
export { MOST_PIXELS, ownRateOf, ownRateWindow, type OwnRateWindow } from './rides/ownRateWindow';
export { rideChannels, type RideChannels } from './rides/rideChannels';
export { rideView } from './rides/rideView';

export { importOverview } from './queue/importOverview';
export { knownFiles } from './store/knownFiles';
export { writeBeside } from './ledger/writeBeside';
export { uploadsInTurn } from './store/uploadsInTurn';
export { resumeUpload } from './store/resumeUpload';
export { countUnfinishedImports, findImport, listImports, retryImport } from './queue/importQueue';
export { ImportRunner, type RunnerOptions } from './queue/importRunner';
export type { RideHints } from './queue/rideHints';

export { cancelUpload, removeBrokenUpload } from './store/brokenUploads';
export { cleanFileName } from './store/cleanFileName';
export { recoverUploads } from './store/recoverUploads';
export { storeFile } from './store/storeFile';
export { uploadLimitBytes } from './store/uploadLimit';
export { appendToUpload, createUpload, finishUpload, uploadOffset } from './store/uploads';

export { answerJson } from './access/answerJson';
export { comesFromUs, hostAnswer } from './access/hostAnswer';
export { PERSON_COOKIE, personOfToken, personToken } from './access/personToken';
export { accessSettings, setAccessSettings, type AccessSettings } from './access/accessSettings';
export { CLIENT_HEADER, frontDoor } from './access/frontDoor';
export { isLoopbackAddress } from './access/isLoopback';
export { findLink, makeLink, PASSWORD_LINK_MINUTES, withdrawLink, type LinkPurpose } from './access/links';
export { accessView, type AccessView, type PersonAccess } from './access/accessView';
export { mayTouch } from './access/mayTouch';
export { qrDrawing, type QrDrawing } from './access/qrDrawing';
export { attachFeltPhoto, FELT_PHOTOS, takeBackFeltPhoto, type FeltPhoto } from './marks/feltPhotos';
export { FELT_WITHIN_S, recordFeltSlip, takeBackFeltSlip, type FeltSlipView } from './marks/feltSlips';
export { ownRide, ownRides, ownsRide, type OwnEvent, type OwnRide } from './rides/ownRides';
export { hintsFrom, ownImports, ownsUpload, ownWheels } from './store/ownUploads';
export { endAccess } from './access/removeAccess';
export { serverAddress, type ServerAddress } from './access/serverAddress';
export { SHORTEST_PASSWORD } from './access/passwordRule';
export {
	changePassword,
	ownerHasPassword,
	removePassword,
	setPassword,
	setPasswordByLink
} from './access/setPassword';
export {
	endPasswordSessions,
	endSession,
	openSession,
	sessionsOf,
	type Device,
	type SessionView
} from './access/sessions';
export { comeInByLink, signIn, type Opened } from './access/signIn';
export { wholePage } from './access/wholePage';
export { isGuarded, NOBODY, sessionCookie, whoAsks, type Asking } from './access/whoAsks';
export { WATCHED_ROUTES } from './access/watchedRoutes';
export { bodyPieces, readJsonObject } from './access/readBody';
export { mayUse, ROUTE_ROLES } from './access/routeRoles';
export { brokeOff } from './log/brokeOff';
export { log, logLevel } from './log/log';
export { readiness, type Readiness } from './readiness';
export { health, type Health } from './health';
export { channelBytes } from './rides/channelBytes';
export { eventsCsv } from './rides/eventsCsv';
export { pokeWebRunner, startWebRunner, stopWebRunner } from './queue/webRunner';

export { closeIncident, reopenIncident } from './hardware/incidentsClose';
export { correctIncident, reportIncident, type IncidentInput } from './hardware/incidentsReport';
export { INCIDENT_KINDS, INCIDENT_OUTCOMES, INCIDENT_SEVERITIES } from './hardware/incidentsRows';
export {
	incidentCounts,
	incidentsOfBuild,
	incidentsOfWheel,
	type IncidentCounts,
	type IncidentView
} from './hardware/incidentsView';
export type { FindingInput, InspectionInput } from './hardware/inspectionsInput';
export { INSPECTION_KINDS, type InspectionKind } from './hardware/inspectionsKinds';
export { correctInspection, recordInspection, withdrawInspection } from './hardware/inspectionsSave';
export { inspectionsOfWheel, inspectionView, type InspectionView } from './hardware/inspectionsView';
export { wearOfWheel, type WearView } from './hardware/inspectionsWear';
export { listSpacers, stockSpacers, type StockedSpacer } from './hardware/spacersStock';
export type { StackElementInput, StackInput } from './hardware/stackInput';
export { hardwareLimits, setHardwareLimits, type HardwareLimits } from './hardware/stackLimits';
export { addStack, changeStack, copyStacks, withdrawStack } from './hardware/stackSave';
export { stackPage, type StackPage, type StackView } from './hardware/stackView';

export { evidenceParts, partsOfRides, partTallies, type EvidencePart } from './rides/evidenceParts';
export { rideAnswersView, type RideAnswersView, type RidePartView } from './rides/rideAnswersView';
export { answerRides, type GivenAnswer } from './rides/questions/answerRides';
export {
	answersView,
	type AnswerOption,
	type AnswerRow,
	type AnswersView
} from './rides/questions/answersView';
export { QUESTION_NAMES, type QuestionName } from './rides/questions/questionList';
export { undoAnswers } from './rides/questions/undoAnswers';

export {
	attachFile,
	attachmentFile,
	LARGEST_ATTACHMENT_BYTES,
	listAttachments,
	putBackAttachment
} from './hardware/attachments';
export { withdrawAttachment, type AttachmentSubject, type AttachmentView } from './hardware/attachments';
export { overrideBenchCheck, recordBenchCheck, type BenchCheckInput } from './hardware/benchChecks';
export { markReleased, putInTest, takeBuildBackIn, withdrawBuild } from './hardware/buildStates';
export { buildContents, type BuildContents } from './hardware/buildContents';
export { buildHardware, type BuildHardwareView } from './hardware/buildHardware';
export { buildList, type BuildListRow } from './hardware/buildList';
export type { BillLineView, TorqueLineView } from './hardware/billViews';
export { changeBuild } from './hardware/changeBuild';
export type { BuildContentsInput } from './hardware/checkBuildContents';
export type { PartInput } from './hardware/checkPart';
export { copyBuild, makeRevision } from './hardware/copyBuild';
export type { BuildDifferenceView } from './hardware/differenceView';
export { PART_FINISHES, PART_KINDS } from './hardware/partRecords';
export { changePart, createPart } from './hardware/parts';
export { listParts, partView, type PartRow, type PartView } from './hardware/partViews';

export {
	insertionStage,
	type FoundShare,
	type InsertionStage,
	type InsertionView
} from './insertions/insertionView';
export { EVENT_CHANGES, type EventBrief, type EventDifference } from './versions/eventDifferences';
export { makeVersionCurrent, removeVersion } from './versions/makeVersionCurrent';
export { countComputingAgain, rideStages, type RideStages } from './versions/rideStages';
export {
	versionDifferences,
	type DifferenceCounts,
	type RideDifference,
	type VersionDifferences
} from './versions/versionDifferences';
export { unmatchedVerdicts, type LostVerdict } from './versions/unmatchedVerdicts';
export { versionState, versionWaits, type VersionState } from './versions/versionState';
export { historyOf, listTrail, type TrailEntry, type TrailView } from './trail/listTrail';
export { listBikeRecords as bikesToChoose } from './hardware/bikeRows';

export {
	buildAgainstBuild,
	type AgainstReference,
	type BuildAgainstBuild,
	type BuildTold,
	type ComparisonPolicy
} from './evidence/buildAgainstBuild';
export type { RatioView } from './evidence/setAgainst';
export { AGE_CLOCKS, type AgeClock } from './evidence/ageClocks';
export type { BuildRates } from './evidence/buildRates';
export { currentVersion as currentAnalysisVersion } from './queue/analysisVersions';
export type { TrendView } from './evidence/lifeOfBuild';

// distances, services, bikes and people
export { checkedOdometer, type OdometerView } from './hardware/odometerView';
export { createBike, updateBike, type BikeInput } from './hardware/bikes';
export { POWER_PLACES, SPEED_SENSORS, type PowerPlace, type SpeedSensorPlace } from './hardware/bikeRows';
export {
	bikeView,
	listBikes,
	wheelsBikes,
	type BikeRow,
	type BikeView,
	type OnBikeView
} from './hardware/bikeViews';
export type { BikeGearsView } from './hardware/bikeGears';
export { recordOdometer } from './hardware/odometerReadings';
export { partDistances, type PartDistance } from './hardware/partDistances';
export { recordService, type ServiceInput } from './hardware/services';
export { takeGearCorrection } from './hardware/takeGearCorrection';
export { recordUnloggedDistance } from './hardware/unloggedDistance';
export { startCircumference } from './hardware/startCircumference';
export { updateWheel } from './hardware/updateWheel';
export { wheelHistory, type WheelHistory } from './hardware/wheelHistory';
export { putWheelOnBike, takeWheelOffBike } from './hardware/wheelOnBike';
export { wheelStateAt, type WheelState } from './hardware/wheelStateAt';
export type { WheelPage } from './hardware/wheelViews';
export { putBackFittedPeriod } from './hardware/putBackFittedPeriod';
export { putBackRow, type RowOfWheel } from './hardware/putBackRow';
export { putBackStack } from './hardware/putBackStack';
export { withdrawnPeriodsOfBuild, withdrawnRows, type WithdrawnView } from './hardware/withdrawnRows';
export { withdrawRow } from './hardware/withdrawRow';
export { anonymisePerson, type NameFound } from './people/anonymisePerson';
export { createPerson, updatePerson, type PersonInput } from './people/changePerson';
export { peopleFacts, type PersonFacts } from './people/personFacts';
export { partChoices, type PartChoice } from './hardware/stackParts';
export { peopleForWheel } from './hardware/inspectionsPeople';
export { exportArchive, type ExportOptions } from './archive/exportArchive';
export { exportTables } from './archive/exportTables';
export { noteExport } from './archive/noteExport';
export { restoreArchive, type RestoreOutcome } from './archive/restoreArchive';
export { ledgerSchema, type LedgerSchema } from './archive/ledgerSchema';

export { setReleaseCriteria, type CriteriaInput, type CriteriaVersion } from './release/releaseCriteria';
export {
	DECISIONS,
	decisionRecord,
	listDecisions,
	signDecision,
	type Decision,
	type ReleaseDecision
} from './release/releaseDecisions';
export { fieldWatches, type WatchedRelease } from './release/fieldWatches';
export { plannerView, type PlannerView } from './release/plannerView';
export type { CriterionState, ReleaseCriteria } from '$lib/release/criteria';
export { recordToSign, releaseView, type ReleaseView } from './release/releaseView';

// the report
export { CHART_NAMES, chartCsv, type ChartName } from './report/chartCsv';
export { reportJson } from './report/reportJson';
export { reportView, type ReportView } from './report/reportView';

// nothing lost: backups, checking what is whole, erasure
export { makeBackup, type BackupOutcome } from './backup/makeBackup';
export { restoreBackup } from './backup/restoreBackup';
export { backupState, type BackupState } from './backup/lastBackup';
export { verifyLedger } from './verify/verifyLedger';
export { keepVerify, lastVerify } from './verify/lastVerify';
export type { VerifyReport } from './verify/verifyReport';
export { compactLedger } from './erasure/compactLedger';
export { eraseRider, type ErasureOutcome } from './erasure/eraseRider';
export { erasureOf, type CopyMade, type ErasureView } from './erasure/erasureOf';

// figures of many rides: computed beside the server, shown with the words that say how old they are
export { computeFigures, type Asked as AskedFigures, type FigureKind } from './figures/figureKinds';
export { figureKey } from './figures/figureKey';
export { figuresText, packFigures } from './figures/figureText';
export type { ShownLine } from './figures/shownComparison';
export type { FigureAnswer, FigureRequest } from './figures/figureMessages';
export type { FiguresSince } from './figures/figureDesk';
export { showFigures, stopFigures } from './figures/webFigures';
