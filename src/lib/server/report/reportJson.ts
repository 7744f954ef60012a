import { canonicalJson } from '$lib/release/canonicalJson';
import { bounded } from '../release/releaseRecord';
import type { ReportView } from './reportView';

/**
 * A report as data with one spelling: the same ledger gives the same bytes but for `madeAt`. What has no
 * bound is null.
 */
export function reportJson(view: ReportView): string {
	return canonicalJson(bounded(view));
}
