import {
	getLedger,
	LedgerRefusal,
	putWheelOnBike,
	recordOdometer,
	recordService,
	recordUnloggedDistance,
	takeWheelOffBike,
	updateWheel,
	withdrawRow,
	type Actor
} from '$lib/server';
import { workshopInstant } from '../../fitting';
import { decimal, neededId, text } from '../../forms';
import { wheelInput } from '../wheelInput';

type FromForm = (form: FormData, actor: Actor, wheelId: number) => void;

/** kilometres as typed -> metres; empty and unreadable stay so */
const metres = (form: FormData, name: string) => {
	const km = decimal(form, name);
	return km === null ? null : km * 1000;
};

export const serviceFromForm: FromForm = (form, actor, wheelId) => {
	recordService(getLedger(), actor, wheelId, {
		at: workshopInstant(form, 'at'),
		opened: form.has('opened'),
		cleaned: form.has('cleaned'),
		lubricant: text(form, 'lubricant'),
		amountG: decimal(form, 'amountG'),
		partsTurned: text(form, 'partsTurned'),
		note: text(form, 'note')
	});
};

export const unloggedFromForm: FromForm = (form, actor, wheelId) => {
	recordUnloggedDistance(getLedger(), actor, wheelId, {
		at: workshopInstant(form, 'at'),
		distanceM: metres(form, 'distance'),
		note: text(form, 'note')
	});
};

export const odometerFromForm: FromForm = (form, actor, wheelId) => {
	recordOdometer(getLedger(), actor, wheelId, {
		at: workshopInstant(form, 'at'),
		readingM: metres(form, 'reading'),
		note: text(form, 'note')
	});
};

export const putOnFromForm: FromForm = (form, actor, wheelId) => {
	putWheelOnBike(getLedger(), actor, {
		wheelId,
		bikeId: neededId(form, 'bike'),
		from: workshopInstant(form, 'from'),
		until: text(form, 'until') === '' ? null : workshopInstant(form, 'until'),
		deviceCircumferenceM: decimal(form, 'deviceCircumferenceM')
	});
};

export const takeOffFromForm: FromForm = (form, actor) => {
	takeWheelOffBike(getLedger(), actor, neededId(form, 'row'), workshopInstant(form, 'until'));
};

export const factsFromForm: FromForm = (form, actor, wheelId) => {
	updateWheel(getLedger(), actor, wheelId, wheelInput(form), neededId(form, 'version'));
};

const TABLES = ['service', 'odometer_reading', 'unlogged_distance', 'wheel_on_bike'] as const;

export const withdrawRowFromForm: FromForm = (form, actor, wheelId) => {
	const table = TABLES.find((one) => one === text(form, 'table'));
	if (!table) throw new LedgerRefusal('wrong-value', 'It is not said what to withdraw.');
	withdrawRow(getLedger(), actor, table, { id: neededId(form, 'row'), wheelId }, text(form, 'reason'));
};
